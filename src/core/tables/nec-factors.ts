import type { Sourced } from './sourced.ts';

export interface AmbientRow {
	/** Applies up to and including this ambient temperature, from the row before. */
	readonly upToC: number;
	/** Factor by insulation rating in °C; null where the insulation cannot be used. */
	readonly 60: number | null;
	readonly 75: number | null;
	readonly 90: number;
}

// prettier-ignore
const AMBIENT: readonly (readonly [number, number | null, number | null, number])[] = [
	[10, 1.29, 1.2, 1.15], [15, 1.22, 1.15, 1.12], [20, 1.15, 1.11, 1.08], [25, 1.08, 1.05, 1.04], [30, 1, 1, 1],
	[35, 0.91, 0.94, 0.96], [40, 0.82, 0.88, 0.91], [45, 0.71, 0.82, 0.87], [50, 0.58, 0.75, 0.82], [55, 0.41, 0.67, 0.76],
	[60, null, 0.58, 0.71], [65, null, 0.47, 0.65], [70, null, 0.33, 0.58], [75, null, null, 0.5], [80, null, null, 0.41],
	[85, null, null, 0.29]
];

/** Ambient correction to amperages given at 30 °C. */
export const NEC_AMBIENT: Sourced<readonly AmbientRow[]> = {
	value: AMBIENT.map(([upToC, at60, at75, at90]) => ({ upToC, 60: at60, 75: at75, 90: at90 })),
	source: 'NFPA 70:2023 Table 310.15(B)(1)(1)',
	confidence: 'two-sources'
};

/**
 * Ambient correction by the equation behind the tables: √((Tc − Ta′)/(Tc − Ta)).
 * Zero where the ambient reaches the insulation's temperature.
 */
export const ambientFactor = (insulationC: number, ambientC: number, tableAmbientC = 30): number =>
	Math.sqrt(Math.max(0, insulationC - ambientC) / (insulationC - tableAmbientC));

export const AMBIENT_EQUATION_SOURCE = 'NFPA 70:2023 Equation 310.15(B)(1)';

/** Percent of the amperage for more than three current-carrying conductors together, from this number up. */
export const NEC_BUNDLE_PERCENT: Sourced<readonly { readonly from: number; readonly percent: number }[]> = {
	value: [
		{ from: 4, percent: 80 },
		{ from: 7, percent: 70 },
		{ from: 10, percent: 50 },
		{ from: 21, percent: 45 },
		{ from: 31, percent: 40 },
		{ from: 41, percent: 35 }
	],
	source: 'NFPA 70:2023 Table 310.15(C)(1)',
	confidence: 'two-sources'
};
