/** Routes of all conductors, and the router that remembers them from one edit to the next. */
import {
	SpatialIndex,
	boxOfPoints,
	inflateBox,
	isOrthogonal,
	polylineIntersectsBox,
	samePoint,
	simplifyOrthogonal,
	type Box,
	type Point
} from '#core/geometry';
import { spreadLanes } from './lanes.ts';
import { cutsOf, throughBends } from './hand-set.ts';
import { pathOf, type Around } from './path.ts';
import { movable, type Run } from './run.ts';
import { CLEARANCE_MM } from './settings.ts';
import { squeezedIn } from './squeezed.ts';
import { stubOf, type FindBoxes, type Stub } from './stub.ts';
import { Tracks } from './tracks.ts';
import type { Obstacle, RouteRequest, Routes } from './types.ts';

/** Conductors routed at once, above which the first route found stands. */
const SECOND_LOOK_AT_MOST = 150;

/** Distance between the ends above which a conductor in a large drawing is not routed anew for want of room: it kept clear of crowds. */
const FAR_MM = 1500;

export interface Router {
	/**
	 * Routes of these conductors around these obstacles. Only conductors that are new, whose ends, bends or width
	 * changed, or that run where an obstacle came or went are routed anew. Routes that did not change keep their
	 * identity; so does the whole map when none changed.
	 */
	update(requests: readonly RouteRequest[], obstacles: readonly Obstacle[]): Routes;
}

/** All routes from nothing. The same input gives the same routes, in whatever order it comes. */
export const routeConductors = (requests: readonly RouteRequest[], obstacles: readonly Obstacle[]): Routes =>
	createRouter().update(requests, obstacles);

/** A single route for a drag: ignores other conductors and does not look far. */
export function previewRoute(request: RouteRequest, obstacles: readonly Obstacle[]): readonly Point[] {
	const boxes = obstacles.map((obstacle) => obstacle.box);
	const find: FindBoxes = (window) =>
		boxes.filter((b) => b.minX <= window.maxX && b.maxX >= window.minX && b.minY <= window.maxY && b.maxY >= window.minY);
	return routeOne(request, { find, tracks: null, thorough: false }).points;
}

export function createRouter(): Router {
	let known = new Map<string, RouteRequest>();
	let routes = new Map<string, readonly Point[]>();
	let boxes = new Map<string, Box>();

	return {
		update(requests, obstacles) {
			const nextBoxes = new Map(obstacles.map(({ id, box }) => [id, box]));
			const changedBoxes = differences(boxes, nextBoxes);
			const nextKnown = new Map(requests.map((request) => [request.id, request]));
			const stale = requests.filter((request) => {
				const before = known.get(request.id);
				return !before || !sameRequest(before, request) || changedBoxes.some((box) => passesBy(routes.get(request.id)!, request, box));
			});
			const removed = [...known.keys()].some((id) => !nextKnown.has(id));
			boxes = nextBoxes;
			known = nextKnown;
			if (stale.length === 0 && !removed) return routes;
			routes = reroute(requests, stale, routes, nextBoxes);
			return routes;
		}
	};
}

function reroute(
	requests: readonly RouteRequest[],
	stale: readonly RouteRequest[],
	before: Routes,
	boxes: ReadonlyMap<string, Box>
): Map<string, readonly Point[]> {
	const index = SpatialIndex.of([...boxes.values()].map((box) => [box, box] as const));
	const find: FindBoxes = (window) => index.search(window);
	const staleIds = new Set(stale.map((request) => request.id));
	const tracks = new Tracks();
	const runs: Run[] = [];
	for (const request of byId(requests)) {
		if (staleIds.has(request.id)) continue;
		const points = before.get(request.id)!;
		tracks.set(request.id, points, request.widthMm);
		runs.push({
			id: request.id,
			widthMm: request.widthMm,
			from: stubOf(request.from, request.widthMm, find),
			to: stubOf(request.to, request.widthMm, find),
			hold: hasBends(request) ? 'hand' : 'kept',
			points: movable(points),
			moved: false
		});
	}

	const around = { find, tracks, thorough: true };
	const direct = routeAll(nearestFirst(stale), around);
	for (const [request, { points, from, to }] of direct) {
		const hold = hasBends(request) ? 'hand' : 'free';
		runs.push({ id: request.id, widthMm: request.widthMm, from, to, hold, points: movable(points), moved: false });
	}
	if (stale.length > 0) {
		spreadLanes(runs, find);
		repair(runs, new Map(stale.map((request) => [request.id, request])), around);
	}

	const originals = new Map([...direct].map(([{ id }, { points }]) => [id, points]));
	const after = new Map(runs.map((run) => [run.id, run]));
	return new Map(
		requests.map(({ id }) => {
			const run = after.get(id)!;
			const original = originals.get(id) ?? before.get(id)!;
			return [id, run.moved ? checked(run, original, find) : original];
		})
	);
}

/** Each in turn; then each once more, when all the others are known, unless that would take too long. */
function routeAll(requests: readonly RouteRequest[], around: Around & { readonly tracks: Tracks }): Map<RouteRequest, Routed> {
	const routed = new Map<RouteRequest, Routed>();
	const passes = requests.length <= SECOND_LOOK_AT_MOST ? 2 : 1;
	for (let pass = 0; pass < passes; pass++) {
		for (const request of requests) {
			if (pass > 0 && (hasBends(request) || around.tracks.isUndisturbed(request.id, routed.get(request)!.points))) continue;
			around.tracks.delete(request.id);
			const result = routeOne(request, around);
			around.tracks.set(request.id, result.points, request.widthMm);
			routed.set(request, result);
		}
	}
	return routed;
}

