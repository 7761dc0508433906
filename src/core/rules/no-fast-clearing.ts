import { areaMm2, gaugeText, shortCircuitK, withstandS } from '#core/conductors';
import type { ConductorEnd } from '#core/diagram';
import { openingAt } from '#core/faults';
import type { LetThrough } from '#core/protection';
import { fuseFamily, fuseTimes } from '#core/tables';
import { ampsText } from '#core/units';
import { alsoText, exceeds, limitedByText, sources } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { returnBeside } from './load-feed.ts';
import { otherEnd } from './device-free.ts';
import type { DeviceBranch } from './device-limits.ts';
import { greatest } from './extremes.ts';
import { secondsText } from './fault-words.ts';
import { groupBy } from './group-by.ts';
import type { ConductorView, Study } from './study.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { gathered } from './watch.ts';

interface Data {
	readonly name: string;
	readonly gauge: string;
	readonly devices: string;
	readonly currentA: number;
	readonly latestS: number;
	readonly allowedS: number;
	/** Largest rating of the same type that is fast enough; null where there is none, or several devices feed it. */
	readonly ratingA: number | null;
	/** The return that would have to grow with it, in words. */
	readonly beside: string;
	readonly also: string;
}

/** Longest that a fault may last: the adiabatic equation holds no longer, and neither does anything else. */
const LONGEST_S = 5;
/** Devices with a smaller share of a fault see a greater one when the others have opened. */
const LEAST_SHARE = 0.2;

const SOURCE = 'IEC 60364-4-43 434.5.2';

export const noFastClearing = defineRule({
	meta: {
		id: 'no-fast-clearing',
		title: 'A short at the far end of a run opens its fuse before the conductor suffers',
		severity: 'error',
		group: 'protection',
		why: 'A long thin run lets so little current into a short that the fuse takes its time, or never opens; the conductor cooks meanwhile.',
		source: { default: SOURCE }
	},

	messages: {
		never: (data: Data) => ({
			message: `A short at the far end of ${data.name} (${data.gauge}) draws only ${ampsText(data.currentA)}: ${data.devices} need not open at all.${data.also}`,
			remedy: remedy(data)
		}),
		slow: (data: Data) => ({
			message: `A short at the far end of ${data.name} (${data.gauge}) draws ${ampsText(data.currentA)}: ${data.devices} may take ${secondsText(data.latestS)}; ${secondsText(data.allowedS)} is the most ${data.allowedS < LONGEST_S ? 'the conductor stands' : 'allowed'}.${data.also}`,
			remedy: remedy(data)
		})
	},

	/** One report for each set of devices, about the conductor that is worst off. */
	*check(study) {
		for (const alike of groupBy(slowClearings(study), ({ letThrough }) =>
			letThrough.limitedBy.map(({ part, link }) => `${part}.${link}`).join()
		).values()) {
			const worst = greatest(alike, (item) => item.latestS / item.allowedS)!;
			const { view, letThrough, latestS, allowedS, currentA, devices } = worst;
			const others = [...new Set(alike.map((item) => item.view.id))].filter((id) => id !== view.id);
			const parts = [...new Set(letThrough.limitedBy.map(({ part }) => part))];
			yield {
				message: latestS === Infinity ? 'never' : 'slow',
				data: {
					name: view.name,
					gauge: gaugeText(view.conductor.gauge),
					devices: limitedByText(study, letThrough),
					currentA,
					latestS: latestS === Infinity ? 0 : latestS,
					allowedS,
					ratingA: devices.length === 1 ? fastEnoughA(devices[0]!, currentA, allowedS) : null,
					beside: returnBeside(study, view),
					also: alsoText(study, others)
				},
				at: subjects([conductorSubject(view.id), ...parts.map(partSubject), ...others.map(conductorSubject)]),
				source: sources(
					SOURCE,
					shortCircuitK(view.conductor.insulationC).source,
					...devices.flatMap(({ device }) => (device.family === null ? [] : [fuseTimes(device.family).source]))
				),
				unverified: true
			};
		}
	}
});

const remedy = ({ ratingA, name, beside }: Data): string =>
	ratingA === null
		? `Use a thicker conductor for ${name}${beside}, or a faster fuse.`
		: `Fit at most ${ampsText(ratingA)} of the same type, or a thicker conductor for ${name}${beside}.`;

interface SlowClearing {
	readonly view: ConductorView;
	readonly letThrough: LetThrough;
	readonly devices: readonly DeviceBranch[];
	readonly currentA: number;
	readonly latestS: number;
	readonly allowedS: number;
}

const slowClearings = gathered(
	(study) => study.conductors,
	(study, view): readonly SlowClearing[] => {
		if (view.pole !== 'positive' || view.conductor.use === 'cranking') return [];
		return (['from', 'to'] as const).flatMap((fedFrom) => slowClearing(study, view, fedFrom) ?? []);
	}
);

/** The least current into a short at the end opposite to `fedFrom`, if its devices are too slow for it. */
function slowClearing(study: Study, view: ConductorView, fedFrom: ConductorEnd): SlowClearing | null {
	const { form, faults } = study;
	const letThrough = study.protection(view.id)[fedFrom];
	// More than the conductor is allowed is a fault of its own, or a tap short enough to be let off.
	const { limit } = view;
	if (letThrough.currentA === 0 || exceeds(letThrough.currentA, limit.currentA)) return null;
	const short = faults.short(form.nodeOfEnd.get(view.id)![otherEnd(fedFrom)], 'least');
	// Without a battery the supply limits itself.
	if (!short || short.openV === 0) return null;
	const currentA = Math.abs(short.branchA(view.branch));
	// Nothing comes from this end, but for rounding: the short is fed past the conductor.
	if (currentA < 1e-6 * letThrough.currentA) return null;
	const fed = letThrough.limitedBy.flatMap(({ part, link }) => {
		const index = form.branchOfLink.get(`${part}.${link}`);
		const branch = index === undefined ? null : (form.branches[index] as DeviceBranch);
		if (!branch?.device) return [];
		const amps = short.branchA(branch);
		return !exceeds(LEAST_SHARE * currentA, Math.abs(amps)) ? [{ branch, opening: openingAt(branch.device, amps) }] : [];
	});
	const openings = fed.map(({ opening }) => opening);
	if (openings.length === 0 || openings.includes(null)) return null;
	const latestS = Math.max(...openings.map((opening) => opening!.latestS));
	const { gauge, insulationC } = view.conductor;
	const allowedS = Math.min(LONGEST_S, withstandS(areaMm2(gauge), insulationC, currentA));
	return exceeds(latestS, allowedS) ? { view, letThrough, devices: fed.map(({ branch }) => branch), currentA, latestS, allowedS } : null;
}

function fastEnoughA({ device }: DeviceBranch, currentA: number, allowedS: number): number | null {
	if (device.family === null) return null;
	const { value: ratingsA } = fuseFamily(device.family).ratingsA;
	return (
		// A larger one of the same type is slower: it is not among these.
		ratingsA.findLast((ratingA) => !exceeds(openingAt({ ...device, ratingA }, currentA)!.latestS, allowedS)) ?? null
	);
}
