/** The chassis or hull as metal: its studs, what bonds it, and what returns through it. */
import { unionFind, type BatteryBranch, type LoadBranch, type NodeIndex } from '#core/network';
import { CHASSIS } from '#core/parts';
import type { PartId } from '#core/diagram';
import { standing } from './load-poles.ts';
import type { ConductorView } from './study.ts';
import { derived, ofForm } from './watch.ts';

export interface Chassis {
	/** Nodes of the metalwork and of the studs bolted to it. Empty when no chassis point is drawn. */
	readonly nodes: ReadonlySet<NodeIndex>;
	/** Conductors between the metalwork and the negative of a battery or source, reached without it. */
	readonly bonds: readonly ConductorView[];
	/** Loads that are fed and have no way back but through it. */
	readonly returning: readonly LoadBranch[];
}

/** Nodes of the metalwork and of the studs bolted to it. */
export const chassisNodes = ofForm(({ form }): ReadonlySet<NodeIndex> => {
	const metalwork = form.nodeOf.get(CHASSIS);
	if (metalwork === undefined) return new Set();
	const studs = form.branchesAt[metalwork]!.map((index) => form.branches[index]!);
	return new Set([metalwork, ...studs.flatMap(({ a, b }) => [a, b])]);
});

export const chassisOf = derived((study): Chassis => {
	const { form, nets } = study;
	const nodes = chassisNodes(study);
	if (nodes.size === 0) return { nodes, bonds: [], returning: [] };

	const metal = unionFind(form.nodeCount);
	for (const { a, b } of form.branches) if (!nodes.has(a) && !nodes.has(b)) metal.union(a, b);
	const supplies = new Set([...form.batteries, ...form.sources].map(({ negative }) => metal.find(negative)));
	const chassisNets = new Set([...nodes].map(nets.of));
	return {
		nodes,
		bonds: study.conductors.filter(
			({ branch: { a, b } }) => nodes.has(a) !== nodes.has(b) && supplies.has(metal.find(nodes.has(a) ? b : a))
		),
		returning: form.loads.filter(
			(load) => !supplies.has(metal.find(load.negative)) && chassisNets.has(nets.of(load.negative)) && standing(study, load) === 'fed'
		)
	};
});

/** What shares metal when the chassis is taken away: isolated outputs are systems of their own. */
export interface BondedSystem {
	readonly batteries: readonly BatteryBranch[];
	/** Batteries and sources that feed it. */
	readonly parts: readonly PartId[];
	readonly bonds: readonly ConductorView[];
	/** By a conductor, or by sitting on the metalwork itself. */
	readonly isBonded: boolean;
	/** Whether a node is of it. */
	has(node: NodeIndex): boolean;
}

export const bondedSystems = derived((study): readonly BondedSystem[] => {
	const { network } = study;
	const { nodes, bonds } = chassisOf(study);
	const metal = unionFind(network.nodeCount);
	for (const { a, b } of network.branches) if (!nodes.has(a) && !nodes.has(b)) metal.union(a, b);
	const supplies = [...network.batteries, ...network.sources];
	// What stands on the metalwork itself is joined to it there and nowhere else.
	for (const { positive, negative } of supplies) if (!nodes.has(positive) && !nodes.has(negative)) metal.union(positive, negative);
	const rootOf = ({ positive, negative }: (typeof supplies)[number]) => metal.find(nodes.has(positive) ? negative : positive);
	const roots = new Set(supplies.map(rootOf));
	return [...roots].map((root) => {
		const own = bonds.filter(({ branch: { a, b } }) => metal.find(nodes.has(a) ? b : a) === root);
		const feeding = supplies.filter((supply) => rootOf(supply) === root);
		return {
			batteries: network.batteries.filter((battery) => rootOf(battery) === root),
			parts: feeding.map(({ part }) => part),
			bonds: own,
			isBonded: own.length > 0 || feeding.some(({ negative }) => nodes.has(negative)),
			has: (node) => metal.find(node) === root
		};
	});
});
