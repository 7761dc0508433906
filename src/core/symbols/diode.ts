import { line, polygon, type Primitive } from '#core/graphics';
import { LINE, SHAPE } from './ink.ts';

/** Diode, letting current through from left to right: what keeps a source from taking current. IEC 60617, from memory: not yet verified. */
export const diode = (size: number): Primitive[] => [
	line(-size / 2, 0, size / 2, 0, LINE),
	polygon(
		[
			{ x: -size * 0.2, y: -size * 0.24 },
			{ x: size * 0.2, y: 0 },
			{ x: -size * 0.2, y: size * 0.24 }
		],
		SHAPE
	),
	line(size * 0.2, -size * 0.24, size * 0.2, size * 0.24, LINE)
];
