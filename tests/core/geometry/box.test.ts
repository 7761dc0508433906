import { describe, expect, test } from 'vitest';
import * as fc from 'fast-check';
import {
	EMPTY_BOX,
	addTurns,
	boxContainsBox,
	boxContainsPoint,
	boxOfPoints,
	boxesIntersect,
	distanceToBox,
	inflateBox,
	isEmptyBox,
	outward,
	rotateBox,
	rotatePoint,
	rotateSide,
	snap,
	snapPoint,
	unionBoxes,
	type QuarterTurn
} from '#core/geometry';

const point = fc.record({ x: fc.integer({ min: -1000, max: 1000 }), y: fc.integer({ min: -1000, max: 1000 }) });
const points = fc.array(point, { minLength: 1, maxLength: 12 });
const box = points.map(boxOfPoints);
const turn = fc.constantFrom<QuarterTurn>(0, 90, 180, 270);

describe('boxes', () => {
	test('hold exactly their points', () => {
		expect(
			boxOfPoints([
				{ x: 3, y: -2 },
				{ x: -1, y: 5 }
			])
		).toEqual({ minX: -1, minY: -2, maxX: 3, maxY: 5 });
		expect(isEmptyBox(boxOfPoints([]))).toBe(true);
	});

	test('a union holds both, and nothing changes when the other is empty', () => {
		fc.assert(
			fc.property(box, box, (a, b) => {
				const both = unionBoxes(a, b);
				expect(boxContainsBox(both, a) && boxContainsBox(both, b)).toBe(true);
				expect(unionBoxes(a, EMPTY_BOX)).toEqual(a);
			})
		);
	});

	test('meet exactly when some corner region is shared, edges included', () => {
		const a = { minX: 0, minY: 0, maxX: 10, maxY: 10 };
		expect(boxesIntersect(a, { minX: 10, minY: 10, maxX: 20, maxY: 20 })).toBe(true);
		expect(boxesIntersect(a, { minX: 10.1, minY: 0, maxX: 20, maxY: 20 })).toBe(false);
	});

	test('grow and shrink', () => {
		const a = { minX: 0, minY: 0, maxX: 10, maxY: 4 };
		expect(inflateBox(a, 2)).toEqual({ minX: -2, minY: -2, maxX: 12, maxY: 6 });
		expect(inflateBox(a, -3)).toBe(EMPTY_BOX);
	});

	test('distance is 0 inside and Pythagorean off a corner', () => {
		const a = { minX: 0, minY: 0, maxX: 10, maxY: 10 };
		expect(distanceToBox({ x: 5, y: 5 }, a)).toBe(0);
		expect(distanceToBox({ x: 13, y: 14 }, a)).toBe(5);
		expect(distanceToBox({ x: -2, y: 5 }, a)).toBe(2);
	});
});

describe('quarter turns', () => {
	test('go clockwise on a drawing whose y points down', () => {
		expect(rotatePoint({ x: 1, y: 0 }, 90)).toEqual({ x: 0, y: 1 });
		expect(rotateSide('north', 90)).toBe('east');
		expect(rotateSide('west', 270)).toBe('south');
	});

	test('add up, for points and sides alike', () => {
		fc.assert(
			fc.property(point, turn, turn, (p, a, b) => {
				expect(rotatePoint(rotatePoint(p, a), b)).toEqual(rotatePoint(p, addTurns(a, b)));
			})
		);
		fc.assert(
			fc.property(fc.constantFrom('north', 'east', 'south', 'west'), turn, (side, a) => {
				expect(outward(rotateSide(side, a))).toEqual(rotatePoint(outward(side), a));
			})
		);
	});

	test('a turned box holds the turned points', () => {
		fc.assert(
			fc.property(points, turn, (ps, a) => {
				expect(rotateBox(boxOfPoints(ps), a)).toEqual(boxOfPoints(ps.map((p) => rotatePoint(p, a))));
				expect(boxContainsPoint(rotateBox(boxOfPoints(ps), a), rotatePoint(ps[0]!, a))).toBe(true);
			})
		);
	});
});

test('snapping goes to the nearest multiple and not at all without a grid', () => {
	expect(snapPoint({ x: 12.4, y: -13 }, 5)).toEqual({ x: 10, y: -15 });
	expect(snap(12.4, 0)).toBe(12.4);
	expect(Object.is(snap(-1, 5), 0)).toBe(true);
});
