/** What routing costs, in steps of its searches: no clock, so that a busy machine changes nothing. */
import { expect, test, vi } from 'vitest';
import { createRouter } from '#core/routing';
import { CostHeap } from '../../../src/core/routing/heap.ts';
import { scattered } from './cases.ts';

// Large drawings on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

/** Steps (places taken up, of sketches too) for each conductor, and for each metre between its ends. */
const STEPS_EACH = 400;
const STEPS_PER_M = 500;

test('grows with the number of conductors and the distances they bridge, not with their product', () => {
	const pops = vi.spyOn(CostHeap.prototype, 'pop');
	for (const count of [50, 200, 1000]) {
		const { requests, obstacles } = scattered(count, 7);
		const metres = requests.reduce((sum, { from, to }) => sum + Math.abs(from.at.x - to.at.x) + Math.abs(from.at.y - to.at.y), 0) / 1000;
		pops.mockClear();
		createRouter().update(requests, obstacles);
		expect(pops.mock.calls.length, `${count} conductors`).toBeLessThan(STEPS_EACH * count + STEPS_PER_M * metres);
	}
	pops.mockRestore();
});

test('after a move does not depend on the size of the drawing', () => {
	const pops = vi.spyOn(CostHeap.prototype, 'pop');
	const { requests, obstacles } = scattered(400, 7);
	const router = createRouter();
	router.update(requests, obstacles);
	const [first] = requests;
	pops.mockClear();
	const moved = requests.map((r) => (r === first ? { ...r, to: { ...r.to, at: { x: r.to.at.x, y: r.to.at.y + 5 } } } : r));
	router.update(moved, obstacles);
	// Its own search and second look, and repairs of what lies beside it.
	expect(pops.mock.calls.length).toBeLessThan(12 * STEPS_EACH);
	pops.mockRestore();
});
