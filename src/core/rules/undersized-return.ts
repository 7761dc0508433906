import { gaugeText } from '#core/conductors';
import type { GreatestDevice } from '#core/profiles';
import type { LetThrough } from '#core/protection';
import { ampsText } from '#core/units';
import { alsoText, amperageSource, amperageText, exceeds, gaugeForDevice, limitedByText, limitText, sources } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { least } from './extremes.ts';
import { groupBy } from './group-by.ts';
import { overcurrentFaults } from './overcurrent.ts';
import type { ConductorView } from './study.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { upstreamFaults } from './upstream-faults.ts';
import { derived, gathered } from './watch.ts';
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
	readonly also: string;
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
		undersized: ({ name, gauge, amperage, devices, currentA, limitA, limit, thicker, also }: Data) => ({
			message: `${capital(name)} (${gauge}, ${amperage}) is the return of circuits fed through ${devices}. A short in a load would send ${ampsText(currentA)} through it; at most ${ampsText(limitA)} is allowed (${limit}).${also}`,
			remedy: thicker ? `Use at least ${thicker} for ${name}, or smaller fuses.` : 'Use smaller fuses, or a second return.'
		})
	},

	/** One report for all returns that the same devices are too large for, about the thinnest. */
	*check(study) {
		for (const [thinnest, ...others] of groupBy(faultsOf(study), ({ letThrough }) => devicesKey(letThrough)).values()) {
			const { view, limit, letThrough } = least([thinnest!, ...others], (item) => item.limit.currentA)!;
			const alike = [thinnest!, ...others].map((fault) => fault.view.id).filter((id) => id !== view.id);
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
					thicker: gaugeForDevice(study, view, letThrough.currentA),
					also: alsoText(study, alike)
				},
				at: subjects([conductorSubject(view.id), ...parts.map(partSubject), ...alike.map(conductorSubject)]),
				source: sources(limit.source, amperageSource(view.ampacity)),
				unverified: view.ampacity.unverified || limit.unverified
			};
		}
	}
});

interface ReturnFault {
	readonly view: ConductorView;
	readonly limit: GreatestDevice;
	readonly letThrough: LetThrough;
}

const upstream = derived((study) => upstreamFaults(study.form, overcurrentFaults(study)));

const faultsOf = gathered(
	(study) => study.conductors,
	(study, view): readonly ReturnFault[] => {
		if (view.pole !== 'negative' || view.conductor.use === 'cranking') return [];
		const { limit } = view;
		if (!exceeds(study.letThroughBound(view.id), limit.currentA)) return [];
		const { from, to } = study.protection(view.id);
		const letThrough = from.currentA >= to.currentA ? from : to;
		// Where nothing limits the current the fault is a missing fuse in the positive.
		if (letThrough.currentA === Infinity || !exceeds(letThrough.currentA, limit.currentA)) return [];
		// Devices too large for a positive conductor no thicker than this, on the only way here: that repair serves both.
		const isKnown = upstream(study)(letThrough).some((fault) => !exceeds(fault.limit.currentA, limit.currentA));
		return isKnown ? [] : [{ view, limit, letThrough }];
	}
);

const keys = new WeakMap<LetThrough, string>();

/** Names the devices. Kept with the let-through: returns on common loops share one, and large systems have many devices. */
function devicesKey(letThrough: LetThrough): string {
	let key = keys.get(letThrough);
	if (key === undefined) {
		key = letThrough.limitedBy
			.map(({ part, link }) => `${part}.${link}`)
			.sort()
			.join();
		keys.set(letThrough, key);
	}
	return key;
}
