import { nextStandardRatingA, type Sourced } from '#core/tables';
import type { Ampacity, Profile } from './types.ts';

/** The greatest overcurrent device for a conductor, amps, and the clause that gives it. */
export interface GreatestDevice {
	readonly currentA: number;
	readonly source: string;
	/** "1.5 × 45 A", "the next standard rating above 445 A", or what a table gives for the size. */
	readonly reason: 'factor' | 'next-standard' | 'size';
	readonly factor: Sourced<number>;
	/** The limit is from memory. The amperage it is taken of says so for itself. */
	readonly unverified: boolean;
}

/** Greatest rating, or sum of ratings feeding in parallel, that protects a conductor of this amperage. */
export function greatestDevice(
	{ overcurrent }: Pick<Profile, 'overcurrent'>,
	{ currentA: ampacityA, deviceBySize }: Pick<Ampacity, 'currentA' | 'deviceBySize'>,
	nominalV: number
): GreatestDevice {
	const factor = overcurrent.factor(nominalV);
	const byFactorA = factor.value * ampacityA;
	const standardA = nextStandardRatingA(ampacityA);
	const upTo = overcurrent.nextStandardUpTo;
	const limit = (currentA: number, { source, confidence }: Sourced<number>, reason: GreatestDevice['reason']): GreatestDevice => ({
		currentA,
		source,
		reason,
		factor,
		unverified: confidence === 'memory'
	});
	const isNextAllowed = standardA !== null && standardA > byFactorA && standardA <= upTo.value * ampacityA;
	const byAmperage = isNextAllowed ? limit(standardA, upTo, 'next-standard') : limit(byFactorA, factor, 'factor');
	if (deviceBySize && deviceBySize.value < byAmperage.currentA) return limit(deviceBySize.value, deviceBySize, 'size');
	return byAmperage;
}
