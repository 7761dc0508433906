import { circle, line, placePrimitives, type Primitive } from '#core/graphics';
import { diode } from './diode.ts';
import { LINE, SHAPE } from './ink.ts';

/** Source of direct current, its positive side at the left; with the diode that keeps current from flowing back. From memory: not yet verified. */
export const source =
	(blocksReverse: boolean) =>
	(size: number): Primitive[] => [
		line(-size / 2, 0, size / 2, 0, LINE),
		circle(size * 0.1, 0, size * 0.24, SHAPE),
		line(-size * 0.02, -size * 0.05, size * 0.22, -size * 0.05, LINE),
		line(-size * 0.02, size * 0.06, size * 0.22, size * 0.06, { ...LINE, dash: [size * 0.06, size * 0.03] }),
		...(blocksReverse ? placePrimitives(diode(size * 0.24), { x: -size * 0.3, y: 0 }, 180) : [])
	];
