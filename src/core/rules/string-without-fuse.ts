import { unionFind } from '#core/network';
import { banksOf, type BatteryString } from './banks.ts';
import { defineRule } from './define.ts';
import { groupBy } from './group-by.ts';
import { stringName } from './string-paths-unequal.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed } from './words.ts';

export const stringWithoutFuse = defineRule({
	meta: {
		id: 'string-without-fuse',
		title: 'Every battery string in parallel has a fuse of its own',
		severity: 'error',
		group: 'protection',
		why: 'A shorted cell or lead in one string is fed by all the others at once, through no fuse at all.',
		source: {
			'abyc-e11': 'ABYC E-11 (July 2025) 11.10.1.4.1, for parallel banks over 500 Ah; below that common practice',
			default: 'common practice, no source'
		}
	},

	messages: {
		joined: ({ strings, two }: { strings: string; two: boolean }) => ({
			message: `${capital(strings)} stand in parallel with no fuse or breaker between them: a fault in one is fed by ${two ? 'the other' : 'the others'} without limit.`,
			remedy: 'Give each string its own fuse at its positive post, before the common post.'
		})
	},

	/** One report for strings joined without a device in either pole; a warning for two of lead-acid, which are often left so. */
	*check(study) {
		const { form } = study;
		const free = unionFind(form.nodeCount);
		for (const { a, b, device, kind } of form.branches) if (!device && kind !== 'switch') free.union(a, b);
		const ends = ({ batteries }: BatteryString) => `${free.find(batteries[0]!.negative)} ${free.find(batteries.at(-1)!.positive)}`;
		for (const { strings } of banksOf(study).banks) {
			for (const joined of groupBy(strings, ends).values()) {
				if (joined.length < 2) continue;
				const isLead = joined.every((string) => string.batteries.every(({ part }) => chemistryOf(study, part) === 'lead-acid'));
				yield {
					message: 'joined',
					severity: isLead && joined.length === 2 ? 'warning' : 'error',
					data: { strings: listed(joined.map((string) => stringName(study, string))), two: joined.length === 2 },
					at: subjects(joined.flatMap(({ batteries }) => batteries.map(({ part }) => partSubject(part))))
				};
			}
		}
	}
});

const chemistryOf = (study: Study, part: string): unknown => study.part(part).params['chemistry'];
