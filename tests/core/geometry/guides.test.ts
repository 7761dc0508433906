import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alignmentOf, guidesOf, translateBox, type Box } from '#core/geometry';

const box = (minX: number, minY: number, width: number, height: number): Box => ({ minX, minY, maxX: minX + width, maxY: minY + height });

describe('falling into line', () => {
	test('the nearest edge or centre within reach wins, on each axis by itself', () => {
		const other = box(0, 0, 100, 50);
		expect(alignmentOf(box(3, 200, 40, 20), { others: [other] }, 5)).toEqual({ x: -3, y: null });
		expect(alignmentOf(box(31, 200, 40, 20), { others: [other] }, 5)).toEqual({ x: -1, y: null });
		expect(alignmentOf(box(300, 26, 40, 20), { others: [other] }, 5)).toEqual({ x: null, y: 4 });
		expect(alignmentOf(box(300, 200, 40, 20), { others: [other] }, 5)).toEqual({ x: null, y: null });
	});

	test('edges look for edges of the same side only', () => {
		expect(alignmentOf(box(102, 300, 40, 20), { others: [box(0, 0, 100, 50)] }, 5).x).toBeNull();
	});

	test('a gap between two neighbours is halved, one beside them repeated', () => {
		const [a, b] = [box(0, 0, 100, 50), box(300, 0, 120, 60)];
		expect(alignmentOf(box(172, 13, 60, 31), { others: [a, b] }, 5).x).toBe(-2);
		const c = box(140, 0, 100, 50);
		expect(alignmentOf(box(283, 13, 77, 31), { others: [a, c] }, 5).x).toBe(-3);
		expect(alignmentOf(box(-121, 13, 77, 31), { others: [a, c] }, 5).x).toBe(4);
	});

	test('a tie draws the stud onto the level of the stud at the other end', () => {
		const ties = [{ own: { x: 10, y: 103 }, other: { x: 500, y: 100 } }];
		expect(alignmentOf(box(0, 90, 33, 37), { others: [], ties }, 5)).toEqual({ x: null, y: -3 });
		const placed = [{ own: { x: 10, y: 100 }, other: { x: 500, y: 100 } }];
		expect(guidesOf(box(0, 87, 33, 37), { others: [], ties: placed }, { x: false, y: true })).toEqual([
			{ kind: 'line', axis: 'y', at: 100, from: 10, to: 500 }
		]);
	});
});

describe('what is shown', () => {
	test('the common line over all that lie on it, and the distance to the nearest', () => {
		const others = [box(0, 0, 100, 50), box(0, 400, 80, 50)];
		expect(guidesOf(box(0, 150, 40, 20), { others }, { x: true, y: false })).toEqual([
			{ kind: 'line', axis: 'x', at: 0, from: 0, to: 450 },
			{ kind: 'gap', axis: 'y', at: 20, from: 50, to: 150 }
		]);
	});

	test('both of two equal gaps', () => {
		const others = [box(0, 0, 100, 50), box(300, 0, 120, 50)];
		const gaps = guidesOf(box(170, 11, 60, 17), { others }, { x: true, y: false });
		expect(gaps).toEqual([
			{ kind: 'gap', axis: 'x', at: 19.5, from: 100, to: 170 },
			{ kind: 'gap', axis: 'x', at: 19.5, from: 230, to: 300 }
		]);
	});
});

test('what was drawn into line is in line: every shift has a guide that says why', () => {
	const some = fc.record({ x: fc.integer({ min: -50, max: 50 }), y: fc.integer({ min: -50, max: 50 }), w: fc.nat(30), h: fc.nat(30) });
	fc.assert(
		fc.property(some, fc.array(some, { maxLength: 6 }), (moving, others) => {
			const held = box(moving.x, moving.y, moving.w + 1, moving.h + 1);
			const around = { others: others.map(({ x, y, w, h }) => box(4 * x, 4 * y, w + 1, h + 1)) };
			const line = alignmentOf(held, around, 6);
			expect(Math.abs(line.x ?? 0)).toBeLessThanOrEqual(6);
			const placed = translateBox(held, { x: line.x ?? 0, y: line.y ?? 0 });
			for (const axis of ['x', 'y'] as const) {
				if (line[axis] === null) continue;
				const guides = guidesOf(placed, around, { x: axis === 'x', y: axis === 'y' });
				expect(guides.some((guide) => guide.axis === axis)).toBe(true);
			}
		}),
		{ numRuns: 300 }
	);
});
