/** A route while its lanes are being sorted out: its points may still move. */
import type { Point } from '#core/geometry';
import type { Stub } from './stub.ts';

export interface MovablePoint {
	x: number;
	y: number;
}

export interface Run {
	readonly id: string;
	readonly widthMm: number;
	readonly from: Stub;
	readonly to: Stub;
	/**
	 * `free` may move anywhere; `kept` was drawn before and moves only when the others would not fit; `hand` follows
	 * bends set by hand and never moves.
	 */
	hold: 'free' | 'kept' | 'hand';
	/** Routed in this update, not before. */
	readonly isNew: boolean;
	points: MovablePoint[];
	moved: boolean;
}

export const movable = (points: readonly Point[]): MovablePoint[] => points.map(({ x, y }) => ({ x, y }));

/** One straight stretch of a run, seen across its direction. */
export interface Piece {
	readonly run: Run;
	/** Index of the end point in the run's points; the start is the one before. */
	readonly index: number;
	/** Coordinate across the stretch. */
	readonly at: number;
	/** Extent along the stretch. */
	readonly from: number;
	readonly to: number;
	/** True for first and last stretches, which the terminals hold. */
	readonly held: boolean;
}

/** Across x: the vertical pieces, which may move in x; across y: the horizontal ones. */
export type Axis = 'x' | 'y';
export const otherAxis = (axis: Axis): Axis => (axis === 'x' ? 'y' : 'x');

/** Pieces of a run that may be moved along `axis`; pieces of no length are left out. */
export function piecesAcross(run: Run, axis: Axis): Piece[] {
	const along = otherAxis(axis);
	const pieces: Piece[] = [];
	for (let i = 1; i < run.points.length; i++) {
		const a = run.points[i - 1]!;
		const b = run.points[i]!;
		if (a[axis] !== b[axis] || a[along] === b[along]) continue;
		pieces.push({
			run,
			index: i,
			at: a[axis],
			from: Math.min(a[along], b[along]),
			to: Math.max(a[along], b[along]),
			held: i === 1 || i === run.points.length - 1
		});
	}
	return pieces;
}

export const sharesStud = (a: Run, b: Run): boolean =>
	same(a.from.at, b.from.at) || same(a.from.at, b.to.at) || same(a.to.at, b.from.at) || same(a.to.at, b.to.at);

const same = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;
