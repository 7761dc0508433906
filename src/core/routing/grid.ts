/**
 * The lines a route may run on: few, at the clearance from each part and through the two ends. What a step on a
 * line costs is worked out for a whole line at once, when the search first comes to it.
 */
import type { Box, Point } from '#core/geometry';
import { BLOCKED_TRACK_PER_MM, CROSSING_MM, SAME_LINE_MM, SHARED_TRACK_PER_MM, THROUGH_PART_PER_MM } from './settings.ts';
import type { Stretch } from './tracks.ts';

export interface GridInput {
	readonly obstacles: readonly Box[];
	/** Points that get a line of their own in both directions. */
	readonly anchors: readonly Point[];
	/** Lines beside the anchors, at this distance; 0 for none. */
	readonly besideMm: number;
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
		const { window, anchors } = input;
		this.xs = lines(
			anchors.map((p) => p.x),
			input.obstacles.flatMap((b) => input.offsetsMm.flatMap((off) => [b.minX - off, b.maxX + off])),
			input.besideMm,
			window.minX,
			window.maxX
		);
		this.ys = lines(
			anchors.map((p) => p.y),
			input.obstacles.flatMap((b) => input.offsetsMm.flatMap((off) => [b.minY - off, b.maxY + off])),
			input.besideMm,
			window.minY,
			window.maxY
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
		for (const { at, from, to, held } of parallel) {
			if (Math.abs(at - line) > SAME_LINE_MM) continue;
			const perMm = held ? BLOCKED_TRACK_PER_MM : SHARED_TRACK_PER_MM;
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
function keepOff(box: Box, { keepOffMm, anchors }: GridInput): Box {
	const wide = { minX: box.minX - keepOffMm, minY: box.minY - keepOffMm, maxX: box.maxX + keepOffMm, maxY: box.maxY + keepOffMm };
	const standsIn = anchors.some((p) => p.x > wide.minX && p.x < wide.maxX && p.y > wide.minY && p.y < wide.maxY);
	return standsIn ? box : wide;
}

/** Sorted coordinates; those of the ends are exact and win over others close by, which would only make kinks. */
function lines(exact: readonly number[], others: readonly number[], beside: number, low: number, high: number): Float64Array {
	const near = beside / 2;
	const all = [...exact];
	for (const at of exact) if (beside > 0) all.push(at - beside, at + beside);
	for (const at of others) {
		if (at < low || at > high) continue;
		if (near === 0 || exact.every((e) => e === at || Math.abs(e - at) > near)) all.push(at);
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
