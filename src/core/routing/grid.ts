/**
 * The lines a route may run on: few, at the clearance from each part and through the two ends. What a step on a
 * line costs is worked out for a whole line at once, when the search first comes to it.
 */
import { inflateBox, type Box } from '#core/geometry';
import {
	BLOCKED_TRACK_PER_MM,
	CLOSE_TRACK_PER_MM,
	CROSSING_MM,
	SAME_LINE_MM,
	SHARED_TRACK_PER_MM,
	THROUGH_PART_PER_MM,
	laneSpacingMm
} from './settings.ts';
import type { Stub } from './stub.ts';
import type { Stretch } from './tracks.ts';

export interface GridInput {
	readonly obstacles: readonly Box[];
	/** The two ends, whose exits get lines of their own in both directions. */
	readonly ends: readonly Stub[];
	readonly widthMm: number;
	readonly window: Box;
	/** Distances from the bodies at which there are lines. */
	readonly offsetsMm: readonly number[];
	/** How near to a body a centre line may come. */
	readonly keepOffMm: number;
	/** True lets a route pass through parts, at a price. */
	readonly throughParts: boolean;
	readonly horizontal: readonly Stretch[];
	readonly vertical: readonly Stretch[];
}

/** Extent across the line, then along it. */
type Blocked = readonly [low: number, high: number, from: number, to: number];

export class Grid {
	readonly xs: Float64Array;
	readonly ys: Float64Array;
	readonly #input: GridInput;
	readonly #blockedRows: readonly Blocked[];
	readonly #blockedColumns: readonly Blocked[];
	readonly #alongX: (Float64Array | undefined)[];
	readonly #alongY: (Float64Array | undefined)[];

	constructor(input: GridInput) {
		this.#input = input;
		const blocked = input.obstacles.map((box) => keepOff(box, input));
		this.#blockedRows = blocked.map((b) => [b.minY, b.maxY, b.minX, b.maxX]);
		this.#blockedColumns = blocked.map((b) => [b.minX, b.maxX, b.minY, b.maxY]);
		const { window, ends, offsetsMm, obstacles } = input;
		const spacing = (other: number): number => laneSpacingMm(input.widthMm, other);
		const xs = obstacles.flatMap((b) => offsetsMm.flatMap((off) => [b.minX - off, b.maxX + off]));
		const ys = obstacles.flatMap((b) => offsetsMm.flatMap((off) => [b.minY - off, b.maxY + off]));
		const exact = ends.map((end) => end.exit);
		this.xs = lines(
			exact.map((p) => p.x),
			xs.filter((x) => x >= window.minX && x <= window.maxX),
			input.vertical,
			spacing,
			spacing(input.widthMm)
		);
		this.ys = lines(
			exact.map((p) => p.y),
			ys.filter((y) => y >= window.minY && y <= window.maxY),
			input.horizontal,
			spacing,
			spacing(input.widthMm)
		);
		this.#alongX = new Array(this.ys.length);
		this.#alongY = new Array(this.xs.length);
	}

	/** Costs of the steps along horizontal line `row`: entry i is from column i to i + 1. */
	alongX(row: number): Float64Array {
		return (this.#alongX[row] ??= this.#price(this.ys[row]!, this.xs, this.#blockedRows, this.#input.horizontal, this.#input.vertical));
	}

	/** Costs of the steps along vertical line `column`: entry j is from row j to j + 1. */
	alongY(column: number): Float64Array {
		return (this.#alongY[column] ??= this.#price(
			this.xs[column]!,
			this.ys,
			this.#blockedColumns,
			this.#input.vertical,
			this.#input.horizontal
		));
	}

	#price(
		line: number,
		stops: Float64Array,
		blocked: readonly Blocked[],
		parallel: readonly Stretch[],
		across: readonly Stretch[]
	): Float64Array {
		const costs = new Float64Array(Math.max(0, stops.length - 1));
		for (let i = 0; i < costs.length; i++) costs[i] = stops[i + 1]! - stops[i]!;

		for (const [low, high, from, to] of blocked) {
			if (line <= low || line >= high) continue;
			for (let i = stepAt(stops, from); i < costs.length && stops[i]! < to; i++) {
				const inside = Math.min(to, stops[i + 1]!) - Math.max(from, stops[i]!);
				if (inside > 0) costs[i]! += this.#input.throughParts ? inside * THROUGH_PART_PER_MM : Infinity;
			}
		}
		for (const { at, from, to, held, widthMm } of parallel) {
			const away = Math.abs(at - line);
			const onIt = away < SAME_LINE_MM;
			if (!onIt && (!held || away >= laneSpacingMm(widthMm, this.#input.widthMm) - SAME_LINE_MM)) continue;
			const perMm = onIt ? (held ? BLOCKED_TRACK_PER_MM : SHARED_TRACK_PER_MM) : CLOSE_TRACK_PER_MM;
			for (let i = stepAt(stops, from); i < costs.length && stops[i]! < to; i++) {
				const shared = Math.min(to, stops[i + 1]!) - Math.max(from, stops[i]!);
				if (shared > 0) costs[i]! += shared * perMm;
			}
		}
		for (const { at, from, to } of across) {
			if (line <= from || line >= to) continue;
			const i = stepAt(stops, at);
			// A crossing on a stop is shared by the steps on both sides, so that turning there costs half.
			if (stops[i] === at) {
				if (i > 0) costs[i - 1]! += CROSSING_MM / 2;
				if (i < costs.length) costs[i]! += CROSSING_MM / 2;
			} else if (i < costs.length && stops[i]! < at) costs[i]! += CROSSING_MM;
		}
		return costs;
	}
}

/** A body and the room around it; no room where an end of this route already stands in it. */
function keepOff(box: Box, { keepOffMm, ends }: GridInput): Box {
	const wide = inflateBox(box, keepOffMm);
	const standsIn = ends.some(({ clear: p }) => p.x > wide.minX && p.x < wide.maxX && p.y > wide.minY && p.y < wide.maxY);
	return standsIn ? box : wide;
}

/**
 * Sorted coordinates. Those of the ends are exact and win over others close by, which would only make kinks. A line
 * on which a held stretch is in the way gets lines beside that stretch.
 */
function lines(
	exact: readonly number[],
	others: readonly number[],
	held: readonly Stretch[],
	spacing: (widthMm: number) => number,
	beside: number
): Float64Array {
	const kinkMm = spacing(0) / 2;
	const all = [...exact];
	for (const at of exact) all.push(at - beside, at + beside);
	for (const at of others) if (exact.every((e) => e === at || Math.abs(e - at) > kinkMm)) all.push(at);
	const own = all.length;
	for (const stretch of held) {
		if (!stretch.held) continue;
		const room = spacing(stretch.widthMm);
		for (let i = 0; i < own; i++) {
			if (Math.abs(all[i]! - stretch.at) >= room) continue;
			all.push(stretch.at - room, stretch.at + room);
			break;
		}
	}
	const sorted = Float64Array.from(all).sort();
	let kept = 0;
	for (const at of sorted) if (kept === 0 || at !== sorted[kept - 1]) sorted[kept++] = at;
	return sorted.slice(0, kept);
}

/** Index of the last stop at or before the coordinate; 0 when it lies before all. */
function stepAt(stops: Float64Array, at: number): number {
	let low = 0;
	let high = stops.length - 1;
	while (low < high) {
		const middle = (low + high + 1) >> 1;
		if (stops[middle]! <= at) low = middle;
		else high = middle - 1;
	}
	return low;
}
