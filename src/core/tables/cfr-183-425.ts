import type { Sourced } from './sourced.ts';

/** Column heads of Table 5: temperature rating of the insulation, °C. */
export type Table5InsulationC = 60 | 75 | 80 | 90 | 105 | 125 | 200;

const COLUMNS_C = [60, 75, 80, 90, 105, 125, 200] as const;
export const TABLE_5_COLUMNS_C: readonly Table5InsulationC[] = COLUMNS_C;

// prettier-ignore
const ROWS = {
	//     60   75   80   90  105  125  200 °C
	'18': [10, 10, 15, 20, 20, 25, 25],
	'16': [15, 15, 20, 25, 25, 30, 35],
	'14': [20, 20, 25, 30, 35, 40, 45],
	'12': [25, 25, 35, 40, 45, 50, 55],
	'10': [40, 40, 50, 55, 60, 70, 70],
	'8': [55, 65, 70, 70, 80, 90, 100],
	'6': [80, 95, 100, 100, 120, 125, 135],
	'4': [105, 125, 130, 135, 160, 170, 180],
	'3': [120, 145, 150, 155, 180, 195, 210],
	'2': [140, 170, 175, 180, 210, 225, 240],
	'1': [165, 195, 210, 210, 245, 265, 280],
	'1/0': [195, 230, 245, 245, 285, 305, 325],
	'2/0': [225, 265, 285, 285, 330, 355, 370],
	'3/0': [260, 310, 330, 330, 385, 410, 430],
	'4/0': [300, 360, 385, 385, 445, 475, 510]
} as const;

/** AWG sizes of conductors, as the American tables print them. */
export type AwgSize = keyof typeof ROWS;

/** Allowable amperage, amps, at 30 °C ambient: by AWG size, in the order of `COLUMNS_C`. */
export const TABLE_5: Sourced<Readonly<Record<AwgSize, readonly number[]>>> = {
	value: ROWS,
	source: '33 CFR 183.425 Table 5',
	confidence: 'two-sources'
};

/** Allowable amperage of one conductor before any factor, amps. */
export const table5A = (size: AwgSize, insulationC: Table5InsulationC): number => TABLE_5.value[size][COLUMNS_C.indexOf(insulationC)]!;

/** Factor for conductors in engine spaces (taken as 50 °C), by insulation temperature. */
export const ENGINE_SPACE_FACTOR: Sourced<Readonly<Record<Table5InsulationC, number>>> = {
	value: { 60: 0.58, 75: 0.75, 80: 0.78, 90: 0.82, 105: 0.85, 125: 0.89, 200: 1 },
	source: '33 CFR 183.425 Table 5, note 1',
	confidence: 'verified'
};

export interface BundleStep {
	/** Current-carrying conductors bundled, from this number up to the next step. */
	readonly from: number;
	readonly factor: number;
}

/** Factor for bundled conductors. The law applies it to circuits of 50 V or more only (183.435(b)). */
export const BUNDLE_FACTOR: Sourced<readonly BundleStep[]> = {
	value: [
		{ from: 1, factor: 1 },
		{ from: 3, factor: 0.7 },
		{ from: 4, factor: 0.6 },
		{ from: 7, factor: 0.5 },
		{ from: 25, factor: 0.4 }
	],
	source: '33 CFR 183.425 Table 5, note 2',
	confidence: 'verified'
};

/** Ambient temperature note 1 stands for: √((T−50)/(T−30)) gives its factors. */
export const ENGINE_SPACE_C = 50;

/** Voltage from which 183.435(b) bundling and 183.455(c)(2) apply. */
export const HIGHER_VOLTAGE_V = 50;
