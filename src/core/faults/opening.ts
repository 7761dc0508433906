import type { ProtectiveDevice } from '#core/parts';
import { fuseTimes, timeAt } from '#core/tables';

/** When a device opens, seconds; Infinity where it need not, or cannot be relied on to. */
export interface Opening {
	/** It may open from here on. */
	readonly earliestS: number;
	/** It must have opened. */
	readonly latestS: number;
	readonly source: string;
}

/** Null for a device whose curve is not known: breakers, and fuses of no family. */
export function openingAt({ family, ratingA }: ProtectiveDevice, currentA: number): Opening | null {
	if (family === null) return null;
	const { value, source } = fuseTimes(family);
	const multiple = Math.abs(currentA) / ratingA;
	// Between what it holds and the first gate it may open as early as at the gate, and need not open at all.
	const isBeforeGates = multiple < value.earliest[0]![0];
	const earliestS = isBeforeGates ? (multiple <= value.holds ? Infinity : value.earliest[0]![1]) : timeAt(value.earliest, multiple);
	return { earliestS, latestS: timeAt(value.latest, multiple), source };
}

export type Selectivity = 'selective' | 'bands-touch' | 'not-selective';

/**
 * Whether the nearer device opens first, each at its own current. "selective": it has opened before the other may.
 * "bands-touch": the other may open first, or both. "not-selective": the other has opened before the nearer one may.
 */
export function selectivity(nearer: Opening, farther: Opening): Selectivity {
	if (farther.earliestS === Infinity || nearer.latestS < farther.earliestS) return 'selective';
	return farther.latestS < nearer.earliestS ? 'not-selective' : 'bands-touch';
}
