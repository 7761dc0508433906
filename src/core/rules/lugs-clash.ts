import { lugOf } from '#core/conductors';
import { millimetresText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
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
		let worst: { first: (typeof studs)[number]; second: (typeof studs)[number]; pitchMm: number; neededMm: number } | null = null;
		for (const [index, first] of studs.entries()) {
			for (const second of studs.slice(index + 1)) {
				const pitchMm = Math.hypot(first.at.x - second.at.x, first.at.y - second.at.y);
				const neededMm = (first.padWidthMm + second.padWidthMm) / 2;
				if (exceeds(neededMm, pitchMm) && (!worst || neededMm - pitchMm > worst.neededMm - worst.pitchMm)) {
					worst = { first, second, pitchMm, neededMm };
				}
			}
		}
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
	let widest: { padWidthMm: number; name: string } | null = null;
	for (const { item, gauge } of study.stack(key)?.layers ?? []) {
		if (!gauge || item.kind !== 'lug') continue;
		const { padWidthMm } = lugOf(gauge);
		if (!widest || padWidthMm > widest.padWidthMm) widest = { padWidthMm, name: study.conductorName(item.conductor) };
	}
	return widest;
}
