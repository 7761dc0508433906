import { areaMm2, resistanceBreakdown } from '#core/conductors';
import type { Conductor, ConductorId } from '#core/diagram';
import { unionFind, usedLengthM, type Branch, type Network, type NodeIndex } from '#core/network';
import { circuitOf } from '#core/solver';
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
	const island = unionFind(nodeCount);
	for (const { index, a, b } of branches) if (!opened.has(index)) island.union(a, b);
	for (const { positive, negative } of batteries) island.union(positive, negative);

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
	const factors = elimination.factor(conductanceS, pins(network, island.find));
	const live = new Set(batteries.map(({ positive }) => island.find(positive)));
	return {
		nodeV: factors.solve(injectionA),
		branchOhm,
		resistanceOhm: factors.resistanceOhm,
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
}

/** One node of each island, a battery's negative terminal where there is one, held at 0 V. */
function pins({ nodeCount, batteries }: Network, islandOf: (node: NodeIndex) => number): Uint8Array {
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
