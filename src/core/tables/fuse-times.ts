import type { FuseFamilyId } from './ids.ts';
import type { Sourced } from './sourced.ts';

/** A point of a time-current curve: at this multiple of the rating, this many seconds. */
export type Gate = readonly [multiple: number, timeS: number];

/** Band in which a fuse of a family opens. Between gates the curves are straight on logarithmic scales. */
export interface FuseTimes {
	/** Carries this multiple of its rating for good. */
	readonly holds: number;
	/** Earliest: it may open from here on. */
	readonly earliest: readonly Gate[];
	/** Latest: it must have opened. */
	readonly latest: readonly Gate[];
}

/** Gates that give both times at the same multiple. */
const gates = (holds: number, ...rows: readonly (readonly [multiple: number, earliestS: number, latestS: number])[]): FuseTimes => ({
	holds,
	earliest: rows.map(([multiple, timeS]) => [multiple, timeS]),
	latest: rows.map(([multiple, , timeS]) => [multiple, timeS])
});

const BLADE = gates(1.1, [1.35, 0.75, 600], [1.6, 0.25, 50], [2, 0.15, 5], [3.5, 0.04, 0.5], [6, 0.02, 0.1]);
const LARGE_BLADE = gates(1.1, [1.35, 60, 1800], [2, 2, 60], [3.5, 0.2, 7], [6, 0.04, 1]);
const STRIP = gates(1, [1.35, 60, 1800], [2, 1, 15], [3.5, 0.3, 5], [6, 0.1, 1]);
const CLASS_T = gates(1, [1.35, 60, 7200], [2, 10, 480], [5, 0.04, 0.5], [10, 0.005, 0.02]);
const INDUSTRIAL: FuseTimes = {
	holds: 1.25,
	earliest: [
		[1.6, 60],
		[2.5, 10],
		[7, 0.1]
	],
	latest: [
		[1.6, 14_400],
		[5, 5],
		[13, 0.1]
	]
};

const memory = (value: FuseTimes, source: string): Sourced<FuseTimes> => ({ value, source, confidence: 'memory' });
const asStrip = { value: STRIP, source: 'common practice, no source: as a strip fuse', confidence: 'common-practice' } as const;

const TIMES: Readonly<Record<FuseFamilyId, Sourced<FuseTimes>>> = {
	'blade-mini': memory(BLADE, 'ISO 8820-3 type F, from memory'),
	'blade-regular': memory(BLADE, 'ISO 8820-3 type C, from memory'),
	'blade-large': memory(LARGE_BLADE, 'ISO 8820-3 type E, from memory'),
	'strip-sf30': memory(STRIP, 'ISO 8820-5 type SF 30, from memory'),
	'strip-sf51': memory(STRIP, 'ISO 8820-5 type SF 51, from memory'),
	limiter: asStrip,
	cube: asStrip,
	'class-t': { value: CLASS_T, source: 'common practice for UL 248-15 fuses, no source', confidence: 'common-practice' },
	cylindrical: memory(INDUSTRIAL, 'IEC 60269-1 gates of class gG, from memory')
};

/** When fuses of a family open. No curve here was seen in a published table: all are to be shown as unverified. */
export const fuseTimes = (id: FuseFamilyId): Sourced<FuseTimes> => TIMES[id];

/**
 * Supplementary cartridge fuses, latest opening: 135 % within an hour, 200 % within two minutes up to 30 A and four
 * minutes from 35 A to 60 A.
 */
export const SUPPLEMENTARY_LATEST: Sourced<(ratingA: number) => readonly Gate[]> = {
	value: (ratingA) => [
		[1.35, 3600],
		[2, ratingA <= 30 ? 120 : 240]
	],
	source: 'UL 248-14',
	confidence: 'verified'
};

/**
 * Seconds at a multiple of the rating by straight lines on logarithmic scales; Infinity before the first gate, and
 * beyond the last one the same I²t as there.
 */
export function timeAt(curve: readonly Gate[], multiple: number): number {
	const above = curve.findIndex(([m]) => m >= multiple);
	if (above < 0) {
		const [lastMultiple, lastS] = curve.at(-1)!;
		return lastS * (lastMultiple / multiple) ** 2;
	}
	const [m1, t1] = curve[above]!;
	if (m1 === multiple) return t1;
	if (above === 0) return Infinity;
	const [m0, t0] = curve[above - 1]!;
	return t0 * (t1 / t0) ** (Math.log(multiple / m0) / Math.log(m1 / m0));
}
