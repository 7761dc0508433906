/** Where conductors go, whatever they are: follows from the form of the network. */
import { studKey, type ConductorId, type PartId, type StudKey } from '#core/diagram';
import { unionFind, type NodeIndex } from '#core/network';
import { groupBy } from './group-by.ts';
import { ofForm } from './watch.ts';

/** Studs that a conductor's end names, whether or not they exist. */
export const wiredStuds = ofForm(
	({ diagram }): ReadonlySet<StudKey> => new Set(Object.values(diagram.conductors).flatMap(({ from, to }) => [studKey(from), studKey(to)]))
);

export const partIds = ofForm(({ diagram }): ReadonlySet<PartId> => new Set(Object.keys(diagram.parts)));

/** Parts that a conductor, a block or a block's host joins to something. */
export const wiredParts = ofForm(
	({ diagram }): ReadonlySet<PartId> =>
		new Set([
			...Object.values(diagram.conductors).flatMap(({ from, to }) => [from.part, to.part]),
			...Object.entries(diagram.mounts).flatMap(([block, stud]) => [block, stud.part])
		])
);

/** Conductors of the network at each node; one from a node to itself is listed once. */
export const conductorsByNode = ofForm(({ form }): ReadonlyMap<NodeIndex, readonly ConductorId[]> => {
	const at = new Map<NodeIndex, ConductorId[]>();
	const land = (node: NodeIndex, id: ConductorId): void => {
		const ids = at.get(node);
		if (ids) ids.push(id);
		else at.set(node, [id]);
	};
	for (const [id, { from, to }] of form.nodeOfEnd) {
		land(from, id);
		if (from !== to) land(to, id);
	}
	return at;
});

/** Conductors of the network at each part; one from a part to itself is listed once. */
export const conductorsByPart = ofForm(({ form, diagram }): ReadonlyMap<PartId, readonly ConductorId[]> => {
	const ends = [...form.nodeOfEnd.keys()].flatMap((id) => {
		const { from, to } = diagram.conductors[id]!;
		return [...new Set([from.part, to.part])].map((part) => ({ part, id }));
	});
	return new Map([...groupBy(ends, ({ part }) => part)].map(([part, at]) => [part, at.map(({ id }) => id)]));
});

/** Metal that bars, switches and shunts join, without conductors and without devices. */
export const busMetal = ofForm(({ form }) => {
	const joined = unionFind(form.nodeCount);
	for (const { a, b, kind, device } of form.branches) if (kind !== 'conductor' && !device) joined.union(a, b);
	return joined;
});

/** Metal between devices: everything joined without passing a fuse or breaker. */
export const deviceZones = ofForm(({ form }) => {
	const joined = unionFind(form.nodeCount);
	for (const { a, b, device } of form.branches) if (!device) joined.union(a, b);
	return joined;
});

interface TwoPole {
	readonly positive: NodeIndex;
	readonly negative: NodeIndex;
}

type NodesByNet = ReadonlyMap<number, ReadonlySet<NodeIndex>>;

/** Terminals of batteries and of sources, by pole and net. */
export const supplyNodes = ofForm(({ form, nets }) => {
	const byNet = (supplies: readonly TwoPole[], pole: keyof TwoPole): NodesByNet => {
		const nodes = new Map<number, Set<NodeIndex>>();
		for (const supply of supplies) {
			const net = nets.of(supply[pole]);
			nodes.set(net, (nodes.get(net) ?? new Set<NodeIndex>()).add(supply[pole]));
		}
		return nodes;
	};
	const both = (supplies: readonly TwoPole[]) => ({ positive: byNet(supplies, 'positive'), negative: byNet(supplies, 'negative') });
	return { batteries: both(form.batteries), sources: both(form.sources) };
});
