import type { AwgSize } from './cfr-183-425.ts';
import type { Sourced } from './sourced.ts';

/** Lug or ring terminal crimped to a conductor, and the conductor's cable, millimetres. */
export interface LugRow {
	readonly padWidthMm: number;
	readonly padThicknessMm: number;
	/** From the hole's centre to the end of the barrel. */
	readonly lengthMm: number;
	readonly cableDiameterMm: number;
}

// prettier-ignore
const ROWS: Readonly<Record<AwgSize, readonly [number, number, number, number]>> = {
	//     pad width, thickness, length, cable
	'18': [6, 0.8, 20, 2.6],
	'16': [7, 0.8, 20, 3.0],
	'14': [7.5, 1.0, 21, 3.4],
	'12': [8.8, 1.0, 23, 4.0],
	'10': [10.8, 1.2, 26, 4.8],
	'8': [12, 2.0, 29, 6.5],
	'6': [14.3, 2.0, 33, 8.0],
	'4': [15.9, 2.4, 39, 9.7],
	'3': [17.5, 2.6, 42, 10.7],
	'2': [19.1, 2.8, 45, 11.7],
	'1': [19.1, 3.1, 48, 13],
	'1/0': [22.5, 3.4, 51, 14.7],
	'2/0': [24.2, 3.8, 55, 16.3],
	'3/0': [27.1, 4.3, 60, 18.3],
	'4/0': [30.2, 4.8, 65, 20.3]
};

/** Makers differ: these are defaults to be replaced by what is measured. 3 AWG lies between its neighbours. */
export const LUGS: Sourced<Readonly<Record<AwgSize, LugRow>>> = {
	value: Object.fromEntries(
		Object.entries(ROWS).map(([size, [padWidthMm, padThicknessMm, lengthMm, cableDiameterMm]]) => [
			size,
			{ padWidthMm, padThicknessMm, lengthMm, cableDiameterMm }
		])
	) as Record<AwgSize, LugRow>,
	source: 'common practice, no source',
	confidence: 'common-practice'
};
