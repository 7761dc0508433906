import { block, line, type Primitive } from '#core/graphics';
import { LINE, SHAPE } from './ink.ts';

/** Shunt: a resistor with taps of its own for the meter. IEC 60617, from memory: not yet verified. */
export const shunt = (size: number): Primitive[] => [
	line(-size / 2, 0, size / 2, 0, LINE),
	...[-0.2, 0.2].map((at) => line(at * size, 0, at * size, size * 0.3, LINE)),
	block(0, 0, size * 0.6, size * 0.22, SHAPE)
];
