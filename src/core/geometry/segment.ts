/** A straight piece between two points. */
import type { Box, Point } from './point.ts';

export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

export const samePoint = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;

/** How far along a→b the point of the segment nearest to `point` lies, from 0 to 1. */
export function nearestFraction(point: Point, a: Point, b: Point): number {
	const dx = b.x - a.x;
	const dy = b.y - a.y;
	const squared = dx * dx + dy * dy;
	if (squared === 0) return 0;
	return Math.min(1, Math.max(0, ((point.x - a.x) * dx + (point.y - a.y) * dy) / squared));
}

export const pointBetween = (a: Point, b: Point, fraction: number): Point => ({
	x: a.x + (b.x - a.x) * fraction,
	y: a.y + (b.y - a.y) * fraction
});

export const distanceToSegment = (point: Point, a: Point, b: Point): number =>
	distance(point, pointBetween(a, b, nearestFraction(point, a, b)));

/**
 * Whether any point of the segment lies in the box, edges included (slab method). Shrink the box first when
 * running along an edge should not count.
 */
export function segmentIntersectsBox(a: Point, b: Point, box: Box): boolean {
	let enter = 0;
	let leave = 1;
	const slabs = [
		[a.x, b.x - a.x, box.minX, box.maxX],
		[a.y, b.y - a.y, box.minY, box.maxY]
	] as const;
	for (const [start, delta, low, high] of slabs) {
		if (delta === 0) {
			if (start < low || start > high) return false;
			continue;
		}
		const one = (low - start) / delta;
		const other = (high - start) / delta;
		enter = Math.max(enter, Math.min(one, other));
		leave = Math.min(leave, Math.max(one, other));
	}
	return enter <= leave;
}
