import { areaMm2, resistanceBreakdown } from '#core/conductors';
import type { Conductor, ConductorId } from '#core/diagram';
import { byForm, islandsOf, usedLengthM, type Branch, type Form, type Network, type NodeIndex, type UnionFind } from '#core/network';
import { circuitOf, type Factors } from '#core/solver';
import { IACS_OHM_MM2_PER_M } from '#core/tables';

/**
 * "greatest": batteries fully charged behind their resistance into a short, copper at 20 °C, sources adding all they
 * can: what a fuse may have to break. "least": batteries in use behind their resistance in use, copper hot from
 * load, no sources: what must still open a fuse.
 */
export type Condition = 'greatest' | 'least';

/** Copper hot from load against copper in service at 29 °C (about 80 °C): common practice, no source. */
export const HOT_FACTOR = 1.2;

/** The network with all loads off and all switches closed, ready for shorts anywhere. */
export interface FaultCircuit {
	/** Open-circuit volts by node, each island against a node of its own. */
	readonly nodeV: Float64Array;
	/** Ohms by branch. */
	readonly branchOhm: Float64Array;
	/** Ohms seen between two nodes of one island. */
	resistanceOhm(a: NodeIndex, b: NodeIndex): number;
	/** 1 by node where volts or ohms may differ from an earlier circuit of the same form; null where that may be so anywhere. */
	changedSince(earlier: FaultCircuit): Uint8Array | null;
	/** Joined by branches and batteries. */
	isOneIsland(a: NodeIndex, b: NodeIndex): boolean;
	hasBattery(node: NodeIndex): boolean;
	/** Amps that current-limited sources between the islands of two nodes can give; they need no battery. */
	limitedA(positive: NodeIndex, negative: NodeIndex): number;
}

/**
 * @param conductors by id; a conductor that is not among them keeps the network's resistance
 * @param opened indices of branches that conduct no longer
 */
export function faultCircuit(
	network: Network,
	conductors: Readonly<Record<ConductorId, Conductor>>,
	condition: Condition,
	opened: ReadonlySet<number> = new Set()
): FaultCircuit {
	const { nodeCount, branches, batteries, sources } = network;
	const isGreatest = condition === 'greatest';
	const { island, pinned, live } = opened.size === 0 ? wholeIslands(network) : liveIslands(network, opened);

	const branchOhm = Float64Array.from(branches, (branch) =>
		opened.has(branch.index) ? Infinity : branchResistanceOhm(branch, conductors, condition)
	);
	const batteryOhm = batteries.map(({ faultResistanceOhm, resistanceOhm }) => (isGreatest ? faultResistanceOhm : resistanceOhm));
	const injectionA = new Float64Array(nodeCount);
	batteries.forEach(({ positive, negative, faultEmfV, emfV }, i) => {
		const amps = (isGreatest ? faultEmfV : emfV) / batteryOhm[i]!;
		injectionA[positive]! += amps;
		injectionA[negative]! -= amps;
	});
	const isBetweenIslands = ({ positive, negative }: { positive: NodeIndex; negative: NodeIndex }) => !island.same(positive, negative);
	if (isGreatest) {
		for (const { positive, negative, maxA } of sources.filter((source) => !isBetweenIslands(source))) {
			injectionA[positive]! += maxA;
			injectionA[negative]! -= maxA;
		}
	}

	// Loads and sources are edges of the plan too; here they conduct nothing.
	const { elimination, edgeCount, first } = circuitOf(network);
	const conductanceS = new Float64Array(edgeCount);
	branchOhm.forEach((ohms, i) => (conductanceS[i] = 1 / ohms));
	batteryOhm.forEach((ohms, i) => (conductanceS[first.battery + i] = 1 / ohms));
	const factors = elimination.factor(conductanceS, pinned);
	const circuit: FaultCircuit = {
		nodeV: factors.solve(injectionA),
		branchOhm,
		resistanceOhm: factors.resistanceOhm,
		changedSince(earlier) {
			const before = factorsOf.get(earlier);
			const isChanged = before ? factors.changedSince(before) : null;
			if (!isChanged) return null;
			for (let node = 0; node < nodeCount; node++) if (circuit.nodeV[node] !== earlier.nodeV[node]) isChanged[node] = 1;
			// One beside a much thicker one may be another without being felt by any node.
			for (const { index, a, b } of branches) if (branchOhm[index] !== earlier.branchOhm[index]) isChanged[a] = isChanged[b] = 1;
			return isChanged;
		},
		isOneIsland: island.same,
		hasBattery: (node) => live.has(island.find(node)),
		limitedA: (positive, negative) =>
			sources.reduce(
				(sum, source) =>
					isBetweenIslands(source) && island.same(source.positive, positive) && island.same(source.negative, negative)
						? sum + source.maxA
						: sum,
				0
			)
	};
	factorsOf.set(circuit, factors);
	return circuit;
}

const factorsOf = new WeakMap<FaultCircuit, Factors>();

interface Islands {
	/** Joined by branches and batteries. */
	readonly island: UnionFind;
	readonly pinned: Uint8Array;
	/** Islands with a battery. */
	readonly live: ReadonlySet<NodeIndex>;
}

function liveIslands(form: Form, opened: ReadonlySet<number>): Islands {
	const island = islandsOf({ ...form, branches: form.branches.filter(({ index }) => !opened.has(index)) });
	const live = new Set(form.batteries.map(({ positive }) => island.find(positive)));
	return { island, pinned: pins(form, island.find), live };
}

const wholeIslands = byForm((form) => liveIslands(form, new Set()));

/** One node of each island, a battery's negative terminal where there is one, held at 0 V. */
function pins({ nodeCount, batteries }: Form, islandOf: (node: NodeIndex) => number): Uint8Array {
	const pinned = new Uint8Array(nodeCount);
	const done = new Set<number>();
	for (const node of [...batteries.map(({ negative }) => negative), ...Array(nodeCount).keys()]) {
		if (done.has(islandOf(node))) continue;
		done.add(islandOf(node));
		pinned[node] = 1;
	}
	return pinned;
}

/** Joints are taken at their good value either way; fuses, switches and bars do not change. */
function branchResistanceOhm(
	{ origin, resistanceOhm }: Branch,
	conductors: Readonly<Record<ConductorId, Conductor>>,
	condition: Condition
): number {
	const conductor = origin.kind === 'conductor' ? conductors[origin.id] : undefined;
	if (!conductor) return resistanceOhm;
	const { lengthM } = usedLengthM(conductor);
	const { copperOhm, jointOhm } = resistanceBreakdown(conductor.gauge, lengthM);
	const coldOhm = (IACS_OHM_MM2_PER_M.value * lengthM) / areaMm2(conductor.gauge);
	return 2 * jointOhm + (condition === 'greatest' ? coldOhm : copperOhm * HOT_FACTOR);
}
