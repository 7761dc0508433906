import { ampsText } from '#core/units';
import { deviceName, exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { devicesOf } from './device-limits.ts';
import { greatest } from './extremes.ts';
import { partSubject } from './subjects.ts';
import { capital } from './words.ts';

/** Current the other way below this share of the rating is no arc worth speaking of. */
const LEAST_SHARE = 0.01;

export const breakerPolarity = defineRule({
	meta: {
		id: 'breaker-polarity',
		title: 'A polarised breaker carries current in its marked direction only',
		severity: 'error',
		group: 'protection',
		why: 'A magnet drives the arc of a polarised breaker into its chute. With the current reversed it drives it the wrong way, and the breaker burns instead of opening.',
		source: { default: 'marking of polarity by IEC 60947-2; common practice' }
	},

	messages: {
		both: (data: { name: string; forwardA: number; forwardCase: string; backA: number; backCase: string }) => ({
			message: `${capital(data.name)} is polarised, but carries ${ampsText(data.forwardA)} from line to load in “${data.forwardCase}” and ${ampsText(data.backA)} the other way in “${data.backCase}”.`,
			remedy: 'Use a breaker that is not polarised, or a fuse.'
		}),
		backwards: ({ name, backA, backCase }: { name: string; backA: number; backCase: string }) => ({
			message: `${capital(name)} is polarised and connected the wrong way round: it carries ${ampsText(backA)} from load to line in “${backCase}”.`,
			remedy: 'Exchange the conductors at line and load.'
		})
	},

	*check(study) {
		for (const { index, device, origin } of devicesOf(study)) {
			if (!device.polarised) continue;
			const flows = study.cases
				.filter(({ point }) => point.status === 'solved')
				.map(({ id, operatingCase, point }) => ({ caseId: id, label: operatingCase.label, amps: point.branchA[index]! }));
			const least = LEAST_SHARE * device.ratingA;
			const forward = greatest(
				flows.filter(({ amps }) => exceeds(amps, least)),
				({ amps }) => amps
			);
			const back = greatest(
				flows.filter(({ amps }) => exceeds(-amps, least)),
				({ amps }) => -amps
			);
			if (!back) continue;
			const name = deviceName(study, origin);
			const placed = { at: [partSubject(origin.part)], caseId: back.caseId } as const;
			const backward = { name, backA: -back.amps, backCase: back.label };
			yield forward
				? { message: 'both', data: { ...backward, forwardA: forward.amps, forwardCase: forward.label }, ...placed }
				: { message: 'backwards', data: backward, ...placed };
		}
	}
});
