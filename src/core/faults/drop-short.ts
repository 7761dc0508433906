/**
 * A short is dropped somewhere and stays: which devices open, in which order and when. Each device heats by its own
 * current; when one has opened the currents of the others change, so that the rest is worked out anew.
 */
import { areaMm2 } from '#core/conductors';
import type { Conductor, ConductorId } from '#core/diagram';
import type { Branch, Network, NodeIndex } from '#core/network';
import { temperatureAfterC } from '#core/tables';
import { darkLoads } from './dark-loads.ts';
import { faultCircuit, type Condition } from './fault-circuit.ts';
import { openingAt } from './opening.ts';
import { shortBetween } from './short.ts';

/** Which edge of the fuses' bands is followed: each may open as early as "soonest", and must have opened by "latest". */
export type Pace = 'soonest' | 'middle' | 'latest';

export interface DropShort {
	readonly at: NodeIndex;
	readonly to: NodeIndex;
	/** Of the short itself, ohms. */
	readonly shortOhm: number;
	readonly condition: Condition;
	/** Conductors before the short, °C. */
	readonly startC: (id: ConductorId) => number;
}

/** Between two openings all currents stay as they are. */
export interface Stretch {
	readonly fromS: number;
	/** Infinity for the last, which lasts until somebody ends it. */
	readonly toS: number;
	/** Amps through the short. */
	readonly currentA: number;
	/** Amps through each device that carries some, by branch index. */
	readonly deviceA: ReadonlyMap<number, number>;
	/** Conductors at the end of the stretch, °C; of the last stretch, after `HELD_S` at most. */
	readonly conductorC: ReadonlyMap<ConductorId, number>;
	/** Branch of the device that opens at the end; null for the last. */
	readonly opens: number | null;
	/** Loads that are dark during it, though everything is switched on: indices into `Network.loads`. */
	readonly dark: readonly number[];
}

/** Heat leaves a conductor after this long, so that the adiabatic equation claims too much beyond (IEC 60364-4-43 434.5.2). */
export const HELD_S = 5;
/** A short that draws less than this is out, amps. */
export const OUT_A = 1;
/** A load with less than this share of its volts is dark: common practice, no source. */
const DARK_BELOW = 0.5;

/**
 * What follows from one short, first stretch first.
 *
 * @param paceOf of each device, by branch index
 */
export function dropShort(
	network: Network,
	conductors: Readonly<Record<ConductorId, Conductor>>,
	{ at, to, shortOhm, condition, startC }: DropShort,
	paceOf: (index: number) => Pace
): readonly Stretch[] {
	const devices = network.branches.filter(({ device }) => device !== null);
	const copper = network.branches.flatMap((branch) => {
		if (branch.origin.kind !== 'conductor') return [];
		const { id } = branch.origin;
		const conductor = conductors[id];
		return conductor ? [{ branch, id, area: areaMm2(conductor.gauge), initialC: startC(id) }] : [];
	});
	const opened = new Set<number>();
	const share = new Map<number, number>();
	const heat = new Map<ConductorId, number>();
	const stretches: Stretch[] = [];
	let fromS = 0;
	for (;;) {
		const short = shortBetween(faultCircuit(network, conductors, condition, opened), at, to, shortOhm);
		const flowing = new Map(
			devices.flatMap(({ index, a, b }) => (opened.has(index) ? [] : [[index, Math.abs(short.branchA({ index, a, b }))]]))
		);
		const isOut = short.currentA < OUT_A;
		const next = isOut ? null : nextToOpen(devices, flowing, share, paceOf);
		const lastsS = next ? next.inS : Infinity;
		for (const { branch, id } of copper) {
			const amps = isOut ? 0 : short.branchA(branch);
			heat.set(id, (heat.get(id) ?? 0) + amps ** 2 * Math.min(lastsS, HELD_S));
		}
		stretches.push({
			fromS,
			toS: fromS + lastsS,
			currentA: short.currentA,
			deviceA: flowing,
			conductorC: new Map(copper.map(({ id, area, initialC }) => [id, temperatureAfterC(initialC, heat.get(id)!, area)])),
			opens: next ? next.index : null,
			dark: darkLoads(network, opened, ({ positive, negative }) => short.voltsLeft(positive, negative) < DARK_BELOW)
		});
		if (!next) return stretches;
		for (const [index, rate] of next.ratePerS) share.set(index, (share.get(index) ?? 0) + rate * next.inS);
		opened.add(next.index);
		fromS += next.inS;
	}
}

interface Next {
	readonly index: number;
	readonly inS: number;
	/** Share of its life that each device loses per second. */
	readonly ratePerS: ReadonlyMap<number, number>;
}

/** The device whose life is used up first; null where none opens at these currents. */
function nextToOpen(
	devices: readonly Branch[],
	flowing: ReadonlyMap<number, number>,
	share: ReadonlyMap<number, number>,
	paceOf: (index: number) => Pace
): Next | null {
	const ratePerS = new Map<number, number>();
	let first: { readonly index: number; readonly inS: number } | null = null;
	for (const { index, device } of devices) {
		const amps = flowing.get(index);
		if (amps === undefined) continue;
		const wholeS = timeToOpenS(openingAt(device!, amps), paceOf(index));
		if (wholeS === Infinity) continue;
		ratePerS.set(index, 1 / wholeS);
		const inS = Math.max(0, 1 - (share.get(index) ?? 0)) * wholeS;
		if (!first || inS < first.inS) first = { index, inS };
	}
	return first && { ...first, ratePerS };
}

function timeToOpenS(opening: ReturnType<typeof openingAt>, pace: Pace): number {
	if (!opening) return Infinity;
	if (pace === 'soonest') return opening.earliestS;
	return pace === 'latest' ? opening.latestS : Math.sqrt(opening.earliestS * opening.latestS);
}
