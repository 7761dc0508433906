import type { Sourced } from './sourced.ts';

export interface ColdStep {
	/** Holds down to and including this temperature. */
	readonly downToC: number;
	readonly factor: number;
}

/** Open-circuit voltage of crystalline silicon modules in the cold, times that at 25 °C; warmest first. */
export const COLD_VOLTAGE_FACTOR: Sourced<readonly ColdStep[]> = {
	value: [
		{ downToC: 25, factor: 1 },
		{ downToC: 20, factor: 1.02 },
		{ downToC: 15, factor: 1.04 },
		{ downToC: 10, factor: 1.06 },
		{ downToC: 5, factor: 1.08 },
		{ downToC: 0, factor: 1.1 },
		{ downToC: -5, factor: 1.12 },
		{ downToC: -10, factor: 1.14 },
		{ downToC: -15, factor: 1.16 },
		{ downToC: -20, factor: 1.18 },
		{ downToC: -25, factor: 1.2 },
		{ downToC: -30, factor: 1.21 },
		{ downToC: -35, factor: 1.23 },
		{ downToC: -40, factor: 1.25 }
	],
	source: 'NFPA 70 Table 690.7(A), from memory',
	confidence: 'memory'
};

/** Sun brighter than the standard test, and continuous duty on top of it. */
export const BRIGHT_SUN_FACTOR: Sourced<number> = { value: 1.25, source: 'NFPA 70 690.8(A)(1), from memory', confidence: 'memory' };
export const ARRAY_CONDUCTOR_FACTOR: Sourced<number> = {
	value: 1.5625,
	source: 'NFPA 70 690.8(A)(1), (B), from memory',
	confidence: 'memory'
};
