import { ampsText, voltsText } from '#core/units';
import { caseName, continuousCases } from './banks.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { greatest } from './extremes.ts';
import { numberOf } from './params.ts';
import { pathDrop } from './path-drop.ts';
import type { CaseResult, Study } from './study.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

/** Peak to peak for each volt the steady current loses: the current swings between nothing and twice its mean. */
const SWING = 2;
/** Ripple on 12 V, peak to peak, volts; more on higher systems in proportion. Common practice, no source. */
const MOST_V = 0.5;
/** From this share lost on, the conductors are found too thin by the rule on that. */
const FOUND_PERCENT = 3;

interface Data {
	readonly name: string;
	readonly rippleV: number;
	readonly mostV: number;
	readonly currentA: number;
	readonly caseName: string;
}

export const inverterRipple = defineRule({
	meta: {
		id: 'inverter-ripple',
		title: 'An inverter’s ripple stays small',
		severity: 'warning',
		group: 'conductors',
		why: 'An inverter draws its current in pulses at twice the mains frequency. What they lose on the way shakes the voltage of everything else, and heats batteries and capacitors.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		large: ({ name, rippleV, mostV, currentA, caseName }: Data) => ({
			message: `${capital(name)} draws ${ampsText(currentA)} in pulses in “${caseName}”, which makes about ${voltsText(rippleV)} of ripple at its terminals; ${voltsText(mostV)} is the most.`,
			remedy: 'Use shorter or thicker conductors both ways, or place the inverter nearer to the battery.'
		})
	},

	*check(study) {
		const mostV = (MOST_V * study.diagram.system.nominalV) / 12;
		for (const load of study.form.loads) {
			if (numberOf(study.part(load.part), 'watts') === null) continue;
			const worst = worstDrop(study, load);
			if (!worst || exceeds(worst.percent, FOUND_PERCENT) || !exceeds(SWING * worst.ownV, mostV)) continue;
			yield {
				message: 'large',
				data: {
					name: partName(study.part(load.part)),
					rippleV: SWING * worst.ownV,
					mostV,
					currentA: worst.result.point.loadA[load.index]!,
					caseName: caseName(worst.result)
				},
				at: [partSubject(load.part)],
				caseId: worst.result.id
			};
		}
	}
});

function worstDrop(study: Study, load: Study['form']['loads'][number]): { result: CaseResult; ownV: number; percent: number } | null {
	const drops = continuousCases(study).flatMap((result, place) => {
		const drop = pathDrop(study, place, load);
		return drop ? [{ result, ownV: drop.ownV, percent: (100 * drop.ownV) / drop.nominalV }] : [];
	});
	return greatest(drops, ({ ownV }) => ownV) ?? null;
}
