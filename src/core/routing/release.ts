/**
 * First and last stretches are held by their terminals. Where two of them run on one line, one is cut at the end of
 * its stub, so that the rest can step aside into a lane of its own.
 */
import { otherAxis, piecesAcross, type Axis, type MovablePoint, type Piece, type Run } from './run.ts';
import { SAME_LINE_MM } from './settings.ts';

/** Overlap that does not matter. */
const TOUCH_MM = 0.5;

export function releaseHeld(runs: readonly Run[]): void {
	for (const axis of ['x', 'y'] as const) {
		const held = runs.flatMap((run) => piecesAcross(run, axis).filter((piece) => piece.held));
		held.sort((a, b) => a.at - b.at);
		const cut = new Set<Run>();
		for (let i = 0; i < held.length; i++) {
			for (let j = i + 1; j < held.length && held[j]!.at - held[i]!.at < SAME_LINE_MM; j++) {
				const a = held[i]!;
				const b = held[j]!;
				if (a.run === b.run || cut.has(a.run) || cut.has(b.run)) continue;
				if (b.run.hold !== 'hand' && overlapsFree(b, a, axis)) cut.add(b.run);
				else if (a.run.hold !== 'hand' && overlapsFree(a, b, axis)) cut.add(a.run);
			}
		}
		for (const run of cut) cutAtStubs(run, axis);
	}
}

/** Whether the part of `piece` beyond its own stub lies over `other`. */
function overlapsFree(piece: Piece, other: Piece, axis: Axis): boolean {
	const free = freeExtent(piece, axis);
	return Math.min(free.to, other.to) - Math.max(free.from, other.from) > TOUCH_MM;
}

function freeExtent({ run, index, from, to }: Piece, axis: Axis): { from: number; to: number } {
	const along = otherAxis(axis);
	let low = from;
	let high = to;
	const stubs = [];
	if (index === 1) stubs.push(run.from);
	if (index === run.points.length - 1) stubs.push(run.to);
	for (const { at, exit } of stubs) {
		if (exit[along] > at[along]) low = Math.max(low, exit[along]);
		else if (exit[along] < at[along]) high = Math.min(high, exit[along]);
	}
	return { from: low, to: high };
}

function cutAtStubs(run: Run, axis: Axis): void {
	const { points } = run;
	const along = otherAxis(axis);
	const first = points[0]!;
	const second = points[1]!;
	const beforeLast = points.at(-2)!;
	const last = points.at(-1)!;
	const ahead: MovablePoint[] = [];
	const behind: MovablePoint[] = [];
	if (first[axis] === second[axis] && strictlyBetween(first[along], run.from.exit[along], second[along])) {
		ahead.push({ ...run.from.exit }, { ...run.from.exit });
	}
	if (last[axis] === beforeLast[axis] && strictlyBetween(last[along], run.to.exit[along], beforeLast[along])) {
		behind.push({ ...run.to.exit }, { ...run.to.exit });
	}
	// On a straight run the two stubs may reach past each other; then there is nothing to step aside.
	if (points.length === 2 && !(ahead.length > 0 && behind.length > 0 && between(first[along], ahead[0]![along], behind[0]![along]))) return;
	run.points = [first, ...ahead, ...points.slice(1, -1), ...behind, last];
}

const strictlyBetween = (a: number, b: number, c: number): boolean => (a < b && b < c) || (a > b && b > c);
const between = (a: number, b: number, c: number): boolean => (a <= b && b < c) || (a >= b && b > c);
