/** Routes of all conductors, and the router that remembers them from one edit to the next. */
import { SpatialIndex, inflateBox, polylineIntersectsBox, samePoint, type Box, type Point } from '#core/geometry';
import { routeOne } from './one-route.ts';
import { reroute } from './reroute.ts';
import { CLEARANCE_MM } from './settings.ts';
import type { FindBoxes } from './stub.ts';
import { Tracks } from './tracks.ts';
import type { Obstacle, RouteRequest, Routes } from './types.ts';

/** No conductor is thicker. */
const WIDEST_MM = 60;

/** With more new boxes than this, the index is filled afresh. */
const REINDEX_ABOVE = 100;

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
	let known: ReadonlyMap<string, RouteRequest> = new Map();
	let routes: ReadonlyMap<string, readonly Point[]> = new Map();
	let boxes: ReadonlyMap<string, Box> = new Map();
	let index = new SpatialIndex<Box>();
	const tracks = new Tracks();
	const around = { find: (window: Box) => index.search(window), tracks, thorough: true };

	return {
		update(requests, obstacles) {
			const nextBoxes = new Map(obstacles.map(({ id, box }) => [id, sameBox(box, boxes.get(id)) ? boxes.get(id)! : { ...box }]));
			const gone = missingIn(nextBoxes, boxes);
			const come = missingIn(boxes, nextBoxes);
			if (come.length > REINDEX_ABOVE) index = SpatialIndex.of([...nextBoxes.values()].map((box) => [box, box] as const));
			else {
				for (const box of gone) index.remove(box);
				for (const box of come) index.set(box, box);
			}
			boxes = nextBoxes;

			const next = new Map(requests.map((request) => [request.id, request]));
			const passing = passingBy([...gone, ...come], known, routes, tracks);
			const stale = requests.filter((request) => {
				const before = known.get(request.id);
				return !before || !sameRequest(before, request) || passing.has(request.id);
			});
			const removed = [...known.keys()].filter((id) => !next.has(id));
			known = next;
			if (stale.length === 0 && removed.length === 0) return routes;
			for (const id of removed) tracks.delete(id);
			for (const { id } of stale) tracks.delete(id);
			const changed = reroute(stale, { requests: next, before: routes, around });
			routes = new Map(requests.map(({ id }) => [id, changed.get(id) ?? routes.get(id)!]));
			return routes;
		}
	};
}

/** Boxes of the second that are not in the first; a moved one is another box. */
function missingIn(first: ReadonlyMap<string, Box>, second: ReadonlyMap<string, Box>): Box[] {
	const missing: Box[] = [];
	for (const [id, box] of second) if (first.get(id) !== box) missing.push(box);
	return missing;
}

const sameBox = (a: Box, b: Box | undefined): boolean =>
	b !== undefined && a.minX === b.minX && a.minY === b.minY && a.maxX === b.maxX && a.maxY === b.maxY;

/** Conductors that run through a box, or so close that they may have been led around it. */
function passingBy(changed: readonly Box[], known: ReadonlyMap<string, RouteRequest>, routes: Routes, tracks: Tracks): Set<string> {
	const passing = new Set<string>();
	if (routes.size === 0) return passing;
	for (const box of changed) {
		for (const id of tracks.idsIn(inflateBox(box, WIDEST_MM / 2 + CLEARANCE_MM))) {
			const near = inflateBox(box, Math.max(CLEARANCE_MM, known.get(id)!.widthMm / 2) + 1);
			if (polylineIntersectsBox(routes.get(id)!, near)) passing.add(id);
		}
	}
	return passing;
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
