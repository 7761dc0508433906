/**
 * Bounds on what a fault can send through negative conductors, without a flow for each. A conductor that is a bridge
 * cuts the negative metal in two: what enters at one end comes through loads and sources on that side, and leaves to
 * the batteries and sources on the other. Neither can be more than their positive sides can bring, or take away.
 * For a conductor on a loop both sides are the whole metal.
 */
import type { Form, NodeIndex } from '#core/network';
import { asIs, branchArcs, standsOnAnother, type PositiveSide } from './fault-graph.ts';
import { flowTree, type FlowTree, type TreeFlow } from './tree-flow.ts';

/** Never below the let-through at this end of a branch between negative nodes. */
export type ReturnBound = (branch: number, end: 'from' | 'to') => number;

/** @param positive tree of the positive side */
export function returnBounds(network: Form, side: PositiveSide, positive: FlowTree): ReturnBound {
	const { nodeCount, branches, loads, sources, batteries } = network;
	const isPositive = (node: NodeIndex): boolean => network.poles[node] === 'positive';
	// Where the positive side has nothing but branches its tree serves for the negative metal as well.
	const metal = side.arcs.length === branches.length ? positive : flowTree(nodeCount, branchArcs(network, asIs));
	const over = (amounts: readonly (readonly [NodeIndex, number])[]): TreeFlow => {
		const supplies = new Float64Array(nodeCount);
		for (const [node, amps] of amounts) supplies[node]! += amps;
		return metal.flow(supplies);
	};

	const arriving = arrivingAt(network, side, positive);
	const leaving = positive.flow(sinksOf(network), true);
	const entering = over([
		...[...loads, ...sources].map(
			({ positive, negative }) => [negative, isPositive(positive) ? arriving.into(positive) : Infinity] as const
		),
		// A converter the wrong way round, fed back onto the negative metal.
		...sources.flatMap(({ blocksReverse, fedBy }) => (blocksReverse || fedBy === null ? [] : [[loads[fedBy]!.positive, Infinity] as const]))
	]);
	const chargers = sources.map(({ negative, maxA }) => [negative, Math.max(0, maxA)] as const);
	const home = over([
		...chargers,
		...batteries.flatMap(({ positive, negative }) =>
			standsOnAnother(network, negative) ? [] : [[negative, isPositive(positive) ? leaving.into(positive) : Infinity] as const]
		)
	]);
	const toChargers = sources.length > 0 ? over(chargers) : null;
	const charged = toChargers ? over(batteries.map(({ negative }) => [negative, Infinity])) : null;

	return (branch, end) => {
		const { a, b } = branches[branch]!;
		const [node, other] = end === 'from' ? [a, b] : [b, a];
		const near = (flow: TreeFlow): number => flow.intoEnd(branch, end) ?? flow.into(node);
		const far = (flow: TreeFlow): number => flow.intoEnd(branch, end === 'from' ? 'to' : 'from') ?? flow.into(other);
		const driven = Math.min(near(entering), far(home));
		if (!toChargers || !charged) return driven;
		return Math.max(driven, Math.min(near(entering) + near(charged), far(toChargers)));
	};
}

/** What all supplies can bring to a positive node, also by way of loads and sources that end on positive metal. */
function arrivingAt(network: Form, side: PositiveSide, positive: FlowTree): TreeFlow {
	const arcs = [...side.arcs];
	const supplies = side.supplies.slice();
	for (const { positive, negative } of [...network.loads, ...network.sources]) {
		if (network.poles[negative] !== 'positive') continue;
		if (network.poles[positive] === 'positive') arcs.push({ from: positive, to: negative, capacity: Infinity, origin: null });
		else supplies[negative] = Infinity;
	}
	const tree = arcs.length === side.arcs.length ? positive : flowTree(network.nodeCount, arcs);
	return tree.flow(supplies);
}

/** Loads and sources, which a fault shorts. */
function sinksOf({ nodeCount, loads, sources }: Form): Float64Array {
	const sinks = new Float64Array(nodeCount);
	for (const { positive } of [...loads, ...sources]) sinks[positive] = Infinity;
	return sinks;
}
