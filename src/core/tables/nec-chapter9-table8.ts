import type { AwgSize } from './cfr-183-425.ts';
import type { Sourced } from './sourced.ts';

export interface ConductorProperties {
	readonly size: AwgSize;
	/** 1 is solid. */
	readonly strands: number;
	readonly circularMils: number;
	readonly overallDiameterIn: number;
	/** Uncoated and coated copper at 75 °C, ohms per 1000 ft. */
	readonly ohmPerKft: number;
	readonly coatedOhmPerKft: number;
}

// prettier-ignore
const ROWS: readonly (readonly [AwgSize, number, number, number, number, number])[] = [
	['18', 1, 1620, 0.04, 7.77, 8.08],
	['18', 7, 1620, 0.046, 7.95, 8.45],
	['16', 1, 2580, 0.051, 4.89, 5.08],
	['16', 7, 2580, 0.058, 4.99, 5.29],
	['14', 1, 4110, 0.064, 3.07, 3.19],
	['14', 7, 4110, 0.073, 3.14, 3.26],
	['12', 1, 6530, 0.081, 1.93, 2.01],
	['12', 7, 6530, 0.092, 1.98, 2.05],
	['10', 1, 10380, 0.102, 1.21, 1.26],
	['10', 7, 10380, 0.116, 1.24, 1.29],
	['8', 1, 16510, 0.128, 0.764, 0.786],
	['8', 7, 16510, 0.146, 0.778, 0.809],
	['6', 7, 26240, 0.184, 0.491, 0.51],
	['4', 7, 41740, 0.232, 0.308, 0.321],
	['3', 7, 52620, 0.26, 0.245, 0.254],
	['2', 7, 66360, 0.292, 0.194, 0.201],
	['1', 19, 83690, 0.332, 0.154, 0.16],
	['1/0', 19, 105600, 0.372, 0.122, 0.127],
	['2/0', 19, 133100, 0.418, 0.0967, 0.101],
	['3/0', 19, 167800, 0.47, 0.0766, 0.0797],
	['4/0', 19, 211600, 0.528, 0.0608, 0.0626]
];

/** Conductor properties, direct-current resistance at 75 °C. */
export const NEC_CHAPTER_9_TABLE_8: Sourced<readonly ConductorProperties[]> = {
	value: ROWS.map(([size, strands, circularMils, overallDiameterIn, ohmPerKft, coatedOhmPerKft]) => ({
		size,
		strands,
		circularMils,
		overallDiameterIn,
		ohmPerKft,
		coatedOhmPerKft
	})),
	source: 'NFPA 70:2023 Chapter 9 Table 8',
	confidence: 'two-sources'
};
