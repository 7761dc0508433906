/**
 * Which of two conductors on one track should lie on which side, so that they part without crossing: walk along
 * both until they part, and see who turns which way.
 */
import type { Point } from '#core/geometry';

/** −1: the first belongs to the left of the second, seen along the walk; 1: to the right; 0: no matter. */
export type Handedness = -1 | 0 | 1;

/**
 * @param a Points of the first route in walking order, from the start of the shared stretch's segment.
 * @param b The second, walking the same way; both first segments lie on one line and overlap.
 */
export function handednessAtParting(a: readonly Point[], b: readonly Point[]): Handedness {
	for (let i = 1; i < a.length && i < b.length; i++) {
		const heading = headingOf(a[i - 1]!, a[i]!);
		const reachA = along(a[i]!, heading);
		const reachB = along(b[i]!, heading);
		const turnA = turnAt(a, i);
		const turnB = turnAt(b, i);
		if (reachA < reachB) return turnA;
		if (reachB < reachA) return -turnB as Handedness;
		if (turnA !== turnB) return turnA < turnB ? -1 : 1;
		if (turnA === 0) return 0;
	}
	return 0;
}

const headingOf = (a: Point, b: Point): Point => ({ x: Math.sign(b.x - a.x), y: Math.sign(b.y - a.y) });
const along = (p: Point, heading: Point): number => p.x * heading.x + p.y * heading.y;

/** −1 left, 1 right, 0 where the route ends. Y points down, so a clockwise turn is to the right. */
function turnAt(points: readonly Point[], i: number): Handedness {
	const next = points[i + 1];
	if (!next) return 0;
	const before = headingOf(points[i - 1]!, points[i]!);
	const after = headingOf(points[i]!, next);
	return Math.sign(before.x * after.y - before.y * after.x) as Handedness;
}
