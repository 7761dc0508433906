import type { Sourced } from './sourced.ts';

/** Resistance of one crimp with its bolted joint, by copper area: good workmanship. */
export const JOINT_OHM: Sourced<{ readonly heavyFromMm2: number; readonly heavyOhm: number; readonly lightOhm: number }> = {
	// 13 mm² puts 6 AWG (13.3 mm²) among the heavy lugs and 10 mm² among the light ones.
	value: { heavyFromMm2: 13, heavyOhm: 0.04e-3, lightOhm: 0.2e-3 },
	source: 'common practice, no source',
	confidence: 'common-practice'
};
