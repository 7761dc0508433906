/** Routes some conductors of a drawing anew and fits them in beside the others. */
import { inflateBox, isOrthogonal, simplifyOrthogonal, type Point } from '#core/geometry';
import { cutsOf } from './hand-set.ts';
import { spreadLanes } from './lanes.ts';
import { hasBends, routeOne, type Routed } from './one-route.ts';
import type { Around } from './path.ts';
import { movable, type Run } from './run.ts';
import { squeezedIn } from './squeezed.ts';
import { stubOf, type FindBoxes } from './stub.ts';
import type { Tracks } from './tracks.ts';
import type { RouteRequest, Routes } from './types.ts';

/** Conductors routed at once, above which the first route found stands. */
const SECOND_LOOK_AT_MOST = 150;

/** Distance between the ends above which a conductor in a large drawing is not routed anew for want of room: it kept clear of crowds. */
const FAR_MM = 1500;

/** Conductors farther than this from all new routes need not make room for them. */
const NEIGHBOUR_MM = 200;

export interface Drawing {
	readonly requests: ReadonlyMap<string, RouteRequest>;
	/** Routes of those that are kept. */
	readonly before: Routes;
	readonly around: Around & { readonly tracks: Tracks };
}

/**
 * Routes of the stale conductors, and of others that had to make room. The tracks hold all other routes before, and
 * all routes after.
 */
export function reroute(stale: readonly RouteRequest[], drawing: Drawing): Map<string, readonly Point[]> {
	const { around, before, requests } = drawing;
	const routed = routeAll(nearestFirst(stale), around);
	const runs = new Map<string, Run>();
	for (const [request, { points, from, to }] of routed) {
		const hold = hasBends(request) ? 'hand' : 'free';
		runs.set(request.id, { id: request.id, widthMm: request.widthMm, from, to, hold, isNew: true, points: movable(points), moved: false });
	}
	spreadLanes(withNeighbours(runs, drawing), around.find);
	repair(runs, drawing);

	const originals = new Map([...routed].map(([{ id }, { points }]) => [id, points]));
	const changed = new Map<string, readonly Point[]>();
	for (const run of runs.values()) {
		const original = originals.get(run.id) ?? before.get(run.id)!;
		const points = run.moved ? checked(run, original, around.find) : original;
		around.tracks.set(run.id, points, requests.get(run.id)!.widthMm);
		if (points !== before.get(run.id)) changed.set(run.id, points);
	}
	return changed;
}

/** Each in turn; then each once more, when all the others are known, unless that would take too long. */
function routeAll(requests: readonly RouteRequest[], around: Drawing['around']): Map<RouteRequest, Routed> {
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

/** Adds the kept conductors that run near the new ones. */
function withNeighbours(runs: Map<string, Run>, { requests, before, around: { find, tracks } }: Drawing): Run[] {
	if (runs.size < requests.size) {
		for (const { points } of [...runs.values()].filter(({ isNew }) => isNew)) {
			for (const id of idsBeside(points, tracks)) {
				const request = requests.get(id);
				if (runs.has(id) || !request) continue;
				runs.set(id, {
					id,
					widthMm: request.widthMm,
					from: stubOf(request.from, request.widthMm, find),
					to: stubOf(request.to, request.widthMm, find),
					hold: hasBends(request) ? 'hand' : 'kept',
					isNew: false,
					points: movable(before.get(id)!),
					moved: false
				});
			}
		}
	}
	return inOrder(runs);
}

/** Kept conductors by id, then the new ones, the short ones first. */
function inOrder(runs: ReadonlyMap<string, Run>): Run[] {
	const all = [...runs.values()];
	return [...all.filter(({ isNew }) => !isNew).sort(compareIds), ...all.filter(({ isNew }) => isNew)];
}

function idsBeside(points: readonly Point[], tracks: Tracks): Set<string> {
	const ids = new Set<string>();
	for (let i = 1; i < points.length; i++) {
		const a = points[i - 1]!;
		const b = points[i]!;
		const stretch = { minX: Math.min(a.x, b.x), minY: Math.min(a.y, b.y), maxX: Math.max(a.x, b.x), maxY: Math.max(a.y, b.y) };
		for (const id of tracks.idsIn(inflateBox(stretch, NEIGHBOUR_MM))) ids.add(id);
	}
	return ids;
}

/** Routes the conductors that found no room in their track anew, now that the lanes of all others are known. */
function repair(known: Map<string, Run>, drawing: Drawing): void {
	const { requests, around } = drawing;
	const runs = inOrder(known);
	const squeeze = squeezedIn(runs);
	const large = requests.size > SECOND_LOOK_AT_MOST;
	const again = runs.filter(({ id }) => squeeze.ids.has(id) && !(large && span(requests.get(id)!) > FAR_MM));
	if (again.length === 0) return;
	const snapshot = runs.map((run) => ({ points: movable(run.points), hold: run.hold, moved: run.moved }));
	for (const run of runs) {
		around.tracks.set(run.id, run.points, run.widthMm, true);
		if (run.hold === 'free') run.hold = 'kept';
	}
	for (const run of again) {
		around.tracks.delete(run.id);
		run.hold = 'free';
		run.points = movable(routeOne(requests.get(run.id)!, around).points);
		run.moved = true;
		around.tracks.set(run.id, run.points, run.widthMm, true);
	}
	// Neighbours that come in only now bring their own crowding into the sum: a repair has to help clearly to be kept.
	spreadLanes(withNeighbours(known, drawing), around.find);
	if (squeezedIn(inOrder(known)).badness <= squeeze.badness) return;
	runs.forEach((run, i) => Object.assign(run, snapshot[i]));
	for (const id of known.keys()) if (!runs.some((run) => run.id === id)) known.delete(id);
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

const span = ({ from, to }: RouteRequest): number => Math.abs(from.at.x - to.at.x) + Math.abs(from.at.y - to.at.y);

/** Short conductors first: they have the least choice. Ids settle ties, so that the order of the input does not matter. */
function nearestFirst(requests: readonly RouteRequest[]): RouteRequest[] {
	return [...requests].sort((a, b) => Number(hasBends(b)) - Number(hasBends(a)) || span(a) - span(b) || compareIds(a, b));
}

const compareIds = (a: { readonly id: string }, b: { readonly id: string }): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
