/**
 * Where a box that is moved falls into line with its neighbours: edges and centres on one line, or gaps of one width.
 * Each axis by itself; what is nearest wins, and of two equally near a common line before a common gap.
 */
import type { Box, Point } from './point.ts';

/** Drawn while it holds. Of a line, `at` is its place across it and `from`, `to` its ends; of a gap, `at` is where it is written. */
export interface Guide {
	readonly kind: 'line' | 'gap';
	/** "x": an upright line, or a gap between things side by side that runs level. */
	readonly axis: 'x' | 'y';
	readonly at: number;
	readonly from: number;
	readonly to: number;
}

export interface Alignment {
	/** What is to be added so that the box lies in line; null on an axis where nothing is near. */
	readonly x: number | null;
	readonly y: number | null;
}

type Axis = 'x' | 'y';
interface Span {
	readonly min: number;
	readonly max: number;
}

const along = (box: Box, axis: Axis): Span => (axis === 'x' ? { min: box.minX, max: box.maxX } : { min: box.minY, max: box.maxY });
const across = (box: Box, axis: Axis): Span => along(box, axis === 'x' ? 'y' : 'x');
const stops = ({ min, max }: Span): readonly [number, number, number] => [(min + max) / 2, min, max];
const overlap = (a: Span, b: Span): boolean => a.min < b.max && b.min < a.max;
const EXACT_MM = 1e-6;

/** A point of what is moved, and one that stays to which it is tied. */
export interface Tie {
	readonly own: Point;
	readonly other: Point;
}

/** What a box may fall in line with. */
export interface Around {
	readonly others: readonly Box[];
	readonly ties?: readonly Tie[];
}

/** @param reachMm how far away a line may be and still draw the box to it */
export const alignmentOf = (moving: Box, around: Around, reachMm: number): Alignment => ({
	x: nearest(moving, around, 'x', reachMm),
	y: nearest(moving, around, 'y', reachMm)
});

function nearest(moving: Box, { others, ties = [] }: Around, axis: Axis, reachMm: number): number | null {
	let best: number | null = null;
	const offer = (by: number): void => {
		if (Math.abs(by) <= reachMm && (best === null || Math.abs(by) < Math.abs(best) - EXACT_MM)) best = by;
	};
	for (const { own, other } of ties) offer(other[axis] - own[axis]);
	const own = stops(along(moving, axis));
	for (const other of others) stops(along(other, axis)).forEach((stop, which) => offer(stop - own[which]!));
	for (const gap of gapsFor(moving, others, axis)) offer(gap);
	return best;
}

/** Shifts that make the gap to a neighbour as wide as the one on the other side of the box, or as the neighbour's own next gap. */
function gapsFor(moving: Box, others: readonly Box[], axis: Axis): number[] {
	const { min, max } = along(moving, axis);
	const { before, after } = row(moving, others, axis);
	const shifts: number[] = [];
	const [left, right] = [before[0], after[0]];
	if (left && right) {
		const shift = (left.max + right.min - min - max) / 2;
		if (left.max <= min + shift) shifts.push(shift);
	}
	if (left && before[1]) shifts.push(left.max + (left.min - before[1].max) - min);
	if (right && after[1]) shifts.push(right.min - (after[1].min - right.max) - max);
	return shifts;
}

/** What stands in one row with the box, nearest first: before it and after it, by centres. Things that overlap are left out. */
function row(moving: Box, others: readonly Box[], axis: Axis): { readonly before: readonly Span[]; readonly after: readonly Span[] } {
	const beside = others.filter((other) => overlap(across(other, axis), across(moving, axis))).map((other) => along(other, axis));
	const [middle] = stops(along(moving, axis));
	const before = beside.filter(({ max }) => max <= middle).sort((a, b) => b.max - a.max);
	const after = beside.filter(({ min }) => min >= middle).sort((a, b) => a.min - b.min);
	return { before: apart(before, (next, last) => next.max <= last.min), after: apart(after, (next, last) => next.min >= last.max) };
}

