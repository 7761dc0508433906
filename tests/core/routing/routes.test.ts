import { describe, expect, test } from 'vitest';
import * as fc from 'fast-check';
import {
	inflateBox,
	isOrthogonal,
	distanceToPolyline,
	outward,
	segmentIntersectsBox,
	boxContainsPoint,
	type Box,
	type Point
} from '#core/geometry';
import { createRouter, previewRoute, routeConductors, type Obstacle, type RouteRequest, type Routes } from '#core/routing';
import { SamplePart, crowdedStud, request, scattered, smallSystem, type Case } from './cases.ts';

const seeds = fc.integer({ min: 1, max: 1e6 });
const cases = seeds.chain((seed) => fc.integer({ min: 2, max: 24 }).map((count) => scattered(count, seed)));
const RUNS = { numRuns: 25 };

const same = (a: Point, b: Point) => a.x === b.x && a.y === b.y;

/** Boxes a conductor's own ends lie in; it may be inside those, as far as its stubs go. */
const isOwn = ({ from, to }: RouteRequest, box: Box) =>
	boxContainsPoint(inflateBox(box, 0.5), from.at) || boxContainsPoint(inflateBox(box, 0.5), to.at);

function cuts(route: readonly Point[], boxes: readonly Box[]): number {
	let count = 0;
	for (const box of boxes) {
		for (let i = 1; i < route.length; i++) if (segmentIntersectsBox(route[i - 1]!, route[i]!, inflateBox(box, -0.05))) count++;
	}
	return count;
}

/** Pairs of stretches that lie on each other, other than along the stubs of a stud they share. */
function overlaps(requests: readonly RouteRequest[], routes: Routes): string[] {
	const found: string[] = [];
	for (const [i, a] of requests.entries()) {
		for (const b of requests.slice(i + 1)) {
			const shared = [a.from.at, a.to.at].filter((p) => [b.from.at, b.to.at].some((q) => same(p, q)));
			for (const [p, q] of stretches(routes.get(a.id)!)) {
				for (const [r, s] of stretches(routes.get(b.id)!)) {
					const length = overlapLength(p, q, r, s);
					const onStubs = shared.some((stud) => [p, q].some((e) => same(e, stud)) && [r, s].some((e) => same(e, stud)));
					if (length > 0.5 && !onStubs) found.push(`${a.id} and ${b.id} over ${length.toFixed(1)} mm`);
				}
			}
		}
	}
	return found;
}

const stretches = (route: readonly Point[]) => route.slice(1).map((b, i) => [route[i]!, b] as const);

function overlapLength(p: Point, q: Point, r: Point, s: Point): number {
	for (const [across, along] of [
		['x', 'y'],
		['y', 'x']
	] as const) {
		if (p[across] !== q[across] || r[across] !== s[across] || Math.abs(p[across] - r[across]) > 0.01) continue;
		return (
			Math.min(Math.max(p[along], q[along]), Math.max(r[along], s[along])) -
			Math.max(Math.min(p[along], q[along]), Math.min(r[along], s[along]))
		);
	}
	return 0;
}

function leavesBySide(route: readonly Point[], { from, to }: RouteRequest): boolean {
	const heads = (a: Point, b: Point, side: RouteRequest['from']['side']) => {
		const { x, y } = outward(side);
		return (b.x - a.x) * x + (b.y - a.y) * y > 0;
	};
	return heads(route[0]!, route[1]!, from.side) && heads(route.at(-1)!, route.at(-2)!, to.side);
}

function expectSound({ requests, obstacles }: Case, routes: Routes) {
	for (const request of requests) {
		const route = routes.get(request.id)!;
		expect(route[0]).toEqual(request.from.at);
		expect(route.at(-1)).toEqual(request.to.at);
		expect(isOrthogonal(route)).toBe(true);
		expect(leavesBySide(route, request)).toBe(true);
		const foreign = obstacles.filter(({ box }) => !isOwn(request, box)).map(({ box }) => box);
		expect(cuts(route, foreign), `${request.id} cuts a part`).toBe(0);
		const own = obstacles.filter(({ box }) => isOwn(request, box)).map(({ box }) => box);
		expect(cuts(route.slice(1, -1), own), `${request.id} runs back through its own part`).toBe(0);
	}
}

