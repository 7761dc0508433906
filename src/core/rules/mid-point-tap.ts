import { ampsText } from '#core/units';
import { banksOf } from './banks.ts';
import { defineRule } from './define.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const midPointTap = defineRule({
	meta: {
		id: 'mid-point-tap',
		title: 'Nothing draws from or charges part of a battery string',
		severity: 'error',
		group: 'batteries',
		why: 'The batteries of a string then differ in charge: one is drained for good, its partner overcharged.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		tapped: ({ names, below, above, currentA }: { names: string; below: string; above: string; currentA: number }) => ({
			message: `${capital(names)} ${currentA > 0 ? `(${ampsText(currentA)}) ` : ''}is connected between ${below} and ${above} of one string, so only part of the string serves it.`,
			remedy: 'Feed it from the whole string through a DC-DC converter of its voltage.'
		})
	},

	/** One report for each middle point. */
	*check(study) {
		const { midPoints, metalOf } = banksOf(study);
		if (midPoints.size === 0) return;
		const { loads, sources } = study.form;
		for (const [point, { below, above }] of midPoints) {
			const touches = ({ positive, negative }: { positive: number; negative: number }) =>
				metalOf(positive) === point || metalOf(negative) === point;
			const tappingLoads = loads.filter(touches);
			const parts = [...new Set([...tappingLoads, ...sources.filter(touches)].map(({ part }) => part))];
			if (parts.length === 0) continue;
			const currents = study.cases
				.filter(({ point }) => point.status === 'solved')
				.map(({ point }) => tappingLoads.reduce((sum, { index }) => sum + point.loadA[index]!, 0));
			yield {
				message: 'tapped',
				data: {
					names: listed(parts.map((part) => partName(study.part(part)))),
					below: partName(study.part(below.part)),
					above: partName(study.part(above.part)),
					currentA: Math.max(0, ...currents)
				},
				at: subjects([...parts, below.part, above.part].map(partSubject))
			};
		}
	}
});
