/** A directed graph with capacities, and its maximum flow by Dinic's method. Capacities may be infinite. */
export interface FlowGraph {
	readonly nodeCount: number;
	/** Arc 2i and its reverse 2i + 1. */
	readonly from: Int32Array;
	readonly to: Int32Array;
	readonly capacity: Float64Array;
	readonly arcsAt: readonly (readonly number[])[];
}

export interface FlowArc {
	readonly from: number;
	readonly to: number;
	readonly capacity: number;
	/** Capacity the other way; 0 when not given. */
	readonly reverse?: number;
}

export function flowGraph(nodeCount: number, arcs: readonly FlowArc[]): FlowGraph {
	const arcsAt: number[][] = Array.from({ length: nodeCount }, () => []);
	const graph = {
		nodeCount,
		from: new Int32Array(2 * arcs.length),
		to: new Int32Array(2 * arcs.length),
		capacity: new Float64Array(2 * arcs.length),
		arcsAt
	};
	arcs.forEach(({ from, to, capacity, reverse = 0 }, i) => {
		for (const [arc, a, b, c] of [
			[2 * i, from, to, capacity],
			[2 * i + 1, to, from, reverse]
		] as const) {
			graph.from[arc] = a;
			graph.to[arc] = b;
			graph.capacity[arc] = c;
			arcsAt[a]!.push(arc);
		}
	});
	return graph;
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
	const room = graph.capacity.slice();
	for (const pair of without) room[2 * pair] = room[2 * pair + 1] = 0;

	const infinitePath = shortestPath(graph, source, sink, (arc) => room[arc] === Infinity);
	if (infinitePath) return { value: Infinity, cut: [], infinitePath };

	let value = 0;
	for (;;) {
		const level = levels(graph, source, (arc) => room[arc]! > 0);
		if (level[sink]! < 0) break;
		value += blockingFlow(graph, room, level, source, sink);
	}
	return { value, cut: cutAtSink(graph, room, sink, without), infinitePath: [] };
}

/** Fills the level graph depth first, until every way to the sink has a full arc. Each path has a finite bottleneck. */
function blockingFlow(graph: FlowGraph, room: Float64Array, level: Int32Array, source: number, sink: number): number {
	const next = new Int32Array(graph.nodeCount);
	const path: number[] = [];
	let value = 0;
	for (let node = source; ;) {
		if (node === sink) {
			const pushed = path.reduce((least, arc) => Math.min(least, room[arc]!), Infinity);
			for (const arc of path) {
				room[arc]! -= pushed;
				room[arc ^ 1]! += pushed;
			}
			value += pushed;
			// On from the node before the first arc that is now full.
			path.length = path.findIndex((arc) => room[arc] === 0);
			node = path.length === 0 ? source : graph.to[path.at(-1)!]!;
			continue;
		}
		const arcs = graph.arcsAt[node]!;
		while (next[node]! < arcs.length && !(room[arcs[next[node]!]!]! > 0 && level[graph.to[arcs[next[node]!]!]!] === level[node]! + 1))
			next[node]!++;
		if (next[node]! < arcs.length) {
			path.push(arcs[next[node]!]!);
			node = graph.to[path.at(-1)!]!;
		} else if (path.length === 0) return value;
		else {
			// A dead end: step back and try the next arc there.
			node = graph.from[path.pop()!]!;
			next[node]!++;
		}
	}
}

/** Steps from the start to each node over the arcs that may be used; −1 where there is no way. */
function levels(graph: FlowGraph, start: number, usable: (arc: number) => boolean): Int32Array {
	const level = new Int32Array(graph.nodeCount).fill(-1);
	level[start] = 0;
	const queue = [start];
	for (const node of queue) {
		for (const arc of graph.arcsAt[node]!) {
			const to = graph.to[arc]!;
			if (level[to]! >= 0 || !usable(arc)) continue;
			level[to] = level[node]! + 1;
			queue.push(to);
		}
	}
	return level;
}

function shortestPath(graph: FlowGraph, start: number, end: number, usable: (arc: number) => boolean): number[] | null {
	const arrivedBy = new Int32Array(graph.nodeCount).fill(-1);
	const queue = [start];
	for (const node of queue) {
		if (node === end) break;
		for (const arc of graph.arcsAt[node]!) {
			const to = graph.to[arc]!;
			if (to === start || arrivedBy[to]! >= 0 || !usable(arc)) continue;
			arrivedBy[to] = arc;
			queue.push(to);
		}
	}
	if (arrivedBy[end]! < 0) return null;
	const path: number[] = [];
	for (let node = end; node !== start; node = graph.from[path[0]!]!) path.unshift(arrivedBy[node]!);
	return path;
}

/** Full arcs that lead into the part from which the sink can still be reached. */
function cutAtSink(graph: FlowGraph, room: Float64Array, sink: number, without: readonly number[]): number[] {
	const reaches = levels(graph, sink, (arc) => room[arc ^ 1]! > 0);
	const cut: number[] = [];
	for (let arc = 0; arc < graph.capacity.length; arc++) {
		if (graph.capacity[arc] === 0 || without.includes(arc >> 1)) continue;
		if (reaches[graph.from[arc]!]! < 0 && reaches[graph.to[arc]!]! >= 0) cut.push(arc);
	}
	return cut;
}
