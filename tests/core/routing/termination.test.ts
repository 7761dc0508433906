/** However senseless the drawing, routing comes to an end, in a number of steps that the drawing's size bounds. */
import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { isOrthogonal, type Point, type Side } from '#core/geometry';
import { createRouter, previewRoute, type Obstacle, type RouteRequest } from '#core/routing';
import { CostHeap } from '../../../src/core/routing/heap.ts';

// Many random drawings: a busy machine must not make them fail.
vi.setConfig({ testTimeout: 120_000 });

/**
 * Steps of the search for each conductor, all attempts and second looks together; about 600 are usual, and 13,790 the
 * most of 6,000 random drawings (few conductors among boxes that coincide). A search in circles passes any number.
 */
const STEPS_EACH = 40_000;

const SIDES: readonly Side[] = ['north', 'east', 'south', 'west'];

/** Few distinct values, so that parts and studs coincide; far corners of the drawing; odd fractions. */
const coordinate = fc.oneof(
	{ weight: 6, arbitrary: fc.integer({ min: -6, max: 6 }).map((n) => n * 40) },
	{ weight: 2, arbitrary: fc.constantFrom(-1e6, 1e6, 999_999.999, -999_999.5) },
	{ weight: 2, arbitrary: fc.double({ min: -300, max: 300, noNaN: true }) },
	{ weight: 1, arbitrary: fc.double({ min: -1e6, max: 1e6, noNaN: true }) }
);
const point = fc.record({ x: coordinate, y: coordinate });
const end = fc.record({ at: point, side: fc.constantFrom(...SIDES) });

const anyDrawing = fc.record({
	boxes: fc.array(fc.record({ at: point, width: fc.constantFrom(0, 20, 120, 330, 5000), height: fc.constantFrom(0, 20, 80, 200) }), {
		maxLength: 26
	}),
	ends: fc.array(
		fc.record({
			from: end,
			to: end,
			widthMm: fc.constantFrom(2, 6, 18),
			bends: fc.option(fc.array(point, { maxLength: 3 }), { nil: null, freq: 6 })
		}),
		{ minLength: 1, maxLength: 24 }
	),
	moved: fc.tuple(fc.nat(), point)
});

const obstacleAt = (id: string, at: Point, width: number, height: number): Obstacle => ({
	id,
	box: { minX: at.x - width / 2, maxX: at.x + width / 2, minY: at.y - height / 2, maxY: at.y + height / 2 }
});

test('of any drawing, from nothing and after a move', () => {
	const pops = vi.spyOn(CostHeap.prototype, 'pop');
	fc.assert(
		fc.property(anyDrawing, ({ boxes, ends, moved: [which, to] }) => {
			const obstacles = boxes.map(({ at, width, height }, i) => obstacleAt(`P${i}`, at, width, height));
			const requests: RouteRequest[] = ends.map((request, i) => ({ id: `C${i}`, ...request }));
			const check = (routes: ReadonlyMap<string, readonly Point[]>): void => {
				expect(pops.mock.calls.length).toBeLessThan(STEPS_EACH * ends.length);
				pops.mockClear();
				for (const { id, from, to } of requests) {
					const points = routes.get(id)!;
					expect(points[0]).toEqual(from.at);
					expect(points.at(-1)).toEqual(to.at);
					expect(points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
					expect(isOrthogonal(points)).toBe(true);
				}
			};
			const router = createRouter();
			pops.mockClear();
			check(router.update(requests, obstacles));
			const i = which % (boxes.length + 1);
			check(
				router.update(
					requests,
					obstacles.map((obstacle, j) => (j === i ? obstacleAt(obstacle.id, to, 120, 80) : obstacle))
				)
			);
			check(new Map(requests.map((request) => [request.id, previewRoute(request, obstacles)])));
		}),
		{ numRuns: 120 }
	);
	pops.mockRestore();
});
