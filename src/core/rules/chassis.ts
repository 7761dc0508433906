/** The chassis or hull as metal: its studs, what bonds it, and what returns through it. */
import { unionFind, type LoadBranch, type NodeIndex } from '#core/network';
import { CHASSIS } from '#core/parts';
import { standing } from './load-poles.ts';
import type { ConductorView } from './study.ts';
import { derived } from './watch.ts';

export interface Chassis {
	/** Nodes of the metalwork and of the studs bolted to it. Empty when no chassis point is drawn. */
	readonly nodes: ReadonlySet<NodeIndex>;
	/** Conductors between the metalwork and the negative of a battery or source, reached without it. */
	readonly bonds: readonly ConductorView[];
	/** Loads that are fed and have no way back but through it. */
	readonly returning: readonly LoadBranch[];
}

export const chassisOf = derived((study): Chassis => {
	const { network, nets } = study;
	const metalwork = network.nodeOf.get(CHASSIS);
	if (metalwork === undefined) return { nodes: new Set(), bonds: [], returning: [] };
	const studs = network.branchesAt[metalwork]!.map((index) => network.branches[index]!);
	const nodes = new Set([metalwork, ...studs.flatMap(({ a, b }) => [a, b])]);

	const metal = unionFind(network.nodeCount);
	for (const { a, b } of network.branches) if (!nodes.has(a) && !nodes.has(b)) metal.union(a, b);
	const supplies = new Set([...network.batteries, ...network.sources].map(({ negative }) => metal.find(negative)));
	const chassisNets = new Set([...nodes].map(nets.of));
	return {
		nodes,
		bonds: study.conductors.filter(
			({ branch: { a, b } }) => nodes.has(a) !== nodes.has(b) && supplies.has(metal.find(nodes.has(a) ? b : a))
		),
		returning: network.loads.filter(
			(load) => !supplies.has(metal.find(load.negative)) && chassisNets.has(nets.of(load.negative)) && standing(study, load) === 'fed'
		)
	};
});