describe('routes', () => {
	test('are orthogonal, exact at the ends, leave by the side and cut no part', () => {
		fc.assert(
			fc.property(cases, (sample) => {
				expectSound(sample, routeConductors(sample.requests, sample.obstacles));
			}),
			RUNS
		);
	});

	test.each([smallSystem(), crowdedStud()])('are sound in the drawing "$name" and do not lie on each other', (sample) => {
		const routes = routeConductors(sample.requests, sample.obstacles);
		expectSound(sample, routes);
		expect(overlaps(sample.requests, routes)).toEqual([]);
	});

	test('do not lie on each other, except along the stubs of a shared stud', () => {
		fc.assert(
			fc.property(cases, (sample) => {
				expect(overlaps(sample.requests, routeConductors(sample.requests, sample.obstacles))).toEqual([]);
			}),
			RUNS
		);
	});

	test('are the same for the same drawing, in whatever order it is given', () => {
		fc.assert(
			fc.property(cases, (sample) => {
				const once = routeConductors(sample.requests, sample.obstacles);
				const again = routeConductors([...sample.requests].reverse(), [...sample.obstacles].reverse());
				for (const { id } of sample.requests) expect(again.get(id)).toEqual(once.get(id));
			}),
			{ numRuns: 12 }
		);
	});

	test('of a pair run side by side, one lane apart, without crossing', () => {
		const left = new SamplePart('left', { x: 0, y: 0 }, [100, 100]);
		const right = new SamplePart('right', { x: 600, y: 300 }, [100, 100]);
		const routes = routeConductors(
			[
				request('red', left.stud('east', 0, 2), right.stud('west', 0, 2), 10),
				request('black', left.stud('east', 1, 2), right.stud('west', 1, 2), 10)
			],
			[left.obstacle, right.obstacle]
		);
		const [red, black] = [routes.get('red')!, routes.get('black')!];
		expect([red.length, black.length]).toEqual([4, 4]);
		// 10 mm of conductor and 4 mm of air; the one that starts higher turns later.
		expect(red[1]!.x - black[1]!.x).toBeCloseTo(14);
	});

	test('never fail: ends walled in, parts on top of each other, both ends in one place', () => {
		const wall = (id: string, minX: number, minY: number, maxX: number, maxY: number): Obstacle => ({
			id,
			box: { minX, minY, maxX, maxY }
		});
		const walled = [wall('n', -60, -60, 60, -30), wall('s', -60, 30, 60, 60), wall('w', -60, -60, -30, 60), wall('e', 30, -60, 60, 60)];
		const far = { at: { x: 400, y: 10 }, side: 'west' } as const;
		for (const end of [{ at: { x: 0, y: 0 }, side: 'north' } as const, far]) {
			const route = routeConductors([request('c', { at: { x: 0, y: 0 }, side: 'north' }, end)], walled).get('c')!;
			expect(isOrthogonal(route)).toBe(true);
			expect([route[0], route.at(-1)]).toEqual([{ x: 0, y: 0 }, end.at]);
		}
	});

	test('go through a gap just wide enough rather than through a part', () => {
		const parts = [new SamplePart('a', { x: 200, y: -204 }, [60, 400]), new SamplePart('b', { x: 200, y: 204 }, [60, 400])];
		const c = request('c', { at: { x: 0, y: 60 }, side: 'east' }, { at: { x: 400, y: -60 }, side: 'west' }, 6);
		const obstacles = parts.map((part) => part.obstacle);
		const route = routeConductors([c], obstacles).get('c')!;
		expect(
			cuts(
				route,
				obstacles.map(({ box }) => box)
			)
		).toBe(0);
	});
});

describe('bends set by hand', () => {
	const point = fc.record({ x: fc.integer({ min: -300, max: 900 }), y: fc.integer({ min: -300, max: 600 }) });

	test('stay on the route, in their order, joined orthogonally', () => {
		const left = new SamplePart('left', { x: 0, y: 0 }, [100, 100]);
		const right = new SamplePart('right', { x: 600, y: 300 }, [100, 100]);
		fc.assert(
			fc.property(fc.array(point, { minLength: 1, maxLength: 5 }), (bends) => {
				const hand = request('hand', left.stud('east', 0, 2), right.stud('west', 0, 2), 10, bends);
				const other = request('other', left.stud('east', 1, 2), right.stud('west', 1, 2), 10);
				const route = routeConductors([hand, other], [left.obstacle, right.obstacle]).get('hand')!;
				expect(isOrthogonal(route)).toBe(true);
				expect([route[0], route.at(-1)]).toEqual([hand.from.at, hand.to.at]);
				expect(route[1]!.y).toBe(hand.from.at.y);
				expect(route[1]!.x).toBeGreaterThan(hand.from.at.x);
				for (const bend of bends) expect(distanceToPolyline(bend, route)).toBeLessThan(1e-9);
			})
		);
	});
});

