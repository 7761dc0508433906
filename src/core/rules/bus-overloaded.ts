import { ampsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

export const busOverloaded = defineRuleForEach('parts', {
	meta: {
		id: 'bus-overloaded',
		title: 'No part of a bus carries more than its rating',
		severity: 'error',
		group: 'conductors',
		why: 'A bar over its rating heats everything bolted to it: fuses open early, covers soften, joints loosen.',
		source: { default: 'the rating given for the part' }
	},

	messages: {
		overloaded: ({ name, between, currentA, ratedA }: { name: string; between: string; currentA: number; ratedA: number }) => ({
			message: `${capital(name)} is rated ${ampsText(ratedA)} and carries ${ampsText(currentA)}${between}.`,
			remedy: 'Use a bus of a higher rating, or move the feed next to the largest circuits so that less passes along the bar.'
		})
	},

	/** One report for each bus, about its hottest part. */
	*checkOne(part, study) {
		const bars = part.links.flatMap(({ id, kind }) => {
			const index = kind === 'segment' ? study.form.branchOfLink.get(`${part.id}.${id}`) : undefined;
			const ratedA = index === undefined ? null : study.form.branches[index]!.ratedA;
			return ratedA === null ? [] : [{ link: id, ratedA, ...study.branchCurrent(index!) }];
		});
		if (bars.length === 0) return;
		const worst = bars.reduce((hot, bar) => (bar.currentA / bar.ratedA > hot.currentA / hot.ratedA ? bar : hot));
		if (!exceeds(worst.currentA, worst.ratedA)) return;
		const link = part.links.find(({ id }) => id === worst.link)!;
		const ends = 'between' in link ? link.between.map((end) => endName(end, part.terminals)) : [];
		yield {
			message: 'overloaded',
			data: {
				name: partName(part),
				between: ends.length === 2 ? ` between ${ends[0]} and ${ends[1]}` : '',
				currentA: worst.currentA,
				ratedA: worst.ratedA
			},
			at: [partSubject(part.id)],
			caseId: worst.caseId
		};
	}
});

/** "stud 2"; an internal node "@3" is the place on the bar above position 3. */
const endName = (end: string, terminals: readonly { id: string; label: string }[]): string =>
	terminals.find(({ id }) => id === end.replace('@', ''))?.label ?? 'its strip';
