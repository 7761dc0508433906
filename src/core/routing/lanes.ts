/**
 * Spreads conductors that share a track into lanes: spaced by their widths, in the order that saves crossings,
 * within the room there is between the bodies.
 */
import { simplifyOrthogonal } from '#core/geometry';
import { limitsOf } from './limits.ts';
import { releaseHeld } from './release.ts';
import { piecesAcross, sharesStud, type Axis, type Piece, type Run } from './run.ts';
import { separate, type Lane, type Spacing } from './separate.ts';
import { laneSpacingMm } from './settings.ts';
import { handednessAtParting } from './side-by-side.ts';
import type { FindBoxes } from './stub.ts';

const ROUNDS = 4;
/** Pieces nearer than this (beyond their spacing) are settled together. */
const NEAR_MM = 30;
/** Beyond this a piece cannot be in the way of another, wherever that moves. */
const FAR_MM = 160;
const SAME_TRACK_MM = 0.5;
const STILL_MM = 1e-6;
/** Below this share of the proper spacing, conductors drawn before have to make room. */
const SQUEEZED = 0.9;

/** Moves the runs' points in place. */
export function spreadLanes(runs: readonly Run[], find: FindBoxes): void {
	releaseHeld(runs);
	for (let round = 0; round < ROUNDS; round++) {
		const movedX = spreadAcross('x', runs, find);
		const movedY = spreadAcross('y', runs, find);
		for (const run of runs) if (run.moved) run.points = simplifyOrthogonal(run.points) as Run['points'];
		if (!movedX && !movedY) break;
	}
}

function spreadAcross(axis: Axis, runs: readonly Run[], find: FindBoxes): boolean {
	const pieces = runs.flatMap((run) => piecesAcross(run, axis));
	pieces.sort((a, b) => a.at - b.at);
	let moved = false;
	for (const bundle of bundlesOf(pieces)) {
		const concerned = aboutFree(bundle);
		if (concerned.length > 1 && settle(concerned, axis, find)) moved = true;
	}
	return moved;
}

/** Groups of pieces that are near each other and run beside each other, directly or through others. */
function bundlesOf(pieces: readonly Piece[]): Piece[][] {
	const root = pieces.map((_, i) => i);
	const widest = Math.max(0, ...pieces.map((piece) => piece.run.widthMm));
	for (let i = 0; i < pieces.length; i++) {
		const reach = laneSpacingMm(pieces[i]!.run.widthMm, widest) + NEAR_MM;
		for (let j = i + 1; j < pieces.length && pieces[j]!.at - pieces[i]!.at < reach; j++) {
			if (beside(pieces[i]!, pieces[j]!)) root[rootOf(root, j)] = rootOf(root, i);
		}
	}
	const groups = new Map<number, Piece[]>();
	pieces.forEach((piece, i) => {
		const group = groups.get(rootOf(root, i));
		if (group) group.push(piece);
		else groups.set(rootOf(root, i), [piece]);
	});
	return [...groups.values()].filter((group) => group.length > 1);
}

/** The pieces that may move, and those that lie near one of them: the rest has no say. */
function aboutFree(bundle: readonly Piece[]): readonly Piece[] {
	const free = bundle.filter((piece) => !isFixed(piece));
	if (free.length === bundle.length) return bundle;
	return bundle.filter((piece) => !isFixed(piece) || free.some((other) => Math.abs(other.at - piece.at) < FAR_MM && beside(other, piece)));
}

/** Whether two pieces would be drawn over each other if they lay on one line. */
function beside(a: Piece, b: Piece): boolean {
	if (a.run === b.run) return false;
	const margin = sharesStud(a.run, b.run) ? 0 : (a.run.widthMm + b.run.widthMm) / 2;
	return a.from - margin < b.to && b.from - margin < a.to;
}

function settle(bundle: readonly Piece[], axis: Axis, find: FindBoxes): boolean {
	const order = inOrder(bundle, axis);
	const spacings: Spacing[] = [];
	for (let after = 1; after < order.length; after++) {
		const nearer: Piece[] = [];
		// In order of position: beyond the first that is too far, all are.
		for (let before = after - 1; before >= 0; before--) {
			const a = order[before]!;
			const b = order[after]!;
			if (b.at - a.at > FAR_MM) break;
			if ((isFixed(a) && isFixed(b)) || !beside(a, b) || nearer.some((between) => partsThem(between, a, b))) continue;
			nearer.push(a);
			spacings.push({ before, after, by: laneSpacingMm(a.run.widthMm, b.run.widthMm) });
		}
	}
	if (spacings.every(({ before, after, by }) => order[after]!.at - order[before]!.at >= by - STILL_MM)) return false;

	const wanted = wantedPositions(order, spacings);
	const lanesWith = (fixed: (piece: Piece) => boolean): Lane[] =>
		order.map((piece, i) => {
			if (fixed(piece)) return { wanted: piece.at, low: piece.at, high: piece.at };
			return { wanted: wanted[i]!, ...limitsOf(piece, axis, find) };
		});
	let result = separate(lanesWith(isFixed), spacings);
	if (result.tightest < SQUEEZED && order.some(({ run, held }) => run.hold === 'kept' && !held)) {
		const roomier = separate(
			lanesWith((piece) => piece.held || piece.run.hold === 'hand'),
			spacings
		);
		if (roomier.tightest > result.tightest) result = roomier;
	}
	return place(order, result.at, axis);
}

