import { BRIGHT_SUN_FACTOR } from '#core/tables';
import { ampsText, wattsText } from '#core/units';
import { arraysOf } from './arrays.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { numberOf } from './params.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

/** Amps the array’s peak could charge with, beyond the controller’s own limit, before it is worth saying. */
const CLIPPED = 1.25;

export const arrayCurrent = defineRule({
	meta: {
		id: 'array-current',
		title: 'An array keeps below its controller’s current',
		severity: 'error',
		group: 'batteries',
		why: 'Some controllers limit what they take, and waste the rest; others are destroyed when the array’s short-circuit current is more than they bear.',
		source: { default: 'NFPA 70 690.8, from memory; the current given for the controller' }
	},

	messages: {
		short: ({ name, arrayA, limitA }: { name: string; arrayA: number; limitA: number }) => ({
			message: `In bright sun the strings of ${name} can deliver ${ampsText(arrayA)}; ${name} bears ${ampsText(limitA)} from its array.`,
			remedy: 'Use fewer strings in parallel, or a controller for more current.'
		}),
		clipped: ({ name, peakW, peakA, ratedA }: { name: string; peakW: number; peakA: number; ratedA: number }) => ({
			message: `${capital(name)} charges with ${ampsText(ratedA)} at most; its array of ${wattsText(peakW)} could give ${ampsText(peakA)}.`,
			remedy: 'Accept that the peak is lost, or use a controller of a higher rating.'
		})
	},

	*check(study) {
		for (const { view, inParallel, iscA } of arraysOf(study)) {
			const name = partName(view);
			const at = [partSubject(view.id)] as const;
			const limitA = numberOf(view, 'maxPvA');
			const arrayA = iscA === null ? null : BRIGHT_SUN_FACTOR.value * inParallel * iscA;
			if (arrayA !== null && limitA !== null && exceeds(arrayA, limitA)) {
				yield { message: 'short', data: { name, arrayA, limitA }, at, unverified: true };
				continue;
			}
			const [peakW, setV, ratedA] = [numberOf(view, 'arrayW'), numberOf(view, 'setV'), numberOf(view, 'maxA')];
			if (peakW === null || setV === null || ratedA === null) continue;
			const peakA = peakW / setV;
			if (!exceeds(peakA, CLIPPED * ratedA)) continue;
			const source = 'common practice, no source';
			yield { message: 'clipped', severity: 'note', data: { name, peakW, peakA, ratedA }, at, source };
		}
	}
});
