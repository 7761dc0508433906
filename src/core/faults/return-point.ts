/**
 * Where a short between the poles is taken to be. The two conductors of a circuit run side by side, so a fault at a
 * point of the positive meets the return as far from the load as that point is: at the load's own terminals for the
 * end of a run, at the negative bus for the positive bus. Where lengths differ, the next point towards the battery
 * counts, which gives the greater current. On the metal of a battery's post the fault is across that battery or,
 * in a series string, across the string.
 */
import { unionFind, type BatteryBranch, type Network, type NodeIndex } from '#core/network';
import { distancesTo } from './distances.ts';

const SAME_PLACE_M = 1e-9;

/**
 * @param lengthM by branch, metres; bars, switches and fuses have none
 *
 * The node of the return for a fault at a node; null for nodes that are not positive, or have no way back.
 */
export function returnPoints(network: Network, lengthM: Float64Array): (node: NodeIndex) => NodeIndex | null {
	const { batteries, sources, loads, poles } = network;
	const isPositive = (node: NodeIndex): boolean => poles[node] === 'positive' || poles[node] === 'shorted';
	const isReturn = (node: NodeIndex): boolean => poles[node] !== 'positive';

	const postNodes = new Set(batteries.map(({ positive }) => positive));

	const posts = distancesTo(network, {
		at: batteries.map((battery) => ({ node: battery.positive, goal: battery })),
		enters: isPositive,
		lengthM
	});
	const rungs = distancesTo(network, {
		at: [...loads, ...sources].map(({ positive, negative }) => ({ node: positive, goal: negative })),
		// What lies beyond a battery's post belongs to another circuit.
		enters: (node) => isPositive(node) && !postNodes.has(node),
		lengthM
	});
	const homes = distancesTo(network, {
		at: homesOf(network)
			.filter(isReturn)
			.map((node) => ({ node, goal: node })),
		enters: isReturn,
		lengthM
	});
	const foot = footOfString(network);

	return (node) => {
		if (!isPositive(node)) return null;
		const battery = posts.goal(node);
		if (battery && posts.lengthM[node]! <= SAME_PLACE_M) return foot(battery);
		const start = rungs.goal(node);
		if (start === undefined) return battery ? foot(battery) : null;
		let at = start;
		// Distances count from the battery, so what is walked is the difference.
		const walkedM = (): number => homes.lengthM[start]! - homes.lengthM[at]!;
		while (homes.next[at]! >= 0 && walkedM() < rungs.lengthM[node]! - SAME_PLACE_M) at = homes.next[at]!;
		return at;
	};
}

/** Where returns end: batteries' negative terminals; on metal without one, those of the sources that feed it. */
function homesOf({ nodeCount, branches, batteries, sources }: Network): NodeIndex[] {
	const metal = unionFind(nodeCount);
	for (const { a, b } of branches) metal.union(a, b);
	const ofBatteries = batteries.map(({ negative }) => negative);
	const known = new Set(ofBatteries.map(metal.find));
	return [...ofBatteries, ...sources.map(({ negative }) => negative).filter((node) => !known.has(metal.find(node)))];
}

/** Negative end of the series string a battery belongs to. */
function footOfString({ nodeCount, branches, batteries, poles }: Network): (battery: BatteryBranch) => NodeIndex {
	const metal = unionFind(nodeCount);
	for (const { a, b } of branches) metal.union(a, b);
	return (battery) => {
		const seen = new Set([battery]);
		let { negative } = battery;
		while (poles[negative] === 'positive') {
			const below = batteries.find((other) => !seen.has(other) && metal.same(other.positive, negative));
			if (!below) break;
			seen.add(below);
			({ negative } = below);
		}
		return negative;
	};
}
