import { circle, line, text, type Primitive } from '#core/graphics';
import { LINE, SHAPE } from './ink.ts';

/** Rotating machine: its letter in a circle. IEC 60617, from memory: not yet verified. */
export const machine =
	(letter: 'G' | 'M') =>
	(size: number): Primitive[] => [
		line(-size / 2, 0, size / 2, 0, LINE),
		circle(0, 0, size * 0.32, SHAPE),
		text(0, 0, letter, size * 0.36, { fill: 'ink', upright: true })
	];