describe('the router', () => {
	test('keeps the identity of the whole answer when nothing changed', () => {
		const { requests, obstacles } = smallSystem();
		const router = createRouter();
		const first = router.update(requests, obstacles);
		expect(
			router.update(
				[...requests],
				obstacles.map((o) => ({ ...o }))
			)
		).toBe(first);
	});

	test('routes anew what hangs on a moved part, and keeps routes far from it as they are', () => {
		fc.assert(
			fc.property(seeds, (seed) => {
				const { requests, obstacles } = scattered(24, seed);
				const router = createRouter();
				const before = router.update(requests, obstacles);
				const moved = obstacles[0]!;
				const by = (p: Point): Point => ({ x: p.x + 15, y: p.y - 10 });
				const inside = (p: Point) => boxContainsPoint(moved.box, p);
				const nextRequests = requests.map((r) => ({
					...r,
					from: inside(r.from.at) ? { ...r.from, at: by(r.from.at) } : r.from,
					to: inside(r.to.at) ? { ...r.to, at: by(r.to.at) } : r.to
				}));
				const a = by({ x: moved.box.minX, y: moved.box.minY });
				const b = by({ x: moved.box.maxX, y: moved.box.maxY });
				const nextObstacles = obstacles.map((o) => (o === moved ? { id: o.id, box: { minX: a.x, minY: a.y, maxX: b.x, maxY: b.y } } : o));
				const after = router.update(nextRequests, nextObstacles);
				expectSound({ name: '', requests: nextRequests, obstacles: nextObstacles }, after);

				// What hangs on the part or passes it by may change, and so may lanes beside those, before or after.
				const places = [moved.box, { minX: a.x, minY: a.y, maxX: b.x, maxY: b.y }].map((box) => inflateBox(box, 20));
				const stale = requests.filter((r) => cuts(before.get(r.id)!, places) > 0);
				const near = stale.flatMap((r) => [before.get(r.id)!, after.get(r.id)!]).flatMap((route) => stretches(route).map(boxOfStretch));
				for (const { id } of requests) {
					const touched = near.some((box) => cuts(before.get(id)!, [inflateBox(box, 60)]) > 0);
					if (!touched) expect(after.get(id), `${id} should not have changed`).toBe(before.get(id));
				}
			}),
			{ numRuns: 15 }
		);
	});

	test('leads a conductor around a part that was put on it, and only that one', () => {
		const ends = (y: number) => [{ at: { x: 0, y }, side: 'east' } as const, { at: { x: 500, y }, side: 'west' } as const] as const;
		const requests = [request('hit', ...ends(0)), request('clear', ...ends(400))];
		const router = createRouter();
		const before = router.update(requests, []);
		expect(before.get('hit')).toHaveLength(2);
		const box = { minX: 200, minY: -30, maxX: 260, maxY: 30 };
		const after = router.update(requests, [{ id: 'new', box }]);
		expect(cuts(after.get('hit')!, [box])).toBe(0);
		expect(after.get('clear')).toBe(before.get('clear'));
		expect(router.update(requests, []).get('hit')).toEqual(before.get('hit'));
	});

	test('forgets conductors that are gone and takes up new ones', () => {
		const { requests, obstacles } = smallSystem();
		const router = createRouter();
		router.update(requests, obstacles);
		expect([...router.update(requests.slice(0, 3), obstacles).keys()]).toEqual(requests.slice(0, 3).map((r) => r.id));
		expect(router.update(requests, obstacles).size).toBe(requests.length);
	});
});

test('a preview is sound on its own', () => {
	fc.assert(
		fc.property(cases, (sample) => {
			const requests = sample.requests.slice(0, 5);
			const routes = new Map(requests.map((r) => [r.id, previewRoute(r, sample.obstacles)]));
			for (const r of requests) {
				const route = routes.get(r.id)!;
				expect(isOrthogonal(route)).toBe(true);
				expect([route[0], route.at(-1)]).toEqual([r.from.at, r.to.at]);
				expect(leavesBySide(route, r)).toBe(true);
			}
		}),
		RUNS
	);
});

const boxOfStretch = ([a, b]: readonly [Point, Point]): Box => ({
	minX: Math.min(a.x, b.x),
	minY: Math.min(a.y, b.y),
	maxX: Math.max(a.x, b.x),
	maxY: Math.max(a.y, b.y)
});
