import type { ConductorEnd, ConductorId } from '#core/diagram';
import { unionFind, type Network } from '#core/network';
import { chargingGraph, negativeGraph, positiveGraph, type FaultGraph, type NodeMap } from './fault-graph.ts';
import { maximumFlow, type Flow } from './flow-graph.ts';
import type { ConductorProtection, LetThrough } from './types.ts';

interface Graphs {
	positive(): FaultGraph;
	/** Driven by all supplies, and by self-limited sources that charge batteries. */
	negative(): readonly FaultGraph[];
}

interface Workings {
	readonly graphs: Graphs;
	readonly exact: Map<ConductorId, ConductorProtection>;
	bounds(): (id: ConductorId) => number;
}

const graphsOf = (network: Network, nodeCount: number, map: NodeMap): Graphs => ({
	positive: once(() => positiveGraph(network, nodeCount, map)),
	negative: once(() => [negativeGraph(network, nodeCount, map), chargingGraph(network, nodeCount, map)])
});

const workings = new WeakMap<Network, Workings>();

function workingsOf(network: Network): Workings {
	let found = workings.get(network);
	if (!found) {
		found = {
			graphs: graphsOf(network, network.nodeCount, (node) => node),
			exact: new Map(),
			bounds: once(() => zoneBounds(network))
		};
		workings.set(network, found);
	}
	return found;
}

/**
 * What protects a conductor. For a positive one, each end is the greatest current that can be sustained into a fault
 * there with the conductor itself taken away. For a negative one, with all loads shorted, `from` is the greatest
 * current that can enter at `from` and leave at `to` on its way back to the supplies, `to` the other way round; an
 * end behind which there is no way back counts 0. Worked out on first use and kept as long as the network.
 *
 * @throws when the conductor is not in the network
 */
export function protectionOf(network: Network, conductor: ConductorId): ConductorProtection {
	const { exact } = workingsOf(network);
	let protection = exact.get(conductor);
	if (!protection) {
		const [from, to] = [letThrough(network, conductor, 'from'), letThrough(network, conductor, 'to')];
		protection = { conductor, from, to, currentA: Math.max(from.currentA, to.currentA) };
		exact.set(conductor, protection);
	}
	return protection;
}

/**
 * A quick bound: never below `protectionOf(…).currentA`, usually equal. Everything joined without a fuse is one
 * zone, and one flow serves all conductors of a zone.
 *
 * @throws when the conductor is not in the network
 */
export const letThroughBound = (network: Network, conductor: ConductorId): number => workingsOf(network).bounds()(conductor);

function letThrough(network: Network, conductor: ConductorId, end: ConductorEnd): LetThrough {
	const branch = branchOf(network, conductor);
	const ends = network.nodeOfEnd.get(conductor)!;
	const other = end === 'from' ? ends.to : ends.from;
	const isNegative = network.poles[ends.from] === 'negative';
	// A conductor from a stud to itself carries nothing whichever way a fault flows.
	if (ends.from === ends.to) return { currentA: 0, limitedBy: [], unprotectedPath: [] };

	const { nodeCount } = network;
	const { graphs } = workingsOf(network);
	const answer = (fault: FaultGraph, source: number, sink: number): LetThrough => {
		const flow = maximumFlow(fault.graph, source, sink, fault.arcsOfBranch[branch]);
		return { currentA: flow.value, limitedBy: limiters(network, fault, flow), unprotectedPath: pathConductors(network, fault, flow) };
	};
	if (!isNegative) return answer(graphs.positive(), nodeCount, ends[end]);
	const [driven, charging] = graphs.negative().map((fault) => answer(fault, other, nodeCount + ends[end]));
	return charging!.currentA > driven!.currentA ? charging! : driven!;
}

function limiters({ branches, sources }: Network, { origins, graph }: FaultGraph, { cut }: Flow): LetThrough['limitedBy'] {
	const found = new Map<string, LetThrough['limitedBy'][number]>();
	for (const arc of cut) {
		const origin = origins[arc >> 1];
		if (!origin) continue;
		const at = origin.kind === 'source' ? sources[origin.index]! : branches[origin.index]!.origin;
		if ('kind' in at && at.kind === 'conductor') continue;
		found.set(`${at.part}.${at.link}`, { part: at.part, link: at.link, currentA: graph.capacity[arc]! });
	}
	return [...found.values()];
}

function pathConductors({ branches }: Network, { origins }: FaultGraph, { infinitePath }: Flow): ConductorId[] {
	const ids = infinitePath.flatMap((arc) => {
		const origin = origins[arc >> 1];
		const branch = origin?.kind === 'branch' ? branches[origin.index]!.origin : null;
		return branch?.kind === 'conductor' ? [branch.id] : [];
	});
	return [...new Set(ids)];
}

function zoneBounds(network: Network): (id: ConductorId) => number {
	const zones = unionFind(network.nodeCount);
	for (const { a, b, device } of network.branches) if (!device) zones.union(a, b);
	const numbers = new Map<number, number>();
	const zoneOf = Array.from({ length: network.nodeCount }, (_, node) => {
		const root = zones.find(node);
		if (!numbers.has(root)) numbers.set(root, numbers.size);
		return numbers.get(root)!;
	});

	const count = numbers.size;
	const graphs = graphsOf(network, count, (node) => zoneOf[node]!);
	const boundOf = (zone: number, isNegative: boolean): number =>
		isNegative
			? Math.max(...graphs.negative().map(({ graph }) => maximumFlow(graph, zone, count + zone).value))
			: maximumFlow(graphs.positive().graph, count, zone).value;
	const bounds = new Map<number, number>();
	return (id) => {
		const node = network.branches[branchOf(network, id)]!.a;
		const zone = zoneOf[node]!;
		if (!bounds.has(zone)) bounds.set(zone, boundOf(zone, network.poles[node] === 'negative'));
		return bounds.get(zone)!;
	};
}

function branchOf({ branchOfConductor }: Network, conductor: ConductorId): number {
	const index = branchOfConductor.get(conductor);
	if (index === undefined) throw new Error(`There is no conductor "${conductor}" in the network.`);
	return index;
}

function once<Value>(make: () => Value): () => Value {
	let made: { readonly value: Value } | null = null;
	return () => (made ??= { value: make() }).value;
}
