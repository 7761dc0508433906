import type { ConductorEnd, ConductorId } from '#core/diagram';
import { formOf, type Form } from '#core/network';
import { chargingGraph, negativeGraph, positiveGraph, positiveSide, type FaultGraph } from './fault-graph.ts';
import { maximumFlow, type Flow } from './flow-graph.ts';
import { once } from './once.ts';
import { returnBounds } from './returns.ts';
import { singleReturns } from './single-return.ts';
import { flowTree, type Limits } from './tree-flow.ts';
import type { ConductorProtection, LetThrough } from './types.ts';
import { zonesOf, type Zones } from './zones.ts';

interface Workings {
	positive(): FaultGraph;
	/** Driven by all supplies, and by self-limited sources that charge batteries. */
	negative(): readonly FaultGraph[];
	quick(): Quick;
	zones(): Zones;
	readonly exact: Map<ConductorId, ConductorProtection>;
	/** By graph and zone: what protects every conductor on a loop of the zone. */
	readonly ofZone: Map<FaultGraph, Map<number, LetThrough>>;
}

const workings = new WeakMap<object, Workings>();

function workingsOf(network: Form): Workings {
	// Resistances have no part in it.
	const form = formOf(network);
	let found = workings.get(form);
	if (!found) {
		found = {
			positive: once(() => positiveGraph(network)),
			negative: once(() => [negativeGraph(network), ...(network.sources.length > 0 ? [chargingGraph(network)] : [])]),
			quick: once(() => quickOf(network)),
			zones: once(() => zonesOf(network)),
			exact: new Map(),
			ofZone: new Map()
		};
		workings.set(form, found);
	}
	return found;
}

/**
 * What protects a conductor. For a positive one, each end is the greatest current that can be sustained into a fault
 * there with the conductor itself taken away. For a negative one, with all loads shorted, `from` is the greatest
 * current that can enter at `from` and leave at `to` on its way back to the supplies, `to` the other way round; an
 * end behind which there is no way back counts 0. Worked out on first use and kept as long as the network's form.
 *
 * @throws when the conductor is not in the network
 */
