/**
 * A long conductor is first sketched on coarse cells, by the conductors it would cross and the bodies it would meet
 * in each. Its route is then looked for in the corridor of the sketch, which is a small part of the whole.
 */
import { boxesIntersect, type Box } from '#core/geometry';
import { CELL_MM, cellOf } from './crowding.ts';
import { CostHeap } from './heap.ts';
import { BEND_MM, CROSSING_MM } from './settings.ts';
import type { Stub } from './stub.ts';
import type { Tracks } from './tracks.ts';

/** Cells beyond the two ends that the sketch may use. */
const MARGIN_CELLS = 1;

/** No real drawing is so large. */
const MOST_CELLS = 100_000;

/** How far the corridor reaches beyond the sketch's cells. */
const BESIDE_MM = CELL_MM / 2;

/** Reckons what is left as so much dearer than an empty drawing: nearly always true, and the search is far shorter. */
const HASTE = 1.25;

const heap = new CostHeap();

export interface Sketch {
	/** From end to end, one for each straight part. */
	readonly corridor: readonly Box[];
	/** What a millimetre of the way is likely to cost, crossings included. */
	readonly perMm: number;
}

/** Null where the ends are so far apart that there would be too many cells. */
export function sketchOf(from: Stub, to: Stub, bodies: readonly Box[], tracks: Tracks | null): Sketch | null {
	const left = Math.min(cellOf(from.exit.x), cellOf(to.exit.x)) - MARGIN_CELLS;
	const top = Math.min(cellOf(from.exit.y), cellOf(to.exit.y)) - MARGIN_CELLS;
	const columns = Math.max(cellOf(from.exit.x), cellOf(to.exit.x)) + MARGIN_CELLS - left + 1;
	const rows = Math.max(cellOf(from.exit.y), cellOf(to.exit.y)) + MARGIN_CELLS - top + 1;
	if (columns * rows > MOST_CELLS) return null;
	const { level, upright } = pricesOf({ left, top, columns, rows }, bodies, tracks);

	const start = (cellOf(from.exit.y) - top) * columns + cellOf(from.exit.x) - left;
	const goal = (cellOf(to.exit.y) - top) * columns + cellOf(to.exit.x) - left;
	const goalColumn = goal % columns;
	const goalRow = (goal - goalColumn) / columns;
	// Two states for each cell: come by level, come upright.
	const best = new Float64Array(columns * rows * 2).fill(Infinity);
	const previous = new Int32Array(columns * rows * 2).fill(-1);
	const done = new Uint8Array(columns * rows * 2);
	const visit = (cell: number, column: number, row: number, turned: number, cost: number, before: number): void => {
		const state = cell * 2 + turned;
		if (cost >= best[state]!) return;
		best[state] = cost;
		previous[state] = before;
		heap.push(state, cost + HASTE * CELL_MM * (Math.abs(goalColumn - column) + Math.abs(goalRow - row)));
	};
	heap.clear();
	visit(start, start % columns, Math.floor(start / columns), 0, 0, -1);
	visit(start, start % columns, Math.floor(start / columns), 1, 0, -1);
	while (heap.size > 0) {
		const state = heap.pop();
		if (done[state]) continue;
		done[state] = 1;
		const cell = state >> 1;
		if (cell === goal) {
			const cells = cellsTo(state, previous);
			return { corridor: boxesAlong(cells, { left, top, columns }), perMm: Math.max(1, (0.85 * best[state]!) / (CELL_MM * cells.length)) };
		}
		const column = cell % columns;
		const row = (cell - column) / columns;
		const spent = best[state]!;
		const onLevel = spent + ((state & 1) === 0 ? 0 : BEND_MM);
		const onUpright = spent + ((state & 1) === 1 ? 0 : BEND_MM);
		if (column > 0) visit(cell - 1, column - 1, row, 0, onLevel + (level[cell]! + level[cell - 1]!) / 2, state);
		if (column < columns - 1) visit(cell + 1, column + 1, row, 0, onLevel + (level[cell]! + level[cell + 1]!) / 2, state);
		if (row > 0) visit(cell - columns, column, row - 1, 1, onUpright + (upright[cell]! + upright[cell - columns]!) / 2, state);
		if (row < rows - 1) visit(cell + columns, column, row + 1, 1, onUpright + (upright[cell]! + upright[cell + columns]!) / 2, state);
	}
	throw new Error('Cells are joined to each other; the goal is always found.');
}

