/** Fuse blocks on other parts' studs. A block may carry a block, so a block has a chain of hosts. */
import { has } from './ids.ts';
import type { Diagram, Part, PartId } from './schema.ts';

/** The part a block sits on, the part that one sits on, and so on; empty for a part that stands by itself. */
export function hostsOf(diagram: Pick<Diagram, 'mounts'>, id: PartId): PartId[] {
	const hosts: PartId[] = [];
	let current = id;
	while (has(diagram.mounts, current)) {
		current = diagram.mounts[current]!.part;
		if (current === id || hosts.includes(current)) break;
		hosts.push(current);
	}
	return hosts;
}

/** These parts and every block that sits on one of them, directly or on another block. */
export function withBlocks(diagram: Pick<Diagram, 'mounts'>, ids: Iterable<PartId>): Set<PartId> {
	const all = new Set(ids);
	for (const block of Object.keys(diagram.mounts)) if (hostsOf(diagram, block).some((host) => all.has(host))) all.add(block);
	return all;
}

/** Conductors both of whose ends go with these parts, blocks on them included. */
export function conductorsAmong(diagram: Pick<Diagram, 'mounts' | 'conductors'>, ids: Iterable<PartId>): string[] {
	const moving = withBlocks(diagram, ids);
	return Object.entries(diagram.conductors)
		.filter(([, { from, to }]) => moving.has(from.part) && moving.has(to.part))
		.map(([id]) => id);
}

/** Where a part is: a block on another part's stud is where the part that carries it is. */
export function placeOf(diagram: Pick<Diagram, 'mounts' | 'parts'>, id: PartId): Part['at'] {
	const carrier = hostsOf(diagram, id).at(-1) ?? id;
	return diagram.parts[has(diagram.parts, carrier) ? carrier : id]!.at;
}
