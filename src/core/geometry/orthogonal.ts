/** Chains whose segments run along the axes. */
import { samePoint } from './segment.ts';
import type { Point } from './point.ts';

export function isOrthogonal(points: readonly Point[]): boolean {
	for (let i = 1; i < points.length; i++) {
		if (points[i - 1]!.x !== points[i]!.x && points[i - 1]!.y !== points[i]!.y) return false;
	}
	return true;
}

const between = (a: number, b: number, c: number): boolean => (a <= b && b <= c) || (a >= b && b >= c);

/** The middle point adds nothing when the three lie on one axis line in order. */
const redundant = (a: Point, b: Point, c: Point): boolean =>
	(a.x === b.x && b.x === c.x && between(a.y, b.y, c.y)) || (a.y === b.y && b.y === c.y && between(a.x, b.x, c.x));

/**
 * Without repeated points and without points in the middle of a straight run. Turns, and places where the chain
 * doubles back, are kept, so the drawn line is the same.
 */
export function simplifyOrthogonal(points: readonly Point[]): Point[] {
	const kept: Point[] = [];
	for (const point of points) {
		if (kept.length > 0 && samePoint(kept.at(-1)!, point)) continue;
		while (kept.length >= 2 && redundant(kept.at(-2)!, kept.at(-1)!, point)) kept.pop();
		kept.push(point);
	}
	return kept;
}
