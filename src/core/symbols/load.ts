import { block, line, type Primitive } from '#core/graphics';
import { LINE, SHAPE } from './ink.ts';

/** Anything that uses current: the rectangle of an element in general. IEC 60617, from memory: not yet verified. */
export const load = (size: number): Primitive[] => [line(-size / 2, 0, size / 2, 0, LINE), block(0, 0, size * 0.62, size * 0.3, SHAPE)];
