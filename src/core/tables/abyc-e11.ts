import { BUNDLE_FACTOR, type AwgSize, type BundleStep } from './cfr-183-425.ts';
import type { Sourced } from './sourced.ts';

export interface OutsideInside {
	readonly outsideA: number;
	readonly engineSpaceA: number;
}

// prettier-ignore
const ROWS: Readonly<Record<AwgSize, readonly [number, number]>> = {
	'18': [20, 17], '16': [25, 21.2], '14': [35, 29.8], '12': [45, 38.2], '10': [60, 51], '8': [80, 68], '6': [120, 102],
	'4': [160, 136], '3': [180, 153], '2': [210, 178.5], '1': [245, 208.2], '1/0': [285, 242.2], '2/0': [330, 280.5],
	'3/0': [385, 327.2], '4/0': [445, 378.2]
};

/** 105 °C insulation, not more than two current-carrying conductors bundled, outside and inside engine spaces. */
export const ABYC_105: Sourced<Readonly<Record<AwgSize, OutsideInside>>> = {
	value: Object.fromEntries(Object.entries(ROWS).map(([size, [outsideA, engineSpaceA]]) => [size, { outsideA, engineSpaceA }])) as Record<
		AwgSize,
		OutsideInside
	>,
	source: 'ABYC E-11, 105 °C column, as reprinted in three places',
	confidence: 'two-sources'
};

/** E-11 applies at any voltage the factors that the law applies from 50 V. */
export const ABYC_BUNDLE_FACTOR: Sourced<readonly BundleStep[]> = {
	value: BUNDLE_FACTOR.value,
	source: 'ABYC E-11, bundling of DC conductors, from memory',
	confidence: 'memory'
};

/** Inside engine spaces, 105 °C insulation: the second column as a factor of the first. */
export const ABYC_ENGINE_SPACE_105: Sourced<number> = {
	value: 0.85,
	source: 'ABYC E-11, 105 °C, inside engine spaces',
	confidence: 'two-sources'
};

/** Greatest terminals on one stud, unless its maker says otherwise. */
export const TERMINALS_PER_STUD: Sourced<number> = {
	value: 4,
	source: 'FAA AC 43.13-1B, 11-174, and ABYC E-11: no more than four terminals on one stud',
	confidence: 'two-sources'
};

/** Circuits where the drop must be kept small: panel mains, bilge blowers, electronics, navigation lights. */
export const ABYC_CRITICAL_DROP_PERCENT: Sourced<number> = {
	value: 3,
	source: 'ABYC E-11 (voluntary), 3 % circuits',
	confidence: 'two-sources'
};

/** Lighting other than navigation lights, and other circuits. */
export const ABYC_ORDINARY_DROP_PERCENT: Sourced<number> = {
	value: 10,
	source: 'ABYC E-11 (voluntary), 10 % circuits',
	confidence: 'two-sources'
};

/** Constant of the sizing formula CM = K·I·L/E, ohm·circular mils per foot, L there and back. */
export const ABYC_K: Sourced<number> = { value: 10.75, source: 'ABYC E-11, CM = K·I·L/E', confidence: 'two-sources' };

/** Copper area needed for a drop, circular mils; `loopFt` counts both the positive and the negative run. */
export const circularMilsFor = (currentA: number, loopFt: number, allowedDropV: number): number =>
	(ABYC_K.value * currentA * loopFt) / allowedDropV;
