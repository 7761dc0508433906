import { nextStandardRatingA, type Sourced } from '#core/tables';
import type { Profile } from './types.ts';

/** The greatest overcurrent device for a conductor, amps, and the clause that gives it. */
export interface GreatestDevice {
	readonly currentA: number;
	readonly source: string;
	/** "1.5 × 45 A" or "the next standard rating above 445 A". */
	readonly reason: 'factor' | 'next-standard';
	readonly factor: Sourced<number>;
}

/** Greatest rating, or sum of ratings feeding in parallel, that protects a conductor of amperage `ampacityA`. */
export function greatestDevice({ overcurrent }: Profile, ampacityA: number, nominalV: number): GreatestDevice {
	const factor = overcurrent.factor(nominalV);
	const byFactorA = factor.value * ampacityA;
	const standardA = nextStandardRatingA(ampacityA);
	const upTo = overcurrent.nextStandardUpTo;
	if (upTo && standardA !== null && standardA > byFactorA && standardA <= upTo.value * ampacityA) {
		return { currentA: standardA, source: upTo.source, reason: 'next-standard', factor };
	}
	return { currentA: byFactorA, source: factor.source, reason: 'factor', factor };
}
