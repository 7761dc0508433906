import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spread } from '../../../src/core/elevation/spread.ts';

const wanted = fc
	.array(fc.record({ at: fc.double({ min: -100, max: 100, noNaN: true }), height: fc.double({ min: 0.1, max: 20, noNaN: true }) }), {
		maxLength: 12
	})
	.map((list) => list.toSorted((a, b) => a.at - b.at));

describe('things spread over a column', () => {
	test('never overlap and keep their order', () => {
		fc.assert(
			fc.property(wanted, (list) => {
				const middles = spread(list);
				for (let i = 1; i < list.length; i++) {
					expect(middles[i]! - middles[i - 1]!).toBeGreaterThanOrEqual((list[i]!.height + list[i - 1]!.height) / 2 - 1e-9);
				}
			}),
			{ numRuns: 200 }
		);
	});

	test('stay where they are where there is room', () => {
		expect(
			spread([
				{ at: 0, height: 2 },
				{ at: 2, height: 2 },
				{ at: 10, height: 2 }
			])
		).toEqual([0, 2, 10]);
	});

	test('share the way when two want one place', () => {
		expect(
			spread([
				{ at: 5, height: 2 },
				{ at: 5, height: 2 }
			])
		).toEqual([4, 6]);
	});

	test('move no further in sum of squares than any exchange of one place would', () => {
		fc.assert(
			fc.property(wanted, fc.nat(11), fc.double({ min: -1, max: 1, noNaN: true }), (list, index, by) => {
				fc.pre(index < list.length);
				const middles = spread(list);
				const cost = (at: readonly number[]) => at.reduce((sum, y, i) => sum + (y - list[i]!.at) ** 2, 0);
				const other = middles.with(index, middles[index]! + by);
				const isAllowed = list.every((_, i) => i === 0 || other[i]! - other[i - 1]! >= (list[i]!.height + list[i - 1]!.height) / 2);
				if (isAllowed) expect(cost(other)).toBeGreaterThanOrEqual(cost(middles) - 1e-6);
			}),
			{ numRuns: 200 }
		);
	});
});
