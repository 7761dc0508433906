import { lugOf } from '#core/conductors';
import { millimetresText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { greatest } from './extremes.ts';
import type { Study } from './study.ts';
import { studSubject, subjects } from './subjects.ts';
import { partName } from './words.ts';

export const lugsClash = defineRuleForEach('parts', {
	meta: {
		id: 'lugs-clash',
		title: 'Lugs on neighbouring studs do not touch',
		severity: 'warning',
		group: 'studs',
		why: 'A lug jammed against its neighbour does not lie flat, or bridges two fuses.',
		source: { default: 'lug widths: common practice, no source; makers differ, measure yours' }
	},

	messages: {
		clash: ({ place, pitchMm, neededMm, first, second }: Data) => ({
			message: `On ${place} the lugs of ${first} and ${second} need ${millimetresText(neededMm)} from stud to stud; there are ${millimetresText(pitchMm)}.`,
			remedy: 'Leave a stud free between them, turn one lug out of line, or use narrower lugs or a bus with a wider pitch.'
		})
	},

	/** One report for each part, about the tightest pair of neighbouring studs. */
	*checkOne(part, study) {
		const studs = part.terminals
			.filter(({ kind }) => kind === 'stud')
			.flatMap(({ id, label, at, side }) => {
				const widest = widestLug(study, `${part.id}.${id}`);
				return widest ? [{ key: `${part.id}.${id}`, label, at, side, ...widest }] : [];
			});
		const pairs = studs.flatMap((first, index) =>
			studs.slice(index + 1).map((second) => ({
				first,
				second,
				pitchMm: Math.hypot(first.at.x - second.at.x, first.at.y - second.at.y),
				neededMm: (first.padWidthMm + second.padWidthMm) / 2
			}))
		);
		const clashing = pairs.filter(({ neededMm, pitchMm }) => exceeds(neededMm, pitchMm));
		const worst = greatest(clashing, ({ neededMm, pitchMm }) => neededMm - pitchMm);
		if (!worst) return;
		const { first, second, pitchMm, neededMm } = worst;
		yield {
			message: 'clash',
			data: { place: `${partName(part)} ${first.label} and ${second.label}`, pitchMm, neededMm, first: first.name, second: second.name },
			at: subjects([studSubject(first.key), studSubject(second.key)])
		};
	}
});

interface Data {
	readonly place: string;
	readonly pitchMm: number;
	readonly neededMm: number;
	readonly first: string;
	readonly second: string;
}

function widestLug(study: Study, key: string): { padWidthMm: number; name: string } | null {
	const lugs = (study.stack(key)?.layers ?? []).flatMap(({ item, gauge }) =>
		gauge && item.kind === 'lug' ? [{ padWidthMm: lugOf(gauge).padWidthMm, name: study.conductorName(item.conductor) }] : []
	);
	return greatest(lugs, ({ padWidthMm }) => padWidthMm) ?? null;
}