/** Whether a piece between two others lies all along where they are beside each other, so that it keeps them apart. */
function partsThem(between: Piece, a: Piece, b: Piece): boolean {
	if (between.run === a.run || (isFixed(between) && isFixed(a))) return false;
	return between.from <= Math.max(a.from, b.from) && between.to >= Math.min(a.to, b.to);
}

const isFixed = ({ held, run }: Piece): boolean => held || run.hold !== 'free';

function place(order: readonly Piece[], at: readonly number[], axis: Axis): boolean {
	let moved = false;
	order.forEach((piece, i) => {
		if (Math.abs(at[i]! - piece.at) < STILL_MM) return;
		piece.run.points[piece.index - 1]![axis] = at[i]!;
		piece.run.points[piece.index]![axis] = at[i]!;
		piece.run.moved = true;
		moved = true;
	});
	return moved;
}

/** By position; on one track by the sides on which they will part. */
function inOrder(bundle: readonly Piece[], axis: Axis): Piece[] {
	const order: Piece[] = [];
	for (const piece of bundle) {
		let place = order.length;
		for (let i = order.length - 1; i >= 0 && piece.at - order[i]!.at < SAME_TRACK_MM; i--) {
			if (!beside(piece, order[i]!)) continue;
			if (!belongsBelow(piece, order[i]!, axis)) break;
			place = i;
		}
		order.splice(place, 0, piece);
	}
	return order;
}

/** Whether, of two pieces on one track, the first should take the smaller coordinate. */
function belongsBelow(a: Piece, b: Piece, axis: Axis): boolean {
	const up = handednessAtParting(walk(a, axis, 1), walk(b, axis, 1));
	const down = handednessAtParting(walk(a, axis, -1), walk(b, axis, -1));
	// Walking towards greater y, right is smaller x; walking towards greater x, right is greater y.
	const sign = axis === 'x' ? 1 : -1;
	if (up !== down) return sign * (up - down) > 0;
	if (up !== 0) return sign * up > 0;
	return sign * sideById(a, b, axis) > 0;
}

/** For conductors that never part: one side all the way, so that they do not cross at the bends. */
function sideById(a: Piece, b: Piece, axis: Axis): number {
	const along = axis === 'x' ? 'y' : 'x';
	const { run, index } = a;
	const sense = Math.sign(run.points[index]![along] - run.points[index - 1]![along]);
	const start = run.from.at;
	const end = run.to.at;
	const outwards = start.x < end.x || (start.x === end.x && start.y < end.y) ? 1 : -1;
	return (a.run.id < b.run.id ? -1 : 1) * sense * outwards;
}

/** The run's points from this piece on, in the sense in which the piece goes towards greater (1) or smaller (−1) coordinates. */
function walk({ run, index }: Piece, axis: Axis, sense: 1 | -1): readonly { x: number; y: number }[] {
	const along = axis === 'x' ? 'y' : 'x';
	const forwards = Math.sign(run.points[index]![along] - run.points[index - 1]![along]) === sense;
	return forwards ? run.points.slice(index - 1) : run.points.slice(0, index + 1).reverse();
}

/** Pieces on one track want to lie evenly to both sides of it, or beside the one that cannot move. */
function wantedPositions(order: readonly Piece[], spacings: readonly Spacing[]): number[] {
	const offset = order.map(() => 0);
	const root = order.map((_, i) => i);
	for (const { before, after, by } of spacings) {
		if (order[after]!.at - order[before]!.at > SAME_TRACK_MM) continue;
		offset[after] = Math.max(offset[after]!, offset[before]! + by);
		root[rootOf(root, after)] = rootOf(root, before);
	}
	const tracks = new Map<number, number[]>();
	order.forEach((_, i) => {
		const members = tracks.get(rootOf(root, i));
		if (members) members.push(i);
		else tracks.set(rootOf(root, i), [i]);
	});
	const wanted = order.map((piece) => piece.at);
	for (const members of tracks.values()) {
		const fixed = members.find((i) => isFixed(order[i]!));
		const offsets = members.map((i) => offset[i]!);
		const shift = fixed !== undefined ? offset[fixed]! : (Math.min(...offsets) + Math.max(...offsets)) / 2;
		for (const i of members) wanted[i]! += offset[i]! - shift;
	}
	return wanted;
}

/** Root of a set in a forest of parents, shortening the way for the next time. */
function rootOf(root: number[], i: number): number {
	while (root[i] !== i) i = root[i] = root[root[i]!]!;
	return i;
}
