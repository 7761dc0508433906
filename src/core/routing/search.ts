/** A* over a grid, with the direction of travel in the state, so that bends can be priced. */
import { simplifyOrthogonal, type Point, type Side } from '#core/geometry';
import { CostHeap } from './heap.ts';
import { BEND_MM } from './settings.ts';
import type { Grid } from './grid.ts';

/** Directions are numbered clockwise: north, east, south, west. */
const DIRECTION: Readonly<Record<Side, number>> = { north: 0, east: 1, south: 2, west: 3 };

// Kept between searches: a fresh, cleared array per conductor would cost more than the search.
let best = new Float64Array(0);
let previous = new Int32Array(0);
let stamp = new Int32Array(0);
let round = 0;
const heap = new CostHeap();

/**
 * Cheapest orthogonal path between two points of the grid, or null when there is none.
 *
 * @param leave Direction of travel at the start; turning back is not allowed.
 * @param arrive Direction of travel at the end; null when any will do.
 */
export function cheapestPath(grid: Grid, from: Point, leave: Side | null, to: Point, arrive: Side | null): Point[] | null {
	const { xs, ys } = grid;
	const columns = xs.length;
	reserve(columns * ys.length * 4);
	const goalColumn = xs.indexOf(to.x);
	const goalRow = ys.indexOf(to.y);
	const startNode = ys.indexOf(from.y) * columns + xs.indexOf(from.x);
	const goalNode = goalRow * columns + goalColumn;
	const arriveAt = arrive === null ? -1 : DIRECTION[arrive];

	/** Never more than what is left to pay: the distance, and the bends that no route can do without. */
	const atLeast = (column: number, row: number, direction: number): number => {
		const dx = to.x - xs[column]!;
		const dy = to.y - ys[row]!;
		const wantsX = dx > 0 ? 1 : 3;
		const wantsY = dy > 0 ? 2 : 0;
		let bends = 0;
		if (dx !== 0 && dy !== 0) {
			bends = 1;
			if (direction !== wantsX && direction !== wantsY) bends = 2;
			else if (arriveAt >= 0 && arriveAt !== (direction === wantsX ? wantsY : wantsX)) bends = 2;
		} else if (dx !== 0 || dy !== 0) {
			const wants = dx !== 0 ? wantsX : wantsY;
			if (direction !== wants) bends = 1;
			if (arriveAt >= 0 && arriveAt !== wants) bends += 1;
		} else if (arriveAt >= 0 && direction !== arriveAt) bends = 1;
		return Math.abs(dx) + Math.abs(dy) + bends * BEND_MM;
	};

	heap.clear();
	for (let direction = 0; direction < 4; direction++) {
		if (leave !== null && direction !== DIRECTION[leave]) continue;
		const state = startNode * 4 + direction;
		best[state] = 0;
		previous[state] = -1;
		stamp[state] = round;
		heap.push(state, atLeast(startNode % columns, Math.floor(startNode / columns), direction));
	}

	const done = round + 1;
	while (heap.size > 0) {
		const state = heap.pop();
		if (stamp[state] === done) continue;
		const node = state >> 2;
		const direction = state & 3;
		const spent = best[state]!;
		if (node === goalNode && (arriveAt < 0 || direction === arriveAt)) return trace(state, columns, xs, ys);
		stamp[state] = done;
		const column = node % columns;
		const row = (node - column) / columns;

		// Turning is a step of its own that stays on the node.
		for (const turn of [1, 3]) {
			const next = node * 4 + ((direction + turn) & 3);
			visit(next, state, spent + BEND_MM, column, row, done, atLeast);
		}
		const towards = direction === 0 || direction === 3 ? -1 : 1;
		if (direction & 1) {
			const to = column + towards;
			if (to < 0 || to >= columns) continue;
			const cost = grid.alongX(row)[towards > 0 ? column : to]!;
			if (cost !== Infinity) visit((node + towards) * 4 + direction, state, spent + cost, to, row, done, atLeast);
		} else {
			const to = row + towards;
			if (to < 0 || to >= ys.length) continue;
			const cost = grid.alongY(column)[towards > 0 ? row : to]!;
			if (cost !== Infinity) visit((node + towards * columns) * 4 + direction, state, spent + cost, column, to, done, atLeast);
		}
	}
	return null;
}

function visit(
	state: number,
	from: number,
	cost: number,
	column: number,
	row: number,
	done: number,
	atLeast: (column: number, row: number, direction: number) => number
): void {
	const mark = stamp[state]!;
	if (mark === done || (mark === round && best[state]! <= cost)) return;
	best[state] = cost;
	previous[state] = from;
	stamp[state] = round;
	heap.push(state, cost + atLeast(column, row, state & 3));
}

/** Marks of earlier searches stay behind: each search uses two numbers of its own, for open and done. */
function reserve(states: number): void {
	if (best.length < states) {
		best = new Float64Array(states);
		previous = new Int32Array(states);
		stamp = new Int32Array(states);
		round = 0;
	}
	round += 2;
	if (round > 2 ** 30) {
		stamp.fill(0);
		round = 2;
	}
}

function trace(goal: number, columns: number, xs: Float64Array, ys: Float64Array): Point[] {
	const points: Point[] = [];
	for (let state = goal; state >= 0; state = previous[state]!) {
		const node = state >> 2;
		points.push({ x: xs[node % columns]!, y: ys[Math.floor(node / columns)]! });
	}
	return simplifyOrthogonal(points.reverse());
}
