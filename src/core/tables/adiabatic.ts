import type { Sourced } from './sourced.ts';

export interface InsulationLimit {
	readonly insulation: string;
	/** Temperature in service and greatest temperature at the end of a short circuit. */
	readonly startC: number;
	readonly endC: number;
	/** A·√s/mm² for copper up to 300 mm². */
	readonly k: number;
}

/** k of the adiabatic equation t = (k·S/I)², for t up to 5 s. */
export const ADIABATIC_K: Sourced<readonly InsulationLimit[]> = {
	value: [
		{ insulation: 'PVC 70 °C', startC: 70, endC: 160, k: 115 },
		{ insulation: 'PVC 90 °C', startC: 90, endC: 160, k: 100 },
		{ insulation: 'XLPE or EPR 90 °C', startC: 90, endC: 250, k: 143 },
		{ insulation: 'rubber 60 °C', startC: 60, endC: 200, k: 141 },
		{ insulation: 'rubber 85 °C', startC: 85, endC: 220, k: 134 },
		{ insulation: 'silicone 180 °C', startC: 180, endC: 350, k: 132 }
	],
	source: 'IEC 60364-5-54 Table 54.2',
	confidence: 'two-sources'
};

/** Copper constant of IEC 60949: k = 226·√ln((234.5 + Tend)/(234.5 + Tstart)). */
export const adiabaticK = (startC: number, endC: number): number => 226 * Math.sqrt(Math.log((234.5 + endC) / (234.5 + startC)));

/** Smallest copper area that survives `currentA` for `timeS` (up to 5 s), mm². */
export const adiabaticAreaMm2 = (currentA: number, timeS: number, k: number): number => (currentA * Math.sqrt(timeS)) / k;

/** How long a copper area survives a current, seconds; meaningful up to 5 s. */
export const adiabaticTimeS = (areaMm2: number, currentA: number, k: number): number => ((k * areaMm2) / currentA) ** 2;

/**
 * Temperature of copper after a heating of `heatA2S` (∫I²dt) that had no time to leave it, °C; the same equation
 * solved for the end. Above 1,083 °C copper has melted.
 */
export const temperatureAfterC = (startC: number, heatA2S: number, areaMm2: number): number =>
	(234.5 + startC) * Math.exp(heatA2S / (226 * areaMm2) ** 2) - 234.5;