/** Routes the conductors that found no room in their track anew, now that the lanes of all others are known. */
function repair(runs: readonly Run[], requests: ReadonlyMap<string, RouteRequest>, around: Around & { readonly tracks: Tracks }): void {
	const squeeze = squeezedIn(runs);
	if (squeeze.ids.size === 0) return;
	const snapshot = runs.map((run) => ({ points: movable(run.points), hold: run.hold, moved: run.moved }));
	for (const run of runs) around.tracks.set(run.id, run.points, run.widthMm, true);
	for (const run of runs) {
		const request = requests.get(run.id);
		if (!request || !squeeze.ids.has(run.id) || (runs.length > SECOND_LOOK_AT_MOST && span(request) > FAR_MM)) {
			if (run.hold === 'free') run.hold = 'kept';
			continue;
		}
		around.tracks.delete(run.id);
		run.points = movable(routeOne(request, around).points);
		run.moved = true;
		around.tracks.set(run.id, run.points, run.widthMm, true);
	}
	spreadLanes(runs, around.find);
	if (squeezedIn(runs).badness <= squeeze.badness) return;
	runs.forEach((run, i) => Object.assign(run, snapshot[i]));
}

/** The spread route, or the one before spreading if the spread one cuts more bodies. */
function checked(run: Run, original: readonly Point[], find: FindBoxes): readonly Point[] {
	const points = simplifyOrthogonal(run.points);
	const sound = isOrthogonal(points) && cuts(points, find) <= cuts(original, find);
	return sound ? points.map(({ x, y }) => ({ x, y })) : original;
}

function cuts(points: readonly Point[], find: FindBoxes): number {
	let count = 0;
	for (let i = 1; i < points.length; i++) count += cutsOf(points[i - 1]!, points[i]!, find);
	return count;
}

interface Routed {
	readonly points: readonly Point[];
	readonly from: Stub;
	readonly to: Stub;
}

function routeOne(request: RouteRequest, around: Around): Routed {
	const from = stubOf(request.from, request.widthMm, around.find);
	const to = stubOf(request.to, request.widthMm, around.find);
	if (hasBends(request)) return { from, to, points: throughBends(from, request.bends!, to, around.find) };
	if (samePoint(from.at, to.at)) return { from, to, points: [from.at, to.at] };
	const path = pathOf(from, to, request.widthMm, around);
	return { from, to, points: simplifyOrthogonal([from.at, ...path, to.at]) };
}

const hasBends = ({ bends }: RouteRequest): boolean => bends !== null && bends.length > 0;

const span = ({ from, to }: RouteRequest): number => Math.abs(from.at.x - to.at.x) + Math.abs(from.at.y - to.at.y);

/** Short conductors first: they have the least choice. Ids settle ties, so that the order of the input does not matter. */
function nearestFirst(requests: readonly RouteRequest[]): RouteRequest[] {
	return [...requests].sort((a, b) => Number(hasBends(b)) - Number(hasBends(a)) || span(a) - span(b) || compareIds(a, b));
}

const byId = (requests: readonly RouteRequest[]): RouteRequest[] => [...requests].sort(compareIds);
const compareIds = (a: RouteRequest, b: RouteRequest): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/** Boxes that came or went; a moved one counts at both places. */
function differences(before: ReadonlyMap<string, Box>, after: ReadonlyMap<string, Box>): Box[] {
	const changed: Box[] = [];
	for (const [id, box] of before) if (!sameBox(box, after.get(id))) changed.push(box);
	for (const [id, box] of after) if (!sameBox(box, before.get(id))) changed.push(box);
	return changed;
}

const sameBox = (a: Box, b: Box | undefined): boolean =>
	b !== undefined && a.minX === b.minX && a.minY === b.minY && a.maxX === b.maxX && a.maxY === b.maxY;

/** Whether a route runs through a box, or so close that it may have been led around it. */
function passesBy(route: readonly Point[], { widthMm }: RouteRequest, box: Box): boolean {
	const near = inflateBox(box, Math.max(CLEARANCE_MM, widthMm / 2) + 1);
	const extent = boxOfPoints(route);
	if (extent.minX > near.maxX || extent.maxX < near.minX || extent.minY > near.maxY || extent.maxY < near.minY) return false;
	return polylineIntersectsBox(route, near);
}

function sameRequest(a: RouteRequest, b: RouteRequest): boolean {
	if (a === b) return true;
	return (
		samePoint(a.from.at, b.from.at) &&
		samePoint(a.to.at, b.to.at) &&
		a.from.side === b.from.side &&
		a.to.side === b.to.side &&
		a.widthMm === b.widthMm &&
		sameBends(a.bends, b.bends)
	);
}

function sameBends(a: RouteRequest['bends'], b: RouteRequest['bends']): boolean {
	const first = a ?? [];
	const second = b ?? [];
	return first.length === second.length && first.every((point, i) => samePoint(point, second[i]!));
}
