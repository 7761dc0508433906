import { block, line, type Primitive } from '#core/graphics';
import { LINE, SHAPE } from './ink.ts';

/** Fuse: a rectangle with the conductor through it. IEC 60617, from memory: not yet verified. */
export const fuse = (size: number): Primitive[] => [block(0, 0, size * 0.62, size * 0.24, SHAPE), line(-size / 2, 0, size / 2, 0, LINE)];
