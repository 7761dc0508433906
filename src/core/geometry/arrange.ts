/** Boxes set in line or at equal distances: by how much each is to be shifted. */
import { EMPTY_BOX, boxCentre, boxHeight, boxWidth, unionBoxes } from './box.ts';
import type { Box, Point } from './point.ts';

export const ALIGNMENTS = ['left', 'centre', 'right', 'top', 'middle', 'bottom'] as const;
export type AlignTo = (typeof ALIGNMENTS)[number];
export type DistributeAlong = 'across' | 'down';

/** Shifts that bring one edge, or the centre, of all boxes to that of the box around them. Those that stay are left out. */
export function alignBoxes(boxes: ReadonlyMap<string, Box>, to: AlignTo): Map<string, Point> {
	const whole = [...boxes.values()].reduce(unionBoxes, EMPTY_BOX);
	const centre = boxCentre(whole);
	const shift = (box: Box): Point => {
		switch (to) {
			case 'left':
				return { x: whole.minX - box.minX, y: 0 };
			case 'centre':
				return { x: centre.x - boxCentre(box).x, y: 0 };
			case 'right':
				return { x: whole.maxX - box.maxX, y: 0 };
			case 'top':
				return { x: 0, y: whole.minY - box.minY };
			case 'middle':
				return { x: 0, y: centre.y - boxCentre(box).y };
			case 'bottom':
				return { x: 0, y: whole.maxY - box.maxY };
		}
	};
	return moving([...boxes].map(([id, box]) => [id, shift(box)]));
}

/**
 * Shifts that make the gaps between boxes equal; the outermost two stay. Boxes that have no room for gaps between the
 * outermost come to overlap evenly.
 */
export function distributeBoxes(boxes: ReadonlyMap<string, Box>, along: DistributeAlong): Map<string, Point> {
	const start = (box: Box): number => (along === 'across' ? box.minX : box.minY);
	const length = along === 'across' ? boxWidth : boxHeight;
	const middle = (box: Box): number => start(box) + length(box) / 2;
	const row = [...boxes].sort(([, a], [, b]) => middle(a) - middle(b));
	const [first, last] = [row[0]?.[1], row.at(-1)?.[1]];
	if (!first || !last || row.length < 3) return new Map();
	const taken = row.reduce((sum, [, box]) => sum + length(box), 0);
	const gap = (start(last) + length(last) - start(first) - taken) / (row.length - 1);
	let next = start(first);
	return moving(
		row.map(([id, box]) => {
			const by = next - start(box);
			next += length(box) + gap;
			return [id, along === 'across' ? { x: by, y: 0 } : { x: 0, y: by }];
		})
	);
}

const moving = (shifts: readonly (readonly [string, Point])[]): Map<string, Point> =>
	new Map(shifts.filter(([, { x, y }]) => Math.abs(x) > 1e-9 || Math.abs(y) > 1e-9));
