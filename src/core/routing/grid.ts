/**
 * Lines in both directions, and what each step on them costs. A line is priced as a whole when the search first
 * comes to it.
 */
import { inflateBox, type Box } from '#core/geometry';
import { carriedOn, linesFor, type Extent, type Line } from './lines.ts';
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
	/** Whether lines end at the first body they meet, or go on behind it. */
	readonly sparse: boolean;
	/** True lets a route pass through parts, at a price. */
	readonly throughParts: boolean;
	readonly horizontal: readonly Stretch[];
	readonly vertical: readonly Stretch[];
}

export class Grid {
	readonly xs: Float64Array;
	readonly ys: Float64Array;
	readonly #input: GridInput;
	readonly #columns: readonly Line[];
	readonly #rows: readonly Line[];
	readonly #blockedColumns: readonly Extent[];
	readonly #blockedRows: readonly Extent[];
	readonly #alongX: (Float64Array | undefined)[];
	readonly #alongY: (Float64Array | undefined)[];

	constructor(input: GridInput) {
		this.#input = input;
		const { obstacles, window, ends } = input;
		const spacing = (other: number): number => laneSpacingMm(input.widthMm, other);
		const exits = ends.map((end) => end.exit);
		const blocked = obstacles.map((box) => keepOff(box, input));
		this.#blockedColumns = blocked.map(acrossX);
		this.#blockedRows = blocked.map(acrossY);
		this.#columns = linesFor({
			...input,
			spacing,
			ends: exits.map(({ x, y }) => ({ at: x, along: y })),
			bodies: obstacles.map(acrossX),
			window: { from: window.minX, to: window.maxX },
			parallel: input.vertical
		});
		this.#rows = linesFor({
			...input,
			spacing,
			ends: exits.map(({ x, y }) => ({ at: y, along: x })),
			bodies: obstacles.map(acrossY),
			window: { from: window.minY, to: window.maxY },
			parallel: input.horizontal
		});
		this.xs = Float64Array.from(this.#columns, (line) => line.at);
		this.ys = Float64Array.from(this.#rows, (line) => line.at);
		this.#alongX = new Array(this.ys.length);
		this.#alongY = new Array(this.xs.length);
	}

	/** Costs of the steps along horizontal line `row`: entry i is from column i to i + 1; Infinity where there is none. */
	alongX(row: number): Float64Array {
		const { horizontal, vertical } = this.#input;
		return (this.#alongX[row] ??= this.#price(this.#rows[row]!, this.xs, this.#blockedRows, horizontal, vertical));
	}

	/** Costs of the steps along vertical line `column`: entry j is from row j to j + 1. */
	alongY(column: number): Float64Array {
		const { horizontal, vertical } = this.#input;
		return (this.#alongY[column] ??= this.#price(this.#columns[column]!, this.ys, this.#blockedColumns, vertical, horizontal));
	}

	#price(
		{ at: line, spans }: Line,
		stops: Float64Array,
		bodies: readonly Extent[],
		parallel: readonly Stretch[],
		across: readonly Stretch[]
	): Float64Array {
		const { sparse, throughParts, widthMm } = this.#input;
		const blocked = bodies.filter(({ low, high }) => line > low && line < high);
		const costs = new Float64Array(Math.max(0, stops.length - 1)).fill(sparse ? Infinity : 0);
		if (sparse) for (const span of spans) eachStep(stops, carriedOn(span, blocked), (i) => (costs[i] = 0));
		for (let i = 0; i < costs.length; i++) costs[i]! += stops[i + 1]! - stops[i]!;

		for (const body of blocked) {
			eachStep(stops, body, (i, inside) => (costs[i]! += throughParts ? inside * THROUGH_PART_PER_MM : Infinity));
		}
		for (const stretch of parallel) {
			const away = Math.abs(stretch.at - line);
			const onIt = away < SAME_LINE_MM;
			if (!onIt && (!stretch.held || away >= laneSpacingMm(stretch.widthMm, widthMm) - SAME_LINE_MM)) continue;
			const perMm = onIt ? (stretch.held ? BLOCKED_TRACK_PER_MM : SHARED_TRACK_PER_MM) : CLOSE_TRACK_PER_MM;
			eachStep(stops, stretch, (i, shared) => (costs[i]! += shared * perMm));
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

const acrossX = (box: Box): Extent => ({ low: box.minX, high: box.maxX, from: box.minY, to: box.maxY });
const acrossY = (box: Box): Extent => ({ low: box.minY, high: box.maxY, from: box.minX, to: box.maxX });

/** A body and the room around it; no room where an end of this route already stands in it. */
function keepOff(box: Box, { keepOffMm, ends }: GridInput): Box {
	const wide = inflateBox(box, keepOffMm);
	const standsIn = ends.some(({ clear: p }) => p.x > wide.minX && p.x < wide.maxX && p.y > wide.minY && p.y < wide.maxY);
	return standsIn ? box : wide;
}

/** Calls with each step that lies in the span, and the length of it that does. */
function eachStep(stops: Float64Array, { from, to }: { from: number; to: number }, act: (step: number, length: number) => void): void {
	for (let i = stepAt(stops, from); i < stops.length - 1 && stops[i]! < to; i++) {
		const length = Math.min(to, stops[i + 1]!) - Math.max(from, stops[i]!);
		if (length > 0) act(i, length);
	}
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
