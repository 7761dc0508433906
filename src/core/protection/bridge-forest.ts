/**
 * A graph as a forest of islands joined by bridges: an island is what stays connected whichever bridge is taken away,
 * nearly always a single point. Nodes joined by unlimited arcs on loops are one point.
 */
import { unionFind } from '#core/network';
import { bridgesOf } from './bridges.ts';
import type { FlowArc } from './flow-graph.ts';

export interface BridgeForest {
	/** 1 by arc. */
	readonly isBridge: Uint8Array;
	/** By node: the node that stands for its point. */
	readonly pointOf: Int32Array;
	/** Bridges from the roots of the trees outward; those at one inner point follow one another. */
	readonly bridges: Int32Array;
	/** Points at their ends: towards the root, and away from it. */
	readonly inner: Int32Array;
	readonly outer: Int32Array;
	/** By arc: its place in `bridges`. */
	readonly placeOf: Int32Array;
	/** By point: the first place in `bridges` of which it is the inner point, and the one of which it is the outer; −1 for none. */
	readonly firstOf: Int32Array;
	readonly upwardOf: Int32Array;
	/** The island of a point, with the arcs between its points; undefined where it has no other point. */
	loopsAt(point: number): Loops | undefined;
}

export interface Loops {
	readonly points: readonly number[];
	readonly loops: readonly number[];
}

export function bridgeForest(nodeCount: number, arcs: readonly FlowArc[]): BridgeForest {
	const isBridge = bridgesOf(nodeCount, arcs);
	const one = unionFind(nodeCount);
	const joined = unionFind(nodeCount);
	arcs.forEach(({ from, to, capacity, reverse }, arc) => {
		if (isBridge[arc]) return;
		joined.union(from, to);
		if (capacity === Infinity && reverse === Infinity) one.union(from, to);
	});
	const pointOf = new Int32Array(nodeCount);
	for (let node = 0; node < nodeCount; node++) pointOf[node] = one.find(node);
	const islands = loopIslands(arcs, isBridge, pointOf, joined.find);
	return { isBridge, pointOf, ...outwards(arcs, isBridge, pointOf, islands), loopsAt: (point) => islands.get(point) };
}

/** By point, islands of more than one. */
function loopIslands(
	arcs: readonly FlowArc[],
	isBridge: Uint8Array,
	pointOf: Int32Array,
	islandOf: (node: number) => number
): Map<number, Loops> {
	const byIsland = new Map<number, { points: number[]; loops: number[] }>();
	const byPoint = new Map<number, Loops>();
	arcs.forEach(({ from, to }, arc) => {
		const ends = [pointOf[from]!, pointOf[to]!];
		if (isBridge[arc] || ends[0] === ends[1]) return;
		let island = byIsland.get(islandOf(from));
		if (!island) byIsland.set(islandOf(from), (island = { points: [], loops: [] }));
		island.loops.push(arc);
		for (const point of ends) {
			if (byPoint.has(point)) continue;
			island.points.push(point);
			byPoint.set(point, island);
		}
	});
	return byPoint;
}

function outwards(
	arcs: readonly FlowArc[],
	isBridge: Uint8Array,
	pointOf: Int32Array,
	islands: ReadonlyMap<number, Loops>
): Omit<BridgeForest, 'isBridge' | 'pointOf' | 'loopsAt'> {
	const nodeCount = pointOf.length;
	const first = new Int32Array(nodeCount + 1);
	let count = 0;
	arcs.forEach(({ from, to }, arc) => {
		if (!isBridge[arc]) return;
		count++;
		first[pointOf[from]! + 1]!++;
		first[pointOf[to]! + 1]!++;
	});
	for (let point = 0; point < nodeCount; point++) first[point + 1]! += first[point]!;
	const place = first.slice(0, nodeCount);
	const at = new Int32Array(2 * count);
	arcs.forEach(({ from, to }, arc) => {
		if (!isBridge[arc]) return;
		at[place[pointOf[from]!]!++] = arc;
		at[place[pointOf[to]!]!++] = arc;
	});

	const [bridges, inner, outer] = [new Int32Array(count), new Int32Array(count), new Int32Array(count)];
	const placeOf = new Int32Array(arcs.length).fill(-1);
	const firstOf = new Int32Array(nodeCount).fill(-1);
	const upwardOf = new Int32Array(nodeCount).fill(-1);
	const seen = new Uint8Array(nodeCount);
	const queue = new Int32Array(nodeCount);
	let found = 0;
	for (let root = 0, next = 0, end = 0; root < nodeCount; root++) {
		const reach = (point: number): void => {
			for (const member of islands.get(point)?.points ?? [point]) {
				seen[member] = 1;
				queue[end++] = member;
			}
		};
		if (pointOf[root] !== root || seen[root]) continue;
		for (reach(root); next < end; next++) {
			const point = queue[next]!;
			for (let i = first[point]!; i < first[point + 1]!; i++) {
				const bridge = at[i]!;
				const { from, to } = arcs[bridge]!;
				const other = pointOf[from] === point ? pointOf[to]! : pointOf[from]!;
				if (seen[other]) continue;
				placeOf[bridge] = found;
				bridges[found] = bridge;
				if (firstOf[point]! < 0) firstOf[point] = found;
				upwardOf[other] = found;
				inner[found] = point;
				outer[found++] = other;
				reach(other);
			}
		}
	}
	return { bridges, inner, outer, placeOf, firstOf, upwardOf };
}
