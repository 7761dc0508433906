import { wattsText } from '#core/units';
import { defineRule } from './define.ts';
import { batteriesBehind } from './electronics-open.ts';
import { choiceOf, numberOf } from './params.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

/** Rated output from which the surge into empty capacitors counts, watts: common practice, no source. */
const FROM_W = { low: 2000, high: 1000 } as const;

export const noPrecharge = defineRule({
	meta: {
		id: 'no-precharge',
		title: 'Large capacitors are charged gently',
		severity: 'note',
		group: 'conductors',
		why: 'Closing a switch onto the empty capacitors of a large inverter draws thousands of amps for an instant: contacts pit, and battery electronics open.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		missing: ({ names, one, smallestW }: { names: string; one: boolean; smallestW: number }) => ({
			message: `${capital(names)} (${wattsText(smallestW)}${one ? '' : ' and more'}) on lithium ${one ? 'is' : 'are'} switched on with nothing known that charges ${one ? 'its' : 'their'} capacitors first.`,
			remedy:
				'Charge them through 10 to 100 Ω and at least 25 W for a few seconds before the switch is closed, or use an inverter that does so itself.'
		})
	},

	/** One report for all inverters of a size that matters, on lithium, where nothing is said of it. */
	*check(study) {
		const { form, part, diagram } = study;
		const fromW = diagram.system.nominalV > 12 ? FROM_W.high : FROM_W.low;
		const hard = form.loads.flatMap((load) => {
			const view = part(load.part);
			const watts = numberOf(view, 'watts');
			if (watts === null || watts < fromW || choiceOf(view, 'precharge') === 'yes') return [];
			const isLithium = batteriesBehind(study, load.positive).some(
				(battery) => choiceOf(part(battery.part), 'chemistry') === 'lithium-iron-phosphate'
			);
			return isLithium ? [{ view, watts }] : [];
		});
		if (hard.length === 0) return;
		yield {
			message: 'missing',
			data: {
				names: listed(hard.map(({ view }) => partName(view))),
				one: hard.length === 1,
				smallestW: Math.min(...hard.map(({ watts }) => watts))
			},
			at: subjects(hard.map(({ view }) => partSubject(view.id)))
		};
	}
});
