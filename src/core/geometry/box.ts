/** Axis-aligned boxes. Edges belong to the box. */
import type { Box, Point } from './point.ts';

/** A box with no points in it: the neutral element of `union`. */
export const EMPTY_BOX: Box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

export const isEmptyBox = (box: Box): boolean => box.minX > box.maxX || box.minY > box.maxY;

/** Smallest box around the points; `EMPTY_BOX` when there are none. */
export function boxOfPoints(points: Iterable<Point>): Box {
	let { minX, minY, maxX, maxY } = EMPTY_BOX;
	for (const { x, y } of points) {
		if (x < minX) minX = x;
		if (y < minY) minY = y;
		if (x > maxX) maxX = x;
		if (y > maxY) maxY = y;
	}
	return { minX, minY, maxX, maxY };
}

export const unionBoxes = (a: Box, b: Box): Box => ({
	minX: Math.min(a.minX, b.minX),
	minY: Math.min(a.minY, b.minY),
	maxX: Math.max(a.maxX, b.maxX),
	maxY: Math.max(a.maxY, b.maxY)
});

/** Grown by a margin on all four sides; a negative margin shrinks it, to `EMPTY_BOX` if nothing is left. */
export function inflateBox(box: Box, margin: number): Box {
	const grown = { minX: box.minX - margin, minY: box.minY - margin, maxX: box.maxX + margin, maxY: box.maxY + margin };
	return isEmptyBox(grown) ? EMPTY_BOX : grown;
}

export const translateBox = (box: Box, by: Point): Box => ({
	minX: box.minX + by.x,
	minY: box.minY + by.y,
	maxX: box.maxX + by.x,
	maxY: box.maxY + by.y
});

export const boxContainsPoint = (box: Box, { x, y }: Point): boolean => x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY;

export const boxContainsBox = (outer: Box, inner: Box): boolean =>
	inner.minX >= outer.minX && inner.maxX <= outer.maxX && inner.minY >= outer.minY && inner.maxY <= outer.maxY;

/** True also when they only touch. */
export const boxesIntersect = (a: Box, b: Box): boolean => a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;

export const boxCentre = (box: Box): Point => ({ x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 });
export const boxWidth = (box: Box): number => box.maxX - box.minX;
export const boxHeight = (box: Box): number => box.maxY - box.minY;

/** 0 inside the box. */
export function distanceToBox({ x, y }: Point, box: Box): number {
	const dx = Math.max(box.minX - x, 0, x - box.maxX);
	const dy = Math.max(box.minY - y, 0, y - box.maxY);
	return Math.hypot(dx, dy);
}
