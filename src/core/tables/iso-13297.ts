import type { Sourced } from './sourced.ts';

/** Column heads of the annex: insulation temperature, °C; 90 stands for "85 to 90". */
export type IsoInsulationC = 60 | 70 | 90 | 105 | 125 | 200;

const COLUMNS_C: readonly IsoInsulationC[] = [60, 70, 90, 105, 125, 200];

// prettier-ignore
const ROWS = {
	//      60  70  90  105 125 200 °C
	'0.75': [6, 10, 12, 16, 20, 25],
	'1': [8, 14, 18, 20, 25, 35],
	'1.5': [12, 18, 21, 25, 30, 40],
	'2.5': [17, 25, 30, 35, 40, 45],
	'4': [22, 35, 40, 45, 50, 55],
	'6': [29, 45, 50, 60, 70, 75],
	'10': [40, 65, 70, 90, 100, 120],
	'16': [54, 90, 100, 130, 150, 170],
	'25': [71, 120, 140, 170, 185, 200],
	'35': [87, 160, 185, 210, 225, 240],
	'50': [105, 210, 230, 270, 300, 325],
	'70': [135, 265, 285, 330, 360, 375],
	'95': [165, 310, 330, 390, 410, 430],
	'120': [190, 360, 400, 450, 480, 520],
	'150': [220, 380, 430, 475, 520, 560]
} as const;

/** Amps by nominal mm², in the order of `COLUMNS_C`. Not seen in a source: shown as unverified. */
export const ISO_ANNEX: Sourced<Readonly<Record<keyof typeof ROWS, readonly number[]>>> = {
	value: ROWS,
	source: 'ISO 13297 Annex A (small craft), from memory',
	confidence: 'memory'
};

/** Annex value for the column not above the insulation's temperature, amps. */
export function isoAnnexA(size: keyof typeof ROWS, insulationC: number): number {
	const column = COLUMNS_C.findLastIndex((c) => c <= insulationC);
	return ISO_ANNEX.value[size][Math.max(0, column)]!;
}

/** Nominal areas of the annex, mm², thinnest first. */
export type IsoSize = keyof typeof ROWS;
export const ISO_COLUMNS_C = COLUMNS_C;

/** Factor for engine spaces, taken as 60 °C, by annex column. Not seen in a source. */
export const ISO_ENGINE_SPACE_FACTOR: Sourced<Readonly<Record<IsoInsulationC, number>>> = {
	// At 60 °C around it, insulation made for 60 °C may carry nothing.
	value: { 60: 0, 70: 0.75, 90: 0.82, 105: 0.86, 125: 0.89, 200: 1 },
	source: 'ISO 13297 Annex A, engine spaces, from memory',
	confidence: 'memory'
};
export const ISO_ENGINE_SPACE_C = 60;

/** Greatest device as a multiple of the amperage, and where it must sit. Not seen in a source. */
export const ISO_DEVICE_FACTOR: Sourced<number> = {
	value: 1,
	source: 'ISO 13297, device not above the amperage, from memory',
	confidence: 'memory'
};
export const ISO_PLACEMENT_M: Sourced<number> = {
	value: 0.2,
	source: 'ISO 13297, 200 mm from the source, from memory',
	confidence: 'memory'
};
export const ISO_ENCLOSED_M: Sourced<number> = {
	value: 1.8,
	source: 'ISO 13297, 1.8 m in a protective covering, from memory',
	confidence: 'memory'
};
export const ISO_BATTERY_M: Sourced<number> = {
	value: 1.8,
	source: 'ISO 13297, 1.8 m from the battery, from memory',
	confidence: 'memory'
};

/** Panel mains, navigation lights, bilge blowers and pumps, vital equipment. */
export const ISO_CRITICAL_DROP_PERCENT: Sourced<number> = {
	value: 3,
	source: 'ISO 10133:2012 7.6 (now ISO 13297), 3 % circuits',
	confidence: 'verified'
};

/** Smallest area of a conductor installed on its own, and of one within a sheath. */
export const ISO_SMALLEST_SEPARATE_MM2: Sourced<number> = {
	value: 1,
	source: 'ISO 10133:2012 7.7 (now ISO 13297)',
	confidence: 'verified'
};
export const ISO_SMALLEST_SHEATHED_MM2: Sourced<number> = {
	value: 0.75,
	source: 'ISO 10133:2012 7.7 (now ISO 13297)',
	confidence: 'verified'
};
