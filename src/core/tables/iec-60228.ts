import type { Sourced } from './sourced.ts';

// prettier-ignore
const ROWS = {
	//      class 2 plain, coated, class 5 plain, coated
	'0.5': [36.0, 36.7, 39.0, 40.1],
	'0.75': [24.5, 24.8, 26.0, 26.7],
	'1': [18.1, 18.2, 19.5, 20.0],
	'1.5': [12.1, 12.2, 13.3, 13.7],
	'2.5': [7.41, 7.56, 7.98, 8.21],
	'4': [4.61, 4.7, 4.95, 5.09],
	'6': [3.08, 3.11, 3.3, 3.39],
	'10': [1.83, 1.84, 1.91, 1.95],
	'16': [1.15, 1.16, 1.21, 1.24],
	'25': [0.727, 0.734, 0.78, 0.795],
	'35': [0.524, 0.529, 0.554, 0.565],
	'50': [0.387, 0.391, 0.386, 0.393],
	'70': [0.268, 0.27, 0.272, 0.277],
	'95': [0.193, 0.195, 0.206, 0.21],
	'120': [0.153, 0.154, 0.161, 0.164]
} as const;

/** Nominal areas of conductors, mm². */
export type IecSize = keyof typeof ROWS;

/** Greatest resistance at 20 °C, ohms per kilometre. Class 2 is stranded, class 5 flexible; coated is tinned. */
export interface GreatestResistance {
	readonly class2: number;
	readonly class2Coated: number;
	readonly class5: number;
	readonly class5Coated: number;
}

export const IEC_60228: Sourced<Readonly<Record<IecSize, GreatestResistance>>> = {
	value: Object.fromEntries(
		Object.entries(ROWS).map(([size, [class2, class2Coated, class5, class5Coated]]) => [
			size,
			{ class2, class2Coated, class5, class5Coated }
		])
	) as Record<IecSize, GreatestResistance>,
	source: 'IEC 60228 Tables A.2 and A.3',
	confidence: 'two-sources'
};

/** Which limits conductors of metric size are taken to meet: self-built wiring is flexible cable, plain copper. */
export const METRIC_STRANDING: Sourced<keyof GreatestResistance> = {
	value: 'class5',
	source: 'flexible cable (IEC 60228 class 5): common practice, no source',
	confidence: 'common-practice'
};
