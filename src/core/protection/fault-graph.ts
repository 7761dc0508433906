/**
 * The graphs in which let-through is a maximum flow. Fuses and breakers carry their rating, self-limited sources
 * their greatest current, everything else any current; all switches are closed.
 *
 * Positive side: from the supplies to the end of a conductor. A battery that stands on another one of a series
 * string does not supply by itself: it passes on, either way, what the one below it gives.
 *
 * Negative side: a fault in a load (or inside a source) returns through the conductor to the supply that drives it.
 * The graph has two layers. The lower holds the way from the conductor's far end back to a supply's negative
 * terminal; the upper the way from that supply's positive terminal, through fuses and shorted loads, to the
 * conductor. One supply's current thus passes that supply's own fuse, which a plain "source to sink" would miss.
 */
import type { Form, NodeIndex } from '#core/network';
import { flowGraph, type FlowArc, type FlowGraph } from './flow-graph.ts';

/** What an arc of the graph is, for the answer. */
export type ArcOrigin = { readonly kind: 'branch'; readonly index: number } | { readonly kind: 'source'; readonly index: number } | null;

export interface FaultGraph {
	readonly graph: FlowGraph;
	originOf(arcPair: number): ArcOrigin;
	/** Arc pairs of a branch: one in each layer. */
	arcsOfBranch(index: number): readonly number[];
}

export interface LabelledArc extends FlowArc {
	readonly origin: ArcOrigin;
}

export interface PositiveSide {
	/** Those of the branches first. */
	readonly arcs: readonly LabelledArc[];
	/** What supplies each node by itself, amps. */
	readonly supplies: Float64Array;
}

export function positiveSide(network: Form): PositiveSide {
	const arcs = [...branchArcs(network, asIs), ...backFeedArcs(network, asIs)];
	const supplies = new Float64Array(network.nodeCount);
	for (const { positive, negative } of network.batteries) {
		if (!standsOnAnother(network, negative)) supplies[positive] = Infinity;
		else arcs.push({ from: negative, to: positive, capacity: Infinity, reverse: Infinity, origin: null });
	}
	for (const { positive, maxA } of network.sources) supplies[positive]! += Math.max(0, maxA);
	return { arcs, supplies };
}

/** Node numbers are the network's; the last node is the super-source. */
export function positiveGraph(network: Form): FaultGraph {
	const supply = network.nodeCount;
	const arcs = [...positiveSide(network).arcs];
	for (const { positive, negative } of network.batteries) {
		if (!standsOnAnother(network, negative)) arcs.push({ from: supply, to: positive, capacity: Infinity, origin: null });
	}
	for (const { index, positive, maxA } of network.sources) {
		arcs.push({ from: supply, to: positive, capacity: Math.max(0, maxA), origin: { kind: 'source', index } });
	}
	return faultGraph(network, supply + 1, 1, arcs);
}

/** Lower layer first; the upper layer's nodes are `nodeCount` higher. */
export function negativeGraph(network: Form): FaultGraph {
	const upper: NodeMap = (node) => node + network.nodeCount;
	const arcs = negativeArcs(network, upper);
	for (const { positive, negative } of network.batteries) {
		const from = standsOnAnother(network, negative) ? upper(negative) : negative;
		arcs.push({ from, to: upper(positive), capacity: Infinity, origin: null });
	}
	return faultGraph(network, 2 * network.nodeCount, 2, arcs);
}

/**
 * As `negativeGraph`, but driven by the self-limited sources alone, whose current also returns through the batteries
 * they charge. (Batteries that drive cannot be ways through at the same time: each would be a loop of its own.)
 */
export function chargingGraph(network: Form): FaultGraph {
	const upper: NodeMap = (node) => node + network.nodeCount;
	const charged = network.batteries.map(({ positive, negative }): LabelledArc => ({
		from: upper(positive),
		to: upper(negative),
		capacity: Infinity,
		origin: null
	}));
	return faultGraph(network, 2 * network.nodeCount, 2, [...negativeArcs(network, upper), ...charged]);
}

function negativeArcs(network: Form, upper: NodeMap): LabelledArc[] {
	const arcs: LabelledArc[] = [...branchArcs(network, asIs), ...branchArcs(network, upper), ...backFeedArcs(network, upper)];
	for (const { index, positive, negative, maxA } of network.sources) {
		arcs.push({ from: negative, to: upper(positive), capacity: Math.max(0, maxA), origin: { kind: 'source', index } });
	}
	for (const { positive, negative } of [...network.loads, ...network.sources]) {
		arcs.push({ from: upper(positive), to: upper(negative), capacity: Infinity, origin: null });
	}
	return arcs;
}

type NodeMap = (node: NodeIndex) => number;
export const asIs: NodeMap = (node) => node;

/** The upper battery of a series string. */
export const standsOnAnother = ({ poles }: Form, negative: NodeIndex): boolean => poles[negative] === 'positive';

export const branchArcs = ({ branches }: Form, map: NodeMap): LabelledArc[] =>
	branches.map(({ index, a, b, device }) => {
		const capacity = device ? Math.max(0, device.ratingA) : Infinity;
		return { from: map(a), to: map(b), capacity, reverse: capacity, origin: { kind: 'branch', index } };
	});

/** A converter that does not block lets what is on its output side back to its input. */
const backFeedArcs = ({ sources, loads }: Form, map: NodeMap): LabelledArc[] =>
	sources.flatMap(({ blocksReverse, fedBy, positive }) =>
		blocksReverse || fedBy === null ? [] : [{ from: map(positive), to: map(loads[fedBy]!.positive), capacity: Infinity, origin: null }]
	);

/** @param arcs those of the branches first, layer by layer */
function faultGraph({ branches }: Form, nodeCount: number, layers: 1 | 2, arcs: readonly LabelledArc[]): FaultGraph {
	return {
		graph: flowGraph(nodeCount, arcs),
		originOf: (pair) => arcs[pair]!.origin,
		arcsOfBranch: (index) => (layers === 1 ? [index] : [index, index + branches.length])
	};
}
