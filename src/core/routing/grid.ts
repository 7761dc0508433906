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
	CROWDED_PER_MM,
	ROOM_BESIDE,
	SAME_LINE_MM,
	SHARED_TRACK_PER_MM,
	THROUGH_PART_PER_MM,
	laneSpacingMm
} from './settings.ts';
import type { Stub } from './stub.ts';
import type { Stretch, StretchBins } from './stretch-bins.ts';
import { NEAR_MM, type Tracks } from './tracks.ts';

export interface GridInput {
	/** All bodies that may be in the way. */
	readonly obstacles: readonly Box[];
	/** Those among them that get lines around them. */
	readonly landmarks: readonly Box[];
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
	/** Whether to keep away from where many run already, because it is not known how much room there is. */
	readonly spread: boolean;
	/** Where the bodies' lines are drawn; lines of the ends go everywhere. */
	readonly corridor: readonly Box[];
	/** Conductors already routed; null to ignore them. */
	readonly tracks: Tracks | null;
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
	readonly #pricedX: Uint8Array;
	readonly #pricedY: Uint8Array;

	constructor(input: GridInput) {
		this.#input = input;
		const { obstacles, landmarks, window, ends, tracks, corridor } = input;
		const spacing = (other: number): number => laneSpacingMm(input.widthMm, other);
		const exits = ends.map((end) => end.exit);
		const blocked = obstacles.map((box) => keepOff(box, input));
		this.#blockedColumns = blocked.map(acrossX);
		this.#blockedRows = blocked.map(acrossY);
		this.#columns = linesFor({
			...input,
			spacing,
			ends: exits.map(({ x, y }) => ({ at: x, along: y })),
			bodies: landmarks.map(acrossX),
			window: { from: window.minX, to: window.maxX },
			parallel: tracks ? heldIn(corridor, (box) => tracks.vertical.search(box.minX, box.maxX, box.minY, box.maxY)) : []
		});
		this.#rows = linesFor({
			...input,
			spacing,
			ends: exits.map(({ x, y }) => ({ at: y, along: x })),
			bodies: landmarks.map(acrossY),
			window: { from: window.minY, to: window.maxY },
			parallel: tracks ? heldIn(corridor, (box) => tracks.horizontal.search(box.minY, box.maxY, box.minX, box.maxX)) : []
		});
		this.xs = Float64Array.from(this.#columns, (line) => line.at);
		this.ys = Float64Array.from(this.#rows, (line) => line.at);
		this.#alongX = new Array(this.ys.length);
		this.#alongY = new Array(this.xs.length);
		this.#pricedX = new Uint8Array(this.ys.length);
		this.#pricedY = new Uint8Array(this.xs.length);
	}

	/** Costs of the steps along horizontal line `row`: entry i is from column i to i + 1; Infinity where there is none. */
	alongX(row: number): Float64Array {
		const costs = this.openX(row);
		if (this.#pricedX[row] === 0) {
			this.#pricedX[row] = 1;
			const { tracks } = this.#input;
			if (tracks) this.#addTracks(costs, this.ys[row]!, this.xs, tracks.horizontal, tracks.vertical);
		}
		return costs;
	}

	/** Costs of the steps along vertical line `column`: entry j is from row j to j + 1. */
	alongY(column: number): Float64Array {
		const costs = this.openY(column);
		if (this.#pricedY[column] === 0) {
			this.#pricedY[column] = 1;
			const { tracks } = this.#input;
			if (tracks) this.#addTracks(costs, this.xs[column]!, this.ys, tracks.vertical, tracks.horizontal);
		}
		return costs;
	}

	/** Where there are steps along horizontal line `row`: finite there, though not yet what they cost. */
	openX(row: number): Float64Array {
		return (this.#alongX[row] ??= this.#walk(this.#rows[row]!, this.xs, this.#blockedRows));
	}

	openY(column: number): Float64Array {
		return (this.#alongY[column] ??= this.#walk(this.#columns[column]!, this.ys, this.#blockedColumns));
	}

	/** What the steps along a line cost without other conductors. */
	#walk({ at: line, spans }: Line, stops: Float64Array, bodies: readonly Extent[]): Float64Array {
		const { sparse, throughParts } = this.#input;
		const blocked = bodies.filter(({ low, high }) => line > low && line < high);
		const costs = new Float64Array(Math.max(0, stops.length - 1)).fill(sparse ? Infinity : 0);
		if (sparse) for (const span of spans) eachStep(stops, carriedOn(span, blocked), (i) => (costs[i] = 0));
		for (let i = 0; i < costs.length; i++) costs[i]! += stops[i + 1]! - stops[i]!;
		for (const body of blocked) {
			eachStep(stops, body, (i, inside) => (costs[i]! += throughParts ? inside * THROUGH_PART_PER_MM : Infinity));
		}
		return costs;
	}

	#addTracks(costs: Float64Array, line: number, stops: Float64Array, parallel: StretchBins, across: StretchBins): void {
		// Only what lies beside steps that can be taken matters.
		let first = 0;
		let last = costs.length;
		while (first < last && costs[first] === Infinity) first++;
		while (last > first && costs[last - 1] === Infinity) last--;
		if (first === last) return;
		const from = stops[first]!;
		const to = stops[last]!;
		const { widthMm } = this.#input;
		const beside = new Uint8Array(this.#input.spread ? costs.length : 0);
		for (const stretch of parallel.search(line - NEAR_MM, line + NEAR_MM, from, to)) {
			const away = Math.abs(stretch.at - line);
			const onIt = away < SAME_LINE_MM;
			if (this.#input.spread) {
				eachStep(stops, stretch, (i, shared) => {
					if (beside[i]!++ >= ROOM_BESIDE) costs[i]! += shared * CROWDED_PER_MM;
				});
			}
			if (!onIt && (!stretch.held || away >= laneSpacingMm(stretch.widthMm, widthMm) - SAME_LINE_MM)) continue;
			const perMm = onIt ? (stretch.held ? BLOCKED_TRACK_PER_MM : SHARED_TRACK_PER_MM) : CLOSE_TRACK_PER_MM;
			eachStep(stops, stretch, (i, shared) => (costs[i]! += shared * perMm));
		}
		for (const { at, from: start, to: end } of across.search(from, to, line, line)) {
			if (line <= start || line >= end) continue;
			const i = stepAt(stops, at);
			// A crossing on a stop is shared by the steps on both sides, so that turning there costs half.
			if (stops[i] === at) {
				if (i > 0) costs[i - 1]! += CROSSING_MM / 2;
				if (i < costs.length) costs[i]! += CROSSING_MM / 2;
			} else if (i < costs.length && stops[i]! < at) costs[i]! += CROSSING_MM;
		}
	}
}

/** Held stretches in the boxes, each once. */
function heldIn(boxes: readonly Box[], search: (box: Box) => readonly Stretch[]): Stretch[] {
	const held = new Set<Stretch>();
	for (const box of boxes) for (const stretch of search(box)) if (stretch.held) held.add(stretch);
	return [...held];
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
