import type { Conductor, ConductorId } from '#core/diagram';
import type { Network } from '#core/network';
import { dropShort, OUT_A, type DropShort, type Pace, type Stretch } from './drop-short.ts';

/** When one device opens, over all that its own band and those of the others allow. */
export interface OpeningBand {
	/** Branch of the device. */
	readonly index: number;
	readonly earliestS: number;
	/** Infinity where it need not open: because of its band, or because another may be quicker. */
	readonly latestS: number;
	readonly mayBeFirst: boolean;
}

/** A short followed along the early, the middle and the late edge of all fuses' bands, and what may differ between. */
export interface ShortStory {
	readonly runs: Readonly<Record<Pace, readonly Stretch[]>>;
	/** Devices that may open, by their earliest time. */
	readonly openings: readonly OpeningBand[];
	/** Devices that carry more than their rating and whose curve is not known, so that nothing is said of their time. */
	readonly withoutCurve: readonly number[];
	/** True when the short is surely out in the end: also at the latest pace. */
	readonly clears: boolean;
}

export function shortStory(network: Network, conductors: Readonly<Record<ConductorId, Conductor>>, drop: DropShort): ShortStory {
	const run = (paceOf: (index: number) => Pace): readonly Stretch[] => dropShort(network, conductors, drop, paceOf);
	const runs = { soonest: run(() => 'soonest'), middle: run(() => 'middle'), latest: run(() => 'latest') };
	const even = [runs.soonest, runs.middle, runs.latest];

	// One device quick and all others slow, and the reverse: whether it may open at all, and whether it must.
	const openings = mayOpen(network, even).flatMap((device): readonly OpeningBand[] => {
		const quick = run((index) => (index === device ? 'soonest' : 'latest'));
		const slow = run((index) => (index === device ? 'latest' : 'soonest'));
		const timesS = [...even, quick, slow].map((stretches) => openS(stretches, device));
		const earliestS = Math.min(...timesS);
		if (earliestS === Infinity) return [];
		return [{ index: device, earliestS, latestS: Math.max(...timesS), mayBeFirst: quick[0]!.opens === device }];
	});
	const withoutCurve = network.branches.filter(
		({ index, device }) => device?.family === null && runs.soonest.some(({ deviceA }) => (deviceA.get(index) ?? 0) > device.ratingA)
	);
	return {
		runs,
		openings: openings.sort((a, b) => a.earliestS - b.earliestS || a.latestS - b.latestS),
		withoutCurve: withoutCurve.map(({ index }) => index),
		clears: runs.latest.at(-1)!.currentA < OUT_A
	};
}

/** Devices with a curve that carry more than their rating at some time: others open at no pace. */
function mayOpen({ branches }: Network, runs: readonly (readonly Stretch[])[]): number[] {
	const isOver = ({ index, device }: Network['branches'][number]): boolean =>
		device !== null &&
		device.family !== null &&
		runs.some((stretches) => stretches.some(({ deviceA }) => (deviceA.get(index) ?? 0) > device.ratingA));
	return branches.filter(isOver).map(({ index }) => index);
}

const openS = (stretches: readonly Stretch[], device: number): number => stretches.find(({ opens }) => opens === device)?.toS ?? Infinity;
