/**
 * Maximum flow from all supplies at once to every node, and to both ends of every bridge with the bridge taken away,
 * in two passes over the graph's tree of bridges. What is on loops is worked out loop by loop, with what the
 * rest of the tree can bring as supplies; unlimited arcs on loops are taken as one point.
 *
 * Wiring is nearly a tree, so this costs little more than looking at each arc; one flow for each would cost the square.
 */
import { bridgeForest, type BridgeForest } from './bridge-forest.ts';
import { flowGraph, maximumFlow, type FlowArc } from './flow-graph.ts';

export interface TreeFlow {
	/** Greatest flow into a node. */
	into(node: number): number;
	/** Greatest flow into one end of an arc without the arc itself; null when the arc is on a loop. */
	intoEnd(arc: number, end: 'from' | 'to'): number | null;
	/** What limits `into`, nearest to the node; null when loops take part, or when nothing limits it. */
	limitsInto(node: number): Limits | null;
	/** What limits `intoEnd`. */
	limitsIntoEnd(arc: number, end: 'from' | 'to'): Limits | null;
}

/** A minimum cut: full arcs, and nodes whose supplies are spent. */
export interface Limits {
	readonly arcs: readonly number[];
	isSpent(node: number): boolean;
}

export interface FlowTree {
	/**
	 * @param supplies greatest flow that each node can supply by itself
	 * @param against true to follow the arcs backwards: what can flow out of a node, with sinks for supplies
	 */
	flow(supplies: Float64Array, against?: boolean): TreeFlow;
}

/** The part that depends on the arcs alone. */
export function flowTree(nodeCount: number, arcs: readonly FlowArc[]): FlowTree {
	const forest = bridgeForest(nodeCount, arcs);
	return { flow: (supplies, against = false) => passes(forest, arcs, supplies, against) };
}

function passes(forest: BridgeForest, arcs: readonly FlowArc[], supplies: Float64Array, against: boolean): TreeFlow {
	const { isBridge, pointOf, bridges, inner, outer } = forest;
	const nodeCount = pointOf.length;
	const capacityFrom = (arc: number, point: number): number => {
		const { from, capacity, reverse = 0 } = arcs[arc]!;
		return (pointOf[from] === point) !== against ? capacity : reverse;
	};
	/** What comes into each point from its own supply, over bridges away from the root, and over the one towards it. */
	const own = new Float64Array(nodeCount);
	const fromOutside = new Float64Array(nodeCount);
	const fromRoot = new Float64Array(nodeCount);
	for (let node = 0; node < nodeCount; node++) own[pointOf[node]!]! += supplies[node]!;
	const brought = (point: number): number => own[point]! + fromOutside[point]! + fromRoot[point]!;

	const known = new Map<number, number>();
	/** Into a point from the other points of its island. */
	const overLoops = (point: number): number => {
		const island = forest.loopsAt(point);
		if (!island) return 0;
		if (!known.has(point)) known.set(point, flowOverLoops(island, arcs, pointOf, brought, point, against));
		return known.get(point)!;
	};

	const atOuter = new Float64Array(bridges.length);
	const atInner = new Float64Array(bridges.length);
	const inward = new Float64Array(bridges.length);
	for (let i = bridges.length - 1; i >= 0; i--) {
		const point = outer[i]!;
		atOuter[i] = own[point]! + fromOutside[point]! + overLoops(point);
		inward[i] = Math.min(atOuter[i]!, capacityFrom(bridges[i]!, point));
		fromOutside[inner[i]!]! += inward[i]!;
	}
	// Bridges at one inner point follow one another. For each, all others are added up from both ends: taking its own
	// share from the sum would not do for infinite amounts.
	for (let first = 0, end = 0; first < bridges.length; first = end) {
		const point = inner[first]!;
		while (end < bridges.length && inner[end] === point) end++;
		let later = 0;
		for (let i = end - 1; i >= first; i--) {
			atInner[i] = later;
			later += inward[i]!;
		}
		let earlier = own[point]! + fromRoot[point]! + overLoops(point);
		for (let i = first; i < end; i++) {
			atInner[i]! += earlier;
			earlier += inward[i]!;
			fromRoot[outer[i]!] = Math.min(atInner[i]!, capacityFrom(bridges[i]!, point));
		}
	}

	/** Outward through what is not full, up to what is. */
	const limits = (start: number, without: number): Limits | null => {
		const full: number[] = [];
		const spent = new Set<number>();
		const open = [{ point: start, cameBy: without }];
		for (const { point, cameBy } of open) {
			if (forest.loopsAt(point) || own[point] === Infinity) return null;
			if (own[point]! > 0) spent.add(point);
			const meet = (i: number, beyond: number, behindA: number): void => {
				if (i === cameBy || behindA === 0) return;
				const capacity = capacityFrom(bridges[i]!, beyond);
				if (capacity === 0) return;
				if (capacity <= behindA && capacity < Infinity) full.push(bridges[i]!);
				else open.push({ point: beyond, cameBy: i });
			};
			const up = forest.upwardOf[point]!;
			if (up >= 0) meet(up, inner[up]!, atInner[up]!);
			for (let i = forest.firstOf[point]!; i >= 0 && inner[i] === point; i++) meet(i, outer[i]!, atOuter[i]!);
		}
		return { arcs: full, isSpent: (node) => spent.has(pointOf[node]!) };
	};

	const placeAndPoint = (arc: number, end: 'from' | 'to') => ({ i: forest.placeOf[arc]!, point: pointOf[arcs[arc]![end]]! });
	return {
		into: (node) => brought(pointOf[node]!) + overLoops(pointOf[node]!),
		intoEnd: (arc, end) => {
			if (!isBridge[arc]) return null;
			const { i, point } = placeAndPoint(arc, end);
			return point === outer[i] ? atOuter[i]! : atInner[i]!;
		},
		limitsInto: (node) => limits(pointOf[node]!, -1),
		limitsIntoEnd: (arc, end) => {
			if (!isBridge[arc]) return null;
			const { i, point } = placeAndPoint(arc, end);
			return limits(point, i);
		}
	};
}

function flowOverLoops(
	{ points, loops }: { readonly points: readonly number[]; readonly loops: readonly number[] },
	arcs: readonly FlowArc[],
	pointOf: Int32Array,
	brought: (point: number) => number,
	sink: number,
	against: boolean
): number {
	const number = new Map(points.map((point, i) => [point, i]));
	const source = points.length;
	const inner = loops.map((arc): FlowArc => {
		const { from, to, capacity, reverse = 0 } = arcs[arc]!;
		const ends = { from: number.get(pointOf[from]!)!, to: number.get(pointOf[to]!)! };
		return against ? { ...ends, capacity: reverse, reverse: capacity } : { ...ends, capacity, reverse };
	});
	const supplied = points.flatMap((point, i) => {
		const capacity = point === sink ? 0 : brought(point);
		return capacity > 0 ? [{ from: source, to: i, capacity }] : [];
	});
	return maximumFlow(flowGraph(points.length + 1, [...inner, ...supplied]), source, number.get(sink)!).value;
}
