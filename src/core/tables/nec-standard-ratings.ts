import type { Sourced } from './sourced.ts';

// prettier-ignore
const RATINGS_A = [
	10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600,
	700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000
];

/** Standard ratings of fuses and breakers, amps, ascending. */
export const STANDARD_RATINGS: Sourced<readonly number[]> = {
	value: RATINGS_A,
	source: 'NFPA 70:2023 Table 240.6(A)',
	confidence: 'verified'
};

/** The smallest standard rating not below `currentA`; null beyond the table. */
export const nextStandardRatingA = (currentA: number): number | null =>
	STANDARD_RATINGS.value.find((ratingA) => ratingA >= currentA) ?? null;
