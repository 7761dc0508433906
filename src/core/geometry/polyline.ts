/** Open chains of segments. A chain of one point is allowed everywhere; an empty chain is the programmer's fault. */
import { distance, nearestFraction, pointBetween, segmentIntersectsBox } from './segment.ts';
import type { Box, Point } from './point.ts';

export interface NearestOnPolyline {
	readonly at: Point;
	readonly distance: number;
	/** Index of the segment's first point. */
	readonly segment: number;
	/** Share of the whole length before `at`, from 0 to 1. */
	readonly fraction: number;
}

export function polylineLength(points: readonly Point[]): number {
	let length = 0;
	for (let i = 1; i < points.length; i++) length += distance(points[i - 1]!, points[i]!);
	return length;
}

/** The first of the nearest points when several are equally near. */
export function nearestOnPolyline(point: Point, points: readonly Point[]): NearestOnPolyline {
	let at = first(points);
	let best = distance(point, at);
	let segment = 0;
	let before = 0;
	let lengthBefore = 0;
	for (let i = 1; i < points.length; i++) {
		const a = points[i - 1]!;
		const b = points[i]!;
		const along = nearestFraction(point, a, b);
		const candidate = pointBetween(a, b, along);
		const candidateDistance = distance(point, candidate);
		if (candidateDistance < best) {
			at = candidate;
			best = candidateDistance;
			segment = i - 1;
			lengthBefore = before + along * distance(a, b);
		}
		before += distance(a, b);
	}
	return { at, distance: best, segment, fraction: before === 0 ? 0 : lengthBefore / before };
}

export const distanceToPolyline = (point: Point, points: readonly Point[]): number => nearestOnPolyline(point, points).distance;

/** The point at a share of the length, from 0 to 1 (clamped): 0.5 is the middle as one would walk it. */
export function pointAtFraction(points: readonly Point[], fraction: number): Point {
	let left = polylineLength(points) * Math.min(1, Math.max(0, fraction));
	for (let i = 1; i < points.length; i++) {
		const a = points[i - 1]!;
		const b = points[i]!;
		const length = distance(a, b);
		if (left <= length && length > 0) return pointBetween(a, b, left / length);
		left -= length;
	}
	return last(points);
}

export function polylineIntersectsBox(points: readonly Point[], box: Box): boolean {
	if (points.length === 1) return segmentIntersectsBox(points[0]!, points[0]!, box);
	for (let i = 1; i < points.length; i++) if (segmentIntersectsBox(points[i - 1]!, points[i]!, box)) return true;
	return false;
}

function first(points: readonly Point[]): Point {
	const point = points[0];
	if (!point) throw new Error('A polyline needs at least one point.');
	return point;
}

const last = (points: readonly Point[]): Point => first(points.slice(-1));