interface Cells {
	readonly left: number;
	readonly top: number;
	readonly columns: number;
	readonly rows: number;
}

/** Price of going straight across each cell, level and upright. */
function pricesOf({ left, top, columns, rows }: Cells, bodies: readonly Box[], tracks: Tracks | null) {
	const covered = new Float64Array(columns * rows);
	const window = { minX: left * CELL_MM, minY: top * CELL_MM, maxX: (left + columns) * CELL_MM, maxY: (top + rows) * CELL_MM };
	for (const body of bodies) {
		if (!boxesIntersect(body, window)) continue;
		for (let row = Math.max(0, cellOf(body.minY) - top); row < rows && (row + top) * CELL_MM < body.maxY; row++) {
			const high = Math.min(body.maxY, (row + top + 1) * CELL_MM) - Math.max(body.minY, (row + top) * CELL_MM);
			for (let column = Math.max(0, cellOf(body.minX) - left); column < columns && (column + left) * CELL_MM < body.maxX; column++) {
				const wide = Math.min(body.maxX, (column + left + 1) * CELL_MM) - Math.max(body.minX, (column + left) * CELL_MM);
				covered[row * columns + column]! += (high * wide) / CELL_MM ** 2;
			}
		}
	}
	const level = new Float64Array(columns * rows);
	const upright = new Float64Array(columns * rows);
	for (let row = 0; row < rows; row++) {
		for (let column = 0; column < columns; column++) {
			const cell = row * columns + column;
			const share = Math.min(1, covered[cell]!);
			// Hardly dearer where there is a body beside the way; twenty times where it fills the cell.
			const walked = CELL_MM * (1 + share / (1.05 - share));
			level[cell] = walked + CROSSING_MM * (tracks?.crowdOfUpright.metIn(column + left, row + top) ?? 0);
			upright[cell] = walked + CROSSING_MM * (tracks?.crowdOfLevel.metIn(row + top, column + left) ?? 0);
		}
	}
	return { level, upright };
}

function cellsTo(state: number, previous: Int32Array): number[] {
	const cells: number[] = [];
	for (let at = state; at >= 0; at = previous[at]!) cells.push(at >> 1);
	return cells.reverse();
}

function boxesAlong(cells: readonly number[], { left, top, columns }: Omit<Cells, 'rows'>): Box[] {
	const boxes: Box[] = [];
	let from = 0;
	for (let i = 1; i <= cells.length; i++) {
		const goesOn = i < cells.length && (i - from < 2 || cells[i]! - cells[i - 1]! === cells[from + 1]! - cells[from]!);
		if (goesOn) continue;
		const ends = [cells[from]!, cells[i - 1]!].map((cell) => ({ x: (cell % columns) + left, y: Math.floor(cell / columns) + top }));
		boxes.push({
			minX: Math.min(ends[0]!.x, ends[1]!.x) * CELL_MM - BESIDE_MM,
			minY: Math.min(ends[0]!.y, ends[1]!.y) * CELL_MM - BESIDE_MM,
			maxX: (Math.max(ends[0]!.x, ends[1]!.x) + 1) * CELL_MM + BESIDE_MM,
			maxY: (Math.max(ends[0]!.y, ends[1]!.y) + 1) * CELL_MM + BESIDE_MM
		});
		if (i === cells.length) break;
		// The corner cell belongs to both.
		from = i - 1;
	}
	return boxes;
}