export function protectionOf(network: Form, conductor: ConductorId): ConductorProtection {
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
 * A quick bound: never below `protectionOf(…).currentA`, and equal to it for a positive conductor on no loop.
 *
 * @throws when the conductor is not in the network
 */
export function letThroughBound(network: Form, conductor: ConductorId): number {
	const branch = branchOf(network, conductor);
	const { bound } = workingsOf(network).quick();
	return Math.max(bound(branch, 'from'), bound(branch, 'to'));
}

/** What the tree of bridges tells, without a flow. */
interface Quick {
	bound(branch: number, end: ConductorEnd): number;
	/** The exact answer; null where loops or several loads take part. */
	exact(branch: number, end: ConductorEnd): LetThrough | null;
}

function quickOf(network: Form): Quick {
	const side = positiveSide(network);
	const tree = flowTree(network.nodeCount, side.arcs);
	const positive = once(() => tree.flow(side.supplies));
	const returns = once(() => returnBounds(network, side, tree));
	const single = once(() => singleReturns(network, tree));
	const isReturn = (branch: number): boolean => network.poles[network.branches[branch]!.a] === 'negative';
	const answer = (currentA: number, limits: Limits | null): LetThrough | null =>
		limits && { currentA, limitedBy: namedLimits(network, limits), unprotectedPath: [] };
	return {
		bound(branch, end) {
			const { a, b } = network.branches[branch]!;
			// A conductor from a stud to itself carries nothing whichever way a fault flows.
			if (a === b) return 0;
			if (isReturn(branch)) return returns()(branch, end);
			// The arcs of branches come first, in the branches' order.
			return positive().intoEnd(branch, end) ?? positive().into(end === 'from' ? a : b);
		},
		exact(branch, end) {
			if (!isReturn(branch)) {
				const currentA = positive().intoEnd(branch, end);
				return currentA === null || currentA === Infinity ? null : answer(currentA, positive().limitsIntoEnd(branch, end));
			}
			const load = single()(branch, end);
			const currentA = load && positive().into(load.positive);
			return !load || currentA === Infinity ? null : answer(currentA!, positive().limitsInto(load.positive));
		}
	};
}

function namedLimits({ branches, sources }: Form, limits: Limits): LetThrough['limitedBy'] {
	const devices = [...limits.arcs]
		.sort((a, b) => a - b)
		.flatMap((index) => {
			const { origin, device } = branches[index]!;
			return origin.kind === 'link' && device ? [{ part: origin.part, link: origin.link, currentA: Math.max(0, device.ratingA) }] : [];
		});
	const selfLimited = sources.filter(({ positive, maxA }) => maxA > 0 && limits.isSpent(positive));
	return [...devices, ...selfLimited.map(({ part, link, maxA }) => ({ part, link, currentA: maxA }))];
}

function letThrough(network: Form, conductor: ConductorId, end: ConductorEnd): LetThrough {
	const branch = branchOf(network, conductor);
	const ends = network.nodeOfEnd.get(conductor)!;
	const { nodeCount } = network;
	const { positive, negative, zones, ofZone, quick } = workingsOf(network);
	if (quick().bound(branch, end) === 0) return NOTHING;
	const known = quick().exact(branch, end);
	if (known) return known;
	const into = (fault: FaultGraph, source: number, sink: number): LetThrough => {
		const flow = (): Flow => maximumFlow(fault.graph, source, sink, fault.arcsOfBranch(branch));
		// Where the copper goes on without the conductor, and no device stands in it, all of its ends are as one.
		const zone = zones().onLoop(branch);
		let shared = zone === null ? undefined : ofZone.get(fault)?.get(zone);
		if (!shared) {
			const { value, cut } = flow();
			shared = { currentA: value, limitedBy: limiters(network, fault, cut), unprotectedPath: [] };
			if (zone !== null) ofZone.set(fault, (ofZone.get(fault) ?? new Map<number, LetThrough>()).set(zone, shared));
		}
		return shared.currentA < Infinity ? shared : unlimited(() => pathConductors(network, fault, flow()));
	};
	if (network.poles[ends.from] !== 'negative') return into(positive(), nodeCount, ends[end]);
	const other = end === 'from' ? ends.to : ends.from;
	return negative()
		.map((fault) => into(fault, other, nodeCount + ends[end]))
		.reduce((driven, charging) => (charging.currentA > driven.currentA ? charging : driven));
}

const NOTHING: LetThrough = { currentA: 0, limitedBy: [], unprotectedPath: [] };

/** The path is seldom asked for. */
function unlimited(path: () => ConductorId[]): LetThrough {
	const known = once(path);
	return {
		currentA: Infinity,
		limitedBy: [],
		get unprotectedPath() {
			return known();
		}
	};
}

function limiters({ branches, sources }: Form, { originOf, graph }: FaultGraph, cut: readonly number[]): LetThrough['limitedBy'] {
	const found = new Map<string, LetThrough['limitedBy'][number]>();
	for (const arc of cut) {
		const origin = originOf(arc >> 1);
		if (!origin) continue;
		const at = origin.kind === 'source' ? sources[origin.index]! : branches[origin.index]!.origin;
		if ('kind' in at && at.kind === 'conductor') continue;
		found.set(`${at.part}.${at.link}`, { part: at.part, link: at.link, currentA: graph.capacity[arc]! });
	}
	return [...found.values()];
}

function pathConductors({ branches }: Form, { originOf }: FaultGraph, { infinitePath }: Flow): ConductorId[] {
	const ids = infinitePath.flatMap((arc) => {
		const origin = originOf(arc >> 1);
		const branch = origin?.kind === 'branch' ? branches[origin.index]!.origin : null;
		return branch?.kind === 'conductor' ? [branch.id] : [];
	});
	return [...new Set(ids)];
}

function branchOf({ branchOfConductor }: Form, conductor: ConductorId): number {
	const index = branchOfConductor.get(conductor);
	if (index === undefined) throw new Error(`There is no conductor "${conductor}" in the network.`);
	return index;
}
