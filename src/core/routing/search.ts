/** A* over a grid, with the direction of travel in the state, so that bends can be priced. */
import { isHorizontal, simplifyOrthogonal, type Point, type Side } from '#core/geometry';
import { CostHeap } from './heap.ts';
import { BEND_MM } from './settings.ts';
import type { Grid } from './grid.ts';
import type { Stub } from './stub.ts';

/** Directions are numbered clockwise: north, east, south, west. */
const DIRECTION: Readonly<Record<Side, number>> = { north: 0, east: 1, south: 2, west: 3 };

// Kept between searches: a fresh, cleared array per conductor would cost more than the search.
let best = new Float64Array(0);
let previous = new Int32Array(0);
let stamp = new Int32Array(0);
let round = 0;
const heap = new CostHeap();

/** Places looked at before a long search through a crowded drawing is begun again with less patience. */
const PATIENCE = 3000;

/** How much dearer the rest of the way is reckoned then: the search goes more straight at its goal. */
const HASTE = 2;

/**
 * Cheapest orthogonal path between two stubs (for very long ones: a fairly cheap one), or null when there is none.
 * It starts and ends on the first line that crosses the stub beyond its body, and turns there at the earliest.
 *
 * @param perMm What a millimetre of the way is likely to cost; 1 when nothing is known. More makes the search shorter.
 */
export function cheapestPath(grid: Grid, from: Stub, to: Stub, perMm = 1): Point[] | null {
	const path = search(grid, from, to, { perMm, perBend: BEND_MM }, PATIENCE);
	if (path !== 'tired') return path;
	return search(grid, from, to, { perMm: perMm * HASTE, perBend: BEND_MM * HASTE }, Infinity) as Point[] | null;
}

interface Reckoning {
	readonly perMm: number;
	readonly perBend: number;
}

function search(grid: Grid, from: Stub, to: Stub, { perMm, perBend }: Reckoning, patience: number): Point[] | null | 'tired' {
	const { xs, ys } = grid;
	const columns = xs.length;
	const rows = ys.length;
	reserve(columns * rows * 4);
	const startNode = firstNode(grid, from);
	const goalNode = firstNode(grid, to);
	const goalX = xs[goalNode % columns]!;
	const goalY = ys[Math.floor(goalNode / columns)]!;
	const arrive = (DIRECTION[to.side] + 2) & 3;
	const open = round;
	const done = round + 1;
	const visit = (node: number, direction: number, column: number, row: number, cost: number, before: number): void => {
		const state = node * 4 + direction;
		const mark = stamp[state]!;
		if (mark === done || (mark === open && best[state]! <= cost)) return;
		best[state] = cost;
		previous[state] = before;
		stamp[state] = open;
		const dx = goalX - xs[column]!;
		const dy = goalY - ys[row]!;
		// What is left to pay: the distance, and the bends that no route can do without.
		heap.push(state, cost + perMm * (Math.abs(dx) + Math.abs(dy)) + perBend * leastBends(dx, dy, direction, arrive));
	};

	let seen = 0;
	heap.clear();
	visit(startNode, DIRECTION[from.side], startNode % columns, Math.floor(startNode / columns), 0, -1);
	while (heap.size > 0) {
		const state = heap.pop();
		if (stamp[state] === done) continue;
		stamp[state] = done;
		if (++seen > patience) return 'tired';
		const node = state >> 2;
		const direction = state & 3;
		const spent = best[state]!;
		const column = node % columns;
		const row = (node - column) / columns;
		if (node === goalNode) {
			if (direction === arrive) return trace(state, columns, xs, ys);
			if (direction !== ((arrive + 2) & 3)) visit(node, arrive, column, row, spent + BEND_MM, state);
		}
		// Straight on, then to both sides. A turn is always followed by a step, so that no route turns on the spot.
		for (const turn of TURNS) {
			const heading = (direction + turn) & 3;
			const sense = heading === 1 || heading === 2 ? 1 : -1;
			const level = (heading & 1) === 1;
			const first = level ? column : row;
			if (!canLeave(level ? grid.openX(row) : grid.openY(column), first, sense)) continue;
			const steps = level ? grid.alongX(row) : grid.alongY(column);
			const place = level ? row : column;
			let cost = spent + (turn === 0 ? 0 : BEND_MM);
			// Places where no other line leads off are run over in one go.
			for (let at = first; canLeave(steps, at, sense);) {
				const next = at + sense;
				cost += steps[sense > 0 ? at : next]!;
				at = next;
				const there = level ? row * columns + at : at * columns + column;
				if (there !== goalNode && !leadsOff(level ? grid.openY(at) : grid.openX(at), place)) continue;
				visit(there, heading, level ? at : column, level ? row : at, cost, state);
				break;
			}
		}
	}
	return null;
}

/** Straight, right, left. */
const TURNS = [0, 1, 3] as const;

/** Whether a line goes on from this place in this sense. */
const canLeave = (steps: Float64Array, place: number, sense: 1 | -1): boolean =>
	sense > 0 ? place < steps.length && steps[place] !== Infinity : place > 0 && steps[place - 1] !== Infinity;

/** Whether a line has a step to either side of this place. */
const leadsOff = (steps: Float64Array, place: number): boolean =>
	(place > 0 && steps[place - 1] !== Infinity) || (place < steps.length && steps[place] !== Infinity);

/** Bends that even an empty drawing would need. */
function leastBends(dx: number, dy: number, direction: number, arrive: number): number {
	const wantsX = dx > 0 ? 1 : 3;
	const wantsY = dy > 0 ? 2 : 0;
	if (dx !== 0 && dy !== 0) {
		if (direction !== wantsX && direction !== wantsY) return 2;
		return arrive === (direction === wantsX ? wantsY : wantsX) ? 1 : 2;
	}
	if (dx === 0 && dy === 0) return direction === arrive ? 0 : 1;
	const wants = dx !== 0 ? wantsX : wantsY;
	return (direction === wants ? 0 : 1) + (arrive === wants ? 0 : 1);
}

/** The node where the stub first meets a line that is clear of its body. */
function firstNode({ xs, ys }: Grid, { side, clear, exit }: Stub): number {
	const columns = xs.length;
	if (isHorizontal(side)) {
		const row = ys.indexOf(exit.y);
		const column = side === 'east' ? xs.findIndex((x) => x >= clear.x) : xs.findLastIndex((x) => x <= clear.x);
		return row * columns + column;
	}
	const column = xs.indexOf(exit.x);
	const row = side === 'south' ? ys.findIndex((y) => y >= clear.y) : ys.findLastIndex((y) => y <= clear.y);
	return row * columns + column;
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
