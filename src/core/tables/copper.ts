import type { Sourced } from './sourced.ts';

/**
 * Resistivity used for conductors in service: the 10.75 Ω·cmil/ft of the small-craft sizing formula, which is
 * annealed copper at about 29 °C.
 */
export const COPPER_OHM_MM2_PER_M: Sourced<number> = {
	value: 0.01787,
	source: 'ABYC E-11, K = 10.75 Ω·cmil/ft, in metric units',
	confidence: 'two-sources'
};

/** The same by the conductivity that European formulas for boats use: 56 m/(Ω·mm²), copper at about 29 °C. */
export const CONDUCTIVITY_56_OHM_MM2_PER_M: Sourced<number> = {
	value: 1 / 56,
	source: 'sizing formula S = 2·l·I/(56·ΔU) of small-craft practice',
	confidence: 'verified'
};

/** International Annealed Copper Standard at 20 °C. */
export const IACS_OHM_MM2_PER_M: Sourced<number> = {
	value: 0.017241,
	source: 'International Annealed Copper Standard, NBS Handbook 100',
	confidence: 'two-sources'
};

/** Temperature coefficient of resistance at 20 °C, per kelvin. */
export const COPPER_PER_K: Sourced<number> = {
	value: 0.00393,
	source: 'International Annealed Copper Standard, α at 20 °C (Handbook for Electronics, Information and Communication Engineers, vol. 1)',
	confidence: 'verified'
};

/** Resistivity of annealed copper at a temperature, Ω·mm²/m. */
export const copperOhmMm2PerM = (temperatureC: number): number => IACS_OHM_MM2_PER_M.value * (1 + COPPER_PER_K.value * (temperatureC - 20));
