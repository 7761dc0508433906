/**
 * A directed graph with capacities, and its maximum flow by Dinic's method. Capacities may be infinite.
 *
 * All searches start at the sink and stop at the source: what limits the current into a conductor is nearly always
 * close to it, so that a flow looks at a few dozen nodes of a graph of thousands.
 */
export interface FlowGraph {
	readonly nodeCount: number;
	/** Arc 2i and its reverse 2i + 1. */
	readonly from: Int32Array;
	readonly to: Int32Array;
	readonly capacity: Float64Array;
	/** Arcs that leave node n: `arcs[first[n]]` up to, not including, `arcs[first[n + 1]]`. */
	readonly arcs: Int32Array;
	readonly first: Int32Array;
	readonly scratch: Scratch;
}

/** Working memory, between flows as it was made: clearing it node by node is cheaper than making it anew. */
interface Scratch {
	/** Capacity left. */
	readonly room: Float64Array;
	/** Arcs whose room has changed. */
	readonly changed: number[];
	/** Steps to the sink, −1 where not known. */
	readonly level: Int32Array;
	/** Next arc to try at each node with a level. */
	readonly next: Int32Array;
}

export interface FlowArc {
	readonly from: number;
	readonly to: number;
	readonly capacity: number;
	/** Capacity the other way; 0 when not given. */
	readonly reverse?: number;
}

export function flowGraph(nodeCount: number, arcs: readonly FlowArc[]): FlowGraph {
	const from = new Int32Array(2 * arcs.length);
	const to = new Int32Array(2 * arcs.length);
	const capacity = new Float64Array(2 * arcs.length);
	const first = new Int32Array(nodeCount + 1);
	arcs.forEach((arc, i) => {
		from[2 * i] = to[2 * i + 1] = arc.from;
		to[2 * i] = from[2 * i + 1] = arc.to;
		capacity[2 * i] = arc.capacity;
		capacity[2 * i + 1] = arc.reverse ?? 0;
		first[arc.from + 1]!++;
		first[arc.to + 1]!++;
	});
	for (let node = 0; node < nodeCount; node++) first[node + 1]! += first[node]!;
	const place = first.slice(0, nodeCount);
	const sorted = new Int32Array(from.length);
	for (let arc = 0; arc < from.length; arc++) sorted[place[from[arc]!]!++] = arc;
	const scratch = {
		room: capacity.slice(),
		changed: [],
		level: new Int32Array(nodeCount).fill(-1),
		next: new Int32Array(nodeCount)
	};
	return { nodeCount, from, to, capacity, arcs: sorted, first, scratch };
}

export interface Flow {
	/** Infinity when a path of infinite capacities exists. */
	readonly value: number;
	/** Arcs of the minimum cut nearest to the sink; empty when the flow is infinite. */
	readonly cut: readonly number[];
	/** Arcs of a shortest infinite path from source to sink; empty when the flow is finite. */
	readonly infinitePath: readonly number[];
}

/** @param without arc pairs (the index of FlowArc) left out */
export function maximumFlow(graph: FlowGraph, source: number, sink: number, without: readonly number[] = []): Flow {
	if (source === sink) return { value: Infinity, cut: [], infinitePath: [] };
	const { room, changed, level } = graph.scratch;
	for (const pair of without) {
		room[2 * pair] = room[2 * pair + 1] = 0;
		changed.push(2 * pair, 2 * pair + 1);
	}

	let reached = search(graph, source, sink, Infinity);
	const infinitePath = level[source]! < 0 ? [] : pathDown(graph, source, sink);
	let value = infinitePath.length > 0 ? Infinity : 0;
	let cut: number[] = [];
	while (value < Infinity) {
		forget(graph, reached);
		reached = search(graph, source, sink, Number.MIN_VALUE);
		if (level[source]! < 0) {
			cut = arcsInto(graph, reached, without);
			break;
		}
		value += blockingFlow(graph, source, sink);
	}

	forget(graph, reached);
	for (const arc of changed) room[arc] = graph.capacity[arc]!;
	changed.length = 0;
	return { value, cut, infinitePath };
}

/** Gives levels outward from the sink, over arcs towards it with at least this room, until the source has one. */
function search({ to, arcs, first, scratch: { room, level, next } }: FlowGraph, source: number, sink: number, least: number): number[] {
	level[sink] = 0;
	next[sink] = first[sink]!;
	const reached = [sink];
	for (const node of reached) {
		for (let i = first[node]!; i < first[node + 1]!; i++) {
			const arc = arcs[i]!;
			const before = to[arc]!;
			if (level[before]! >= 0 || !(room[arc ^ 1]! >= least)) continue;
			level[before] = level[node]! + 1;
			next[before] = first[before]!;
			reached.push(before);
			if (before === source) return reached;
		}
	}
	return reached;
}

function forget({ scratch: { level } }: FlowGraph, reached: readonly number[]): void {
	for (const node of reached) level[node] = -1;
}

/** From the source to the sink over arcs of infinite room, each a level lower. */
function pathDown({ to, arcs, first, scratch: { room, level } }: FlowGraph, source: number, sink: number): number[] {
	const path: number[] = [];
	for (let node = source; node !== sink; node = to[path.at(-1)!]!) {
		for (let i = first[node]!; i < first[node + 1]!; i++) {
			const arc = arcs[i]!;
			if (room[arc] !== Infinity || level[to[arc]!] !== level[node]! - 1) continue;
			path.push(arc);
			break;
		}
	}
	return path;
}

/** Fills the levels depth first, until every way down to the sink has a full arc. Each path has a finite bottleneck. */
function blockingFlow(graph: FlowGraph, source: number, sink: number): number {
	const { from, to, arcs, first } = graph;
	const { room, changed, level, next } = graph.scratch;
	const path: number[] = [];
	let value = 0;
	for (let node = source; ;) {
		if (node === sink) {
			let pushed = Infinity;
			for (const arc of path) pushed = Math.min(pushed, room[arc]!);
			for (const arc of path) {
				room[arc]! -= pushed;
				room[arc ^ 1]! += pushed;
				changed.push(arc, arc ^ 1);
			}
			value += pushed;
			// On from the node before the first arc that is now full.
			path.length = path.findIndex((arc) => room[arc] === 0);
			node = path.length === 0 ? source : to[path.at(-1)!]!;
			continue;
		}
		const end = first[node + 1]!;
		const below = level[node]! - 1;
		while (next[node]! < end && !(room[arcs[next[node]!]!]! > 0 && level[to[arcs[next[node]!]!]!] === below)) next[node]!++;
		if (next[node]! < end) {
			path.push(arcs[next[node]!]!);
			node = to[path.at(-1)!]!;
		} else if (path.length === 0) return value;
		else {
			// A dead end: step back and try the next arc there.
			node = from[path.pop()!]!;
			next[node]!++;
		}
	}
}

/** Full arcs that lead into the part from which the sink can still be reached. */
function arcsInto(
	{ to, capacity, arcs, first, scratch: { level } }: FlowGraph,
	part: readonly number[],
	without: readonly number[]
): number[] {
	const cut: number[] = [];
	for (const node of part) {
		for (let i = first[node]!; i < first[node + 1]!; i++) {
			const into = arcs[i]! ^ 1;
			if (level[to[into ^ 1]!]! < 0 && capacity[into]! > 0 && !without.includes(into >> 1)) cut.push(into);
		}
	}
	return cut.sort((a, b) => a - b);
}
