import { line, type Primitive } from '#core/graphics';
import { HEAVY, LINE } from './ink.ts';

/** Battery of two cells: the long line is the positive plate, at the left. IEC 60617, from memory: not yet verified. */
export function battery(size: number): Primitive[] {
	const plate = (at: number, reach: number, style: typeof LINE | typeof HEAVY) =>
		line(at * size, -reach * size, at * size, reach * size, style);
	return [
		line(-size / 2, 0, -size * 0.18, 0, LINE),
		plate(-0.18, 0.34, LINE),
		plate(-0.06, 0.17, HEAVY),
		line(-size * 0.06, 0, size * 0.06, 0, { ...LINE, dash: [2, 2.4] }),
		plate(0.06, 0.34, LINE),
		plate(0.18, 0.17, HEAVY),
		line(size * 0.18, 0, size / 2, 0, LINE)
	];
}
