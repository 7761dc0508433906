import { describe, expect, test } from 'vitest';
import * as fc from 'fast-check';
import { SpatialIndex, boxesIntersect, distanceToBox, distanceToSegment, type Box } from '#core/geometry';

const box = fc
	.record({ x: fc.integer({ min: -500, max: 500 }), y: fc.integer({ min: -500, max: 500 }), w: fc.nat(80), h: fc.nat(80) })
	.map(({ x, y, w, h }): Box => ({ minX: x, minY: y, maxX: x + w, maxY: y + h }));
const edits = fc.array(fc.tuple(fc.nat(30), fc.option(box)), { maxLength: 80 });

/** The same edits on the index and on a plain map, which is the oracle. */
function played(steps: readonly (readonly [number, Box | null])[]) {
	const index = new SpatialIndex<number>();
	const plain = new Map<number, Box>();
	for (const [key, at] of steps) {
		if (at) index.set(key, at);
		else expect(index.remove(key)).toBe(plain.has(key));
		if (at) plain.set(key, at);
		else plain.delete(key);
	}
	return { index, plain };
}

describe('spatial index', () => {
	test('finds what a scan of all boxes finds, after any edits', () => {
		fc.assert(
			fc.property(edits, box, (steps, window) => {
				const { index, plain } = played(steps);
				const scan = [...plain].filter(([, b]) => boxesIntersect(b, window)).map(([key]) => key);
				expect(index.search(window).sort()).toEqual(scan.sort());
				expect(index.collides(window)).toBe(scan.length > 0);
				expect(index.size).toBe(plain.size);
			})
		);
	});

	test('gives everything within the radius, nearest first', () => {
		fc.assert(
			fc.property(edits, fc.integer({ min: -500, max: 500 }), fc.nat(300), (steps, x, radius) => {
				const { index, plain } = played(steps);
				const at = { x, y: 0 };
				const scan = [...plain.values()]
					.map((b) => distanceToBox(at, b))
					.filter((d) => d <= radius)
					.sort((a, b) => a - b);
				expect(index.near(at, radius).map((n) => n.distance)).toEqual(scan);
				expect(index.nearest(at, radius)?.distance ?? null).toBe(scan[0] ?? null);
			})
		);
	});

	test('asks the caller for the distance to the thing itself', () => {
		const index = SpatialIndex.of([
			['diagonal', { minX: 0, minY: 0, maxX: 100, maxY: 100 }],
			['small', { minX: 80, minY: 0, maxX: 84, maxY: 4 }]
		] as const);
		const at = { x: 78, y: 2 };
		expect(index.nearest(at, 30)?.key).toBe('diagonal');
		const exact = (key: string) => (key === 'small' ? 2 : distanceToSegment(at, { x: 0, y: 0 }, { x: 100, y: 100 }));
		expect(index.nearest(at, 30, exact)?.key).toBe('small');
	});

	test('refuses a second insertion in bulk and boxes that are none', () => {
		const b = { minX: 0, minY: 0, maxX: 1, maxY: 1 };
		expect(() => SpatialIndex.of([['a', b] as const, ['a', b] as const])).toThrow('already in the index');
		expect(() => new SpatialIndex<string>().set('a', { ...b, maxX: NaN })).toThrow('not a number');
	});
});
