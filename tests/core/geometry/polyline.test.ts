import { describe, expect, test } from 'vitest';
import * as fc from 'fast-check';
import {
	boxContainsPoint,
	distance,
	distanceToPolyline,
	distanceToSegment,
	isOrthogonal,
	nearestOnPolyline,
	pointAtFraction,
	pointBetween,
	polylineIntersectsBox,
	polylineLength,
	segmentIntersectsBox,
	simplifyOrthogonal,
	type Point
} from '#core/geometry';

const point = fc.record({ x: fc.integer({ min: -200, max: 200 }), y: fc.integer({ min: -200, max: 200 }) });
const chain = fc.array(point, { minLength: 1, maxLength: 8 });

const orthogonalChain = fc
	.tuple(point, fc.array(fc.tuple(fc.boolean(), fc.integer({ min: -30, max: 30 })), { maxLength: 12 }))
	.map(([start, steps]) => {
		const points: Point[] = [start];
		for (const [across, by] of steps) {
			const { x, y } = points.at(-1)!;
			points.push(across ? { x: x + by, y } : { x, y: y + by });
		}
		return points;
	});

describe('segments', () => {
	test('distance to the foot of the perpendicular, or to an end beyond it', () => {
		const a = { x: 0, y: 0 };
		const b = { x: 10, y: 0 };
		expect(distanceToSegment({ x: 4, y: 3 }, a, b)).toBe(3);
		expect(distanceToSegment({ x: 13, y: 4 }, a, b)).toBe(5);
		expect(distanceToSegment({ x: 3, y: 4 }, a, a)).toBe(5);
	});

	test('no sampled point of the segment is nearer than the distance', () => {
		fc.assert(
			fc.property(point, point, point, fc.double({ min: 0, max: 1, noNaN: true }), (p, a, b, t) => {
				expect(distance(p, pointBetween(a, b, t))).toBeGreaterThanOrEqual(distanceToSegment(p, a, b) - 1e-9);
			})
		);
	});

	test('meet a box when a sampled point lies in it; a diagonal past the corner does not', () => {
		const box = { minX: -50, minY: -40, maxX: 60, maxY: 30 };
		fc.assert(
			fc.property(point, point, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, t) => {
				if (boxContainsPoint(box, pointBetween(a, b, t))) expect(segmentIntersectsBox(a, b, box)).toBe(true);
			})
		);
		expect(segmentIntersectsBox({ x: 55, y: -60 }, { x: 75, y: -30 }, box)).toBe(false);
		expect(segmentIntersectsBox({ x: 0, y: 30 }, { x: 10, y: 30 }, box)).toBe(true);
		expect(segmentIntersectsBox({ x: 0, y: 0 }, { x: 0, y: 0 }, box)).toBe(true);
	});
});

describe('polylines', () => {
	const route = [
		{ x: 0, y: 0 },
		{ x: 30, y: 0 },
		{ x: 30, y: 10 }
	];

	test('length, middle and nearest point of a route worked by hand', () => {
		expect(polylineLength(route)).toBe(40);
		expect(pointAtFraction(route, 0.5)).toEqual({ x: 20, y: 0 });
		expect(pointAtFraction(route, 1)).toEqual({ x: 30, y: 10 });
		expect(nearestOnPolyline({ x: 33, y: 5 }, route)).toEqual({ at: { x: 30, y: 5 }, distance: 3, segment: 1, fraction: 35 / 40 });
	});

	test('the nearest point is the point at its fraction, and no segment is nearer', () => {
		fc.assert(
			fc.property(point, chain, (p, points) => {
				const near = nearestOnPolyline(p, points);
				const again = pointAtFraction(points, near.fraction);
				expect(distance(again, near.at)).toBeLessThan(1e-6);
				for (let i = 1; i < points.length; i++) {
					expect(distanceToSegment(p, points[i - 1]!, points[i]!)).toBeGreaterThanOrEqual(near.distance);
				}
				expect(distanceToPolyline(p, points)).toBe(near.distance);
			})
		);
	});

	test('meeting a box, for one point and for a passing chain', () => {
		expect(polylineIntersectsBox(route, { minX: 29, minY: 5, maxX: 31, maxY: 6 })).toBe(true);
		expect(polylineIntersectsBox(route, { minX: 0, minY: 5, maxX: 20, maxY: 6 })).toBe(false);
		expect(polylineIntersectsBox([{ x: 1, y: 1 }], { minX: 0, minY: 0, maxX: 2, maxY: 2 })).toBe(true);
	});

	test('no points is a fault of the caller', () => {
		expect(() => nearestOnPolyline({ x: 0, y: 0 }, [])).toThrow('at least one point');
	});
});

describe('orthogonal chains', () => {
	test('lose collinear and repeated points but keep turns and doubling back', () => {
		const simple = simplifyOrthogonal([
			{ x: 0, y: 0 },
			{ x: 0, y: 0 },
			{ x: 5, y: 0 },
			{ x: 9, y: 0 },
			{ x: 9, y: 4 },
			{ x: 9, y: 2 }
		]);
		expect(simple).toEqual([
			{ x: 0, y: 0 },
			{ x: 9, y: 0 },
			{ x: 9, y: 4 },
			{ x: 9, y: 2 }
		]);
	});

	test('keep ends, length and direction, and simplifying twice changes nothing', () => {
		fc.assert(
			fc.property(orthogonalChain, (points) => {
				const simple = simplifyOrthogonal(points);
				expect(simple[0]).toEqual(points[0]);
				expect(simple.at(-1)).toEqual(points.at(-1));
				expect(polylineLength(simple)).toBe(polylineLength(points));
				expect(isOrthogonal(simple)).toBe(true);
				expect(simplifyOrthogonal(simple)).toEqual(simple);
			})
		);
	});
});
