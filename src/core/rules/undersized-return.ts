import { gaugeText } from '#core/conductors';
import { greatestDevice } from '#core/profiles';
import type { LetThrough } from '#core/protection';
import { ampsText } from '#core/units';
import { amperageSource, amperageText, exceeds, gaugeForDevice, limitedByText, limitText } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { overcurrentFaults } from './overcurrent.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { capital } from './words.ts';

interface Data {
	readonly name: string;
	readonly gauge: string;
	readonly amperage: string;
	readonly devices: string;
	readonly currentA: number;
	readonly limitA: number;
	readonly limit: string;
	readonly thicker: string | null;
}

export const undersizedReturn = defineRule({
	meta: {
		id: 'undersized-return',
		title: 'A negative conductor survives a fault in what it returns from',
		severity: 'error',
		group: 'protection',
		why: 'A short inside a load goes home through the negative conductor: it must stand what the fuse in the positive lets through.',
		source: { 'us-small-craft': '33 CFR 183.455(c), applied to the return by common practice', default: 'common practice, no source' }
	},

	messages: {
		undersized: ({ name, gauge, amperage, devices, currentA, limitA, limit, thicker }: Data) => ({
			message: `${capital(name)} (${gauge}, ${amperage}) is the return of circuits fed through ${devices}. A short in a load would send ${ampsText(currentA)} through it; at most ${ampsText(limitA)} is allowed (${limit}).`,
			remedy: thicker ? `Use at least ${thicker} for ${name}, or smaller fuses.` : 'Use smaller fuses, or a second return.'
		})
	},

	*check(study) {
		const positives = overcurrentFaults(study);
		for (const view of study.conductors) {
			if (view.pole !== 'negative' || view.conductor.use === 'cranking') continue;
			const { from, to } = study.protection(view.id);
			const letThrough = from.currentA >= to.currentA ? from : to;
			const limit = greatestDevice(study.profile, view.ampacity.currentA, study.diagram.system.nominalV);
			// Where nothing limits the current the fault is a missing fuse in the positive.
			if (letThrough.currentA === Infinity || !exceeds(letThrough.currentA, limit.currentA)) continue;
			// The same devices are too large for a positive conductor no thicker than this: that repair serves both.
			const known = positives.some((fault) => sameDevices(fault.letThrough, letThrough) && !exceeds(fault.limit.currentA, limit.currentA));
			if (known) continue;
			const parts = [...new Set(letThrough.limitedBy.map(({ part }) => part))];
			yield {
				message: 'undersized',
				data: {
					name: view.name,
					gauge: gaugeText(view.conductor.gauge),
					amperage: amperageText(view.ampacity),
					devices: limitedByText(study, letThrough),
					currentA: letThrough.currentA,
					limitA: limit.currentA,
					limit: limitText(limit, view.ampacity.currentA),
					thicker: gaugeForDevice(study, view, letThrough.currentA)
				},
				at: subjects([conductorSubject(view.id), ...parts.map(partSubject)]),
				source: `${limit.source}; ${amperageSource(view.ampacity)}`,
				unverified: view.ampacity.unverified
			};
		}
	}
});

function sameDevices(a: LetThrough, b: LetThrough): boolean {
	const keys = ({ limitedBy }: LetThrough) => limitedBy.map(({ part, link }) => `${part}.${link}`).sort();
	return keys(a).join() === keys(b).join();
}