function apart(spans: readonly Span[], follows: (next: Span, last: Span) => boolean): Span[] {
	const kept: Span[] = [];
	for (const span of spans) if (kept.length === 0 || follows(span, kept.at(-1)!)) kept.push(span);
	return kept;
}

/** Lines and gaps that hold for the box where it lies now, with the distances to what it is in line with. */
export function guidesOf(placed: Box, { others, ties = [] }: Around, which: { readonly x: boolean; readonly y: boolean }): Guide[] {
	return (['x', 'y'] as const)
		.filter((axis) => which[axis])
		.flatMap((axis) => [...tiedLines(ties, axis), ...linesOf(placed, others, axis), ...evenGaps(placed, others, axis)]);
}

function tiedLines(ties: readonly Tie[], axis: Axis): Guide[] {
	const other = axis === 'x' ? 'y' : 'x';
	return ties.flatMap((tie): Guide[] => {
		if (Math.abs(tie.own[axis] - tie.other[axis]) > EXACT_MM) return [];
		const ends = [tie.own[other], tie.other[other]];
		return [{ kind: 'line', axis, at: tie.own[axis], from: Math.min(...ends), to: Math.max(...ends) }];
	});
}

function linesOf(placed: Box, others: readonly Box[], axis: Axis): Guide[] {
	const guides: Guide[] = [];
	for (const [which, at] of stops(along(placed, axis)).entries()) {
		const onLine = others.filter((other) => Math.abs(stops(along(other, axis))[which]! - at) < EXACT_MM);
		if (onLine.length === 0) continue;
		const spans = [placed, ...onLine].map((box) => across(box, axis));
		guides.push({ kind: 'line', axis, at, from: Math.min(...spans.map(({ min }) => min)), to: Math.max(...spans.map(({ max }) => max)) });
		const next = guides.length === 1 ? gapToward(placed, onLine, axis) : null;
		if (next) guides.push(next);
	}
	return guides;
}

/** The distance from the box to the nearest of those in line with it, along the line. */
function gapToward(placed: Box, onLine: readonly Box[], line: Axis): Guide | null {
	const axis = line === 'x' ? 'y' : 'x';
	const own = along(placed, axis);
	const gaps = onLine.flatMap((other): Guide[] => {
		const its = along(other, axis);
		const at =
			(Math.max(across(placed, axis).min, across(other, axis).min) + Math.min(across(placed, axis).max, across(other, axis).max)) / 2;
		if (its.min >= own.max) return [{ kind: 'gap', axis, at, from: own.max, to: its.min }];
		return its.max <= own.min ? [{ kind: 'gap', axis, at, from: its.max, to: own.min }] : [];
	});
	return gaps.filter(({ from, to }) => to - from > EXACT_MM).sort((a, b) => a.to - a.from - (b.to - b.from))[0] ?? null;
}

/** Gaps on either side of the box, or beside a neighbour, that are equally wide. */
function evenGaps(placed: Box, others: readonly Box[], axis: Axis): Guide[] {
	const own = along(placed, axis);
	const [at] = stops(across(placed, axis));
	const { before, after } = row(placed, others, axis);
	const gap = (from: number, to: number): Guide => ({ kind: 'gap', axis, at, from, to });
	const wide = ({ from, to }: Guide): number => to - from;
	const left = before[0] && gap(before[0].max, own.min);
	const right = after[0] && gap(own.max, after[0].min);
	const pairs: (readonly [Guide | undefined, Guide | undefined])[] = [
		[left, right],
		[left, before[1] && gap(before[1].max, before[0]!.min)],
		[right, after[1] && gap(after[0]!.max, after[1].min)]
	];
	return pairs.flatMap(([a, b]) => (a && b && wide(a) > EXACT_MM && Math.abs(wide(a) - wide(b)) < EXACT_MM ? [a, b] : []));
}
