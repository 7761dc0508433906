import type { AwgSize } from './cfr-183-425.ts';
import type { Sourced } from './sourced.ts';

/** Amps by insulation rating in °C; null where the table prints none. */
export interface NecAmpacity {
	readonly 60: number | null;
	readonly 75: number | null;
	readonly 90: number;
}

type Row = readonly [number | null, number | null, number];

// prettier-ignore
const RACEWAY: Readonly<Record<AwgSize, Row>> = {
	'18': [null, null, 14], '16': [null, null, 18], '14': [15, 20, 25], '12': [20, 25, 30], '10': [30, 35, 40],
	'8': [40, 50, 55], '6': [55, 65, 75], '4': [70, 85, 95], '3': [85, 100, 115], '2': [95, 115, 130], '1': [110, 130, 145],
	'1/0': [125, 150, 170], '2/0': [145, 175, 195], '3/0': [165, 200, 225], '4/0': [195, 230, 260]
};

// prettier-ignore
const FREE_AIR: Readonly<Record<AwgSize, Row>> = {
	'18': [null, null, 18], '16': [null, null, 24], '14': [25, 30, 35], '12': [30, 35, 40], '10': [40, 50, 55],
	'8': [60, 70, 80], '6': [80, 95, 105], '4': [105, 125, 140], '3': [120, 145, 165], '2': [140, 170, 190], '1': [165, 195, 220],
	'1/0': [195, 230, 260], '2/0': [225, 265, 300], '3/0': [260, 310, 350], '4/0': [300, 360, 405]
};

function byInsulation(rows: Readonly<Record<AwgSize, Row>>): Readonly<Record<AwgSize, NecAmpacity>> {
	const entries = Object.entries(rows).map(([size, [at60, at75, at90]]) => [size, { 60: at60, 75: at75, 90: at90 }]);
	return Object.fromEntries(entries) as Record<AwgSize, NecAmpacity>;
}

/** Not more than three current-carrying conductors in raceway, cable or earth, 30 °C. */
export const NEC_310_16: Sourced<Readonly<Record<AwgSize, NecAmpacity>>> = {
	value: byInsulation(RACEWAY),
	source: 'NFPA 70:2023 Table 310.16',
	confidence: 'verified'
};

/** Single conductors in free air, 30 °C. */
export const NEC_310_17: Sourced<Readonly<Record<AwgSize, NecAmpacity>>> = {
	value: byInsulation(FREE_AIR),
	source: 'NFPA 70:2023 Table 310.17',
	confidence: 'two-sources'
};
