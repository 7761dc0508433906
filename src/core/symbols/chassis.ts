import { line, type Primitive } from '#core/graphics';
import { LINE } from './ink.ts';

/** Frame or chassis, hanging from (0, 0). IEC 60617, from memory: not yet verified. */
export const chassis = (size: number): Primitive[] => [
	line(0, 0, 0, size * 0.45, LINE),
	line(-size / 2, size * 0.45, size / 2, size * 0.45, LINE),
	...[-0.5, 0, 0.5].map((at) => line(at * size, size * 0.45, (at - 0.25) * size, size * 0.8, LINE))
];
