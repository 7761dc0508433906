/**
 * Maximum flow from all supplies at once to every node, and to both ends of every bridge with the bridge taken away,
 * in two passes over the graph's tree of bridges. What is on loops is worked out loop by loop, with what the
 * rest of the tree can bring as supplies; unlimited arcs on loops are taken as one point.
 *
 * Wiring is nearly a tree, so this costs little more than looking at each arc; one flow for each would cost the square.
 */
import { unionFind } from '#core/network';
import { bridgesOf } from './bridges.ts';
import { flowGraph, maximumFlow, type FlowArc } from './flow-graph.ts';

export interface TreeFlow {
	/** Greatest flow into a node. */
	into(node: number): number;
	/** Greatest flow into one end of an arc without the arc itself; null when the arc is on a loop. */
	intoEnd(arc: number, end: 'from' | 'to'): number | null;
}

/** What comes into a point over one bridge, or from its own supply (bridge −1). */
interface Inflow {
	readonly bridge: number;
	amount: number;
}

/** Points on common loops: what stays connected whichever bridge is taken away. */
interface Island {
	readonly points: number[];
	/** Arcs between its points. */
	readonly loops: number[];
	readonly bridges: number[];
	/** Bridge towards the root, −1 at the root. */
	upward: number;
}

/** @param supplies greatest flow that each node can supply by itself */
export function treeFlow(nodeCount: number, arcs: readonly FlowArc[], supplies: Float64Array): TreeFlow {
	const isBridge = bridgesOf(nodeCount, arcs);
	const one = unionFind(nodeCount);
	const joined = unionFind(nodeCount);
	arcs.forEach(({ from, to, capacity, reverse }, arc) => {
		if (isBridge[arc]) return;
		joined.union(from, to);
		if (capacity === Infinity && reverse === Infinity) one.union(from, to);
	});
	const islands = islandsOf(nodeCount, arcs, isBridge, one.find, joined.find);
	const inflows: Inflow[][] = Array.from({ length: nodeCount }, () => []);
	for (let node = 0; node < nodeCount; node++) {
		if (supplies[node]! > 0) inflows[one.find(node)]!.push({ bridge: -1, amount: supplies[node]! });
	}

	const loopFlows = new Map<number, number>();
	/** Into a point from the other points of its island. */
	const overLoops = (point: number): number => {
		const island = islands.get(joined.find(point))!;
		if (island.points.length === 1) return 0;
		if (!loopFlows.has(point)) loopFlows.set(point, flowOverLoops(island, arcs, one.find, inflows, point));
		return loopFlows.get(point)!;
	};
	const atFrom = new Float64Array(arcs.length);
	const atTo = new Float64Array(arcs.length);
	/** Records what comes to a bridge's end from behind, and brings it to the point at its other end. */
	const cross = (bridge: number, near: number, amount: number): void => {
		const { from, to, capacity, reverse = 0 } = arcs[bridge]!;
		const isFrom = one.find(from) === near;
		(isFrom ? atFrom : atTo)[bridge] = amount;
		inflows[one.find(isFrom ? to : from)]!.push({ bridge, amount: Math.min(amount, isFrom ? capacity : reverse) });
	};
	const endIn = (bridge: number, island: number): number =>
		one.find(joined.find(arcs[bridge]!.from) === island ? arcs[bridge]!.from : arcs[bridge]!.to);

	const outward = fromRoots(islands, arcs, joined.find);
	for (const key of [...outward].reverse()) {
		const { upward } = islands.get(key)!;
		if (upward < 0) continue;
		const near = endIn(upward, key);
		cross(upward, near, sum(inflows[near]!) + overLoops(near));
	}
	for (const key of outward) {
		const { bridges, upward } = islands.get(key)!;
		const downward = new Map<number, number[]>();
		for (const bridge of bridges) {
			if (bridge === upward) continue;
			const near = endIn(bridge, key);
			downward.set(near, [...(downward.get(near) ?? []), bridge]);
		}
		for (const [near, over] of downward) {
			const without = sumsWithoutEach(inflows[near]!);
			for (const bridge of over) cross(bridge, near, without.get(bridge)! + overLoops(near));
		}
	}

	return {
		into: (node) => sum(inflows[one.find(node)]!) + overLoops(one.find(node)),
		intoEnd: (arc, end) => (isBridge[arc] ? (end === 'from' ? atFrom : atTo)[arc]! : null)
	};
}

function islandsOf(
	nodeCount: number,
	arcs: readonly FlowArc[],
	isBridge: Uint8Array,
	pointOf: (node: number) => number,
	islandOf: (node: number) => number
): Map<number, Island> {
	const islands = new Map<number, Island>();
	for (let node = 0; node < nodeCount; node++) {
		if (islandOf(node) === node) islands.set(node, { points: [], loops: [], bridges: [], upward: -1 });
	}
	for (let node = 0; node < nodeCount; node++) if (pointOf(node) === node) islands.get(islandOf(node))!.points.push(node);
	arcs.forEach(({ from, to }, arc) => {
		if (isBridge[arc]) {
			islands.get(islandOf(from))!.bridges.push(arc);
			islands.get(islandOf(to))!.bridges.push(arc);
		} else if (pointOf(from) !== pointOf(to)) islands.get(islandOf(from))!.loops.push(arc);
	});
	return islands;
}

/** Islands from the roots of their trees outward; notes for each the bridge it was reached by. */
function fromRoots(islands: ReadonlyMap<number, Island>, arcs: readonly FlowArc[], islandOf: (node: number) => number): number[] {
	const seen = new Set<number>();
	const order: number[] = [];
	for (const root of islands.keys()) {
		if (seen.has(root)) continue;
		seen.add(root);
		let next = order.push(root) - 1;
		for (; next < order.length; next++) {
			for (const bridge of islands.get(order[next]!)!.bridges) {
				const { from, to } = arcs[bridge]!;
				const other = islandOf(from) === order[next] ? islandOf(to) : islandOf(from);
				if (seen.has(other)) continue;
				seen.add(other);
				islands.get(other)!.upward = bridge;
				order.push(other);
			}
		}
	}
	return order;
}

function flowOverLoops(
	{ points, loops }: Island,
	arcs: readonly FlowArc[],
	pointOf: (node: number) => number,
	inflows: readonly (readonly Inflow[])[],
	sink: number
): number {
	const number = new Map(points.map((point, i) => [point, i]));
	const source = points.length;
	const inner = loops.map((arc) => {
		const { from, to, ...capacities } = arcs[arc]!;
		return { ...capacities, from: number.get(pointOf(from))!, to: number.get(pointOf(to))! };
	});
	const brought = points.flatMap((point, i) => {
		const capacity = point === sink ? 0 : sum(inflows[point]!);
		return capacity > 0 ? [{ from: source, to: i, capacity }] : [];
	});
	return maximumFlow(flowGraph(points.length + 1, [...inner, ...brought]), source, number.get(sink)!).value;
}

const sum = (inflows: readonly Inflow[]): number => inflows.reduce((total, { amount }) => total + amount, 0);

/** By bridge, the sum of all others. Added up from both ends: taking away would not do for infinite amounts. */
function sumsWithoutEach(inflows: readonly Inflow[]): Map<number, number> {
	const after = new Float64Array(inflows.length + 1);
	for (let i = inflows.length - 1; i >= 0; i--) after[i] = after[i + 1]! + inflows[i]!.amount;
	const sums = new Map<number, number>();
	let before = 0;
	inflows.forEach(({ bridge, amount }, i) => {
		sums.set(bridge, before + after[i + 1]!);
		before += amount;
	});
	return sums;
}
