/**
 * Bounds on what a fault can send through negative conductors, without a flow for each. A conductor that is a bridge
 * cuts the negative metal in two: what enters at one end comes through loads and sources on that side, and leaves to
 * the batteries and sources on the other. Neither can be more than their positive sides can bring, or take away.
 * For a conductor on a loop both sides are the whole metal.
 */
import type { Network, NodeIndex } from '#core/network';
import { asIs, branchArcs, positiveSide, standsOnAnother } from './fault-graph.ts';
import type { FlowArc } from './flow-graph.ts';
import { treeFlow, type TreeFlow } from './tree-flow.ts';

/** Never below the let-through at this end of a branch between negative nodes. */
export type ReturnBound = (branch: number, end: 'from' | 'to') => number;

export function returnBounds(network: Network): ReturnBound {
	const { nodeCount, branches, loads, sources, batteries } = network;
	const isPositive = (node: NodeIndex): boolean => network.poles[node] === 'positive';
	const arcs = branchArcs(network, asIs);
	const over = (amounts: readonly (readonly [NodeIndex, number])[]): TreeFlow => {
		const supplies = new Float64Array(nodeCount);
		for (const [node, amps] of amounts) supplies[node]! += amps;
		return treeFlow(nodeCount, arcs, supplies);
	};

	const arriving = arrivingAt(network);
	const leaving = leavingFrom(network);
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
	const charged = batteries.length > 0 && toChargers ? over(batteries.map(({ negative }) => [negative, Infinity])) : null;

	return (branch, end) => {
		const { a, b } = branches[branch]!;
		const [node, other] = end === 'from' ? [a, b] : [b, a];
		const near = (flow: TreeFlow): number => flow.intoEnd(branch, end) ?? flow.into(node);
		const far = (flow: TreeFlow): number => flow.intoEnd(branch, end === 'from' ? 'to' : 'from') ?? flow.into(other);
		const driven = Math.min(near(entering), far(home));
		if (!toChargers) return driven;
		return Math.max(driven, Math.min(near(entering) + (charged ? near(charged) : 0), far(toChargers)));
	};
}

/** What all supplies can bring to a positive node, also by way of loads and sources that end on positive metal. */
function arrivingAt(network: Network): TreeFlow {
	const { arcs, supplies } = positiveSide(network);
	for (const { positive, negative } of [...network.loads, ...network.sources]) {
		if (network.poles[negative] !== 'positive') continue;
		if (network.poles[positive] === 'positive') arcs.push({ from: positive, to: negative, capacity: Infinity, origin: null });
		else supplies[negative] = Infinity;
	}
	return treeFlow(network.nodeCount, arcs, supplies);
}

/** What can leave a positive node to loads and sources, which a fault shorts: the same walk against the current. */
function leavingFrom(network: Network): TreeFlow {
	const against = positiveSide(network).arcs.map(({ from, to, capacity, reverse = 0 }): FlowArc => ({
		from: to,
		to: from,
		capacity,
		reverse
	}));
	const sinks = new Float64Array(network.nodeCount);
	for (const { positive } of [...network.loads, ...network.sources]) sinks[positive] = Infinity;
	return treeFlow(network.nodeCount, against, sinks);
}
