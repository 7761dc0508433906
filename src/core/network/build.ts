import { studKey, type ConductorId, type Diagram, type PartId, type StudKey } from '#core/diagram';
import { CHASSIS, describe, type Link, type LinkEnd } from '#core/parts';
import { conductorOhm } from './conductor-ohm.ts';
import { earlierNetwork, remember, withResistances } from './earlier.ts';
import { elementsOf, type PartLink } from './elements.ts';
import { landing, type Landing, type Metal } from './landing.ts';
import { polesOf } from './poles.ts';
import type { Branch, Network, NodeIndex, PartLookup, Unresolved } from './types.ts';
import { unionFind } from './union-find.ts';

/**
 * The network of a diagram. Never throws on a diagram that passes its schema: conductors and mounts that name
 * something that is not there are left out and listed in `unresolved`. Chassis points are joined with one
 * another by the metalwork they are bolted to. `ohmMm2PerM` is the resistivity of conductors' copper; left
 * out, that of copper in service.
 */
export function buildNetwork(diagram: Diagram, lookup: PartLookup = describe, ohmMm2PerM?: number): Network {
	// Only of the program's own descriptions is it known what they depend on.
	if (lookup !== describe) return buildAfresh(diagram, lookup, ohmMm2PerM);
	const earlier = earlierNetwork(diagram);
	const network = earlier ? withResistances(earlier, diagram, ohmMm2PerM) : buildAfresh(diagram, lookup, ohmMm2PerM);
	remember({ diagram, ohmMm2PerM, network });
	return network;
}

function buildAfresh(diagram: Diagram, lookup: PartLookup, ohmMm2PerM?: number): Network {
	const lands = landing(diagram, lookup);
	const links: PartLink[] = [];
	const metals = new Set<Metal>();
	for (const [part, value] of Object.entries(diagram.parts)) {
		const described = lookup(value);
		for (const { id } of described.terminals) metals.add(`${part}.${id}`);
		for (const link of described.links) {
			links.push({ part, link });
			for (const end of endsOf(link)) metals.add(metalKey(part, end));
		}
	}

	const mounts = mountsOf(diagram, lookup, lands);
	const nodeOf = numberNodes([...metals], mounts.joined);
	const elements = elementsOf(links, (part, end) => nodeOf.get(metalKey(part, end))!);
	const conductors = conductorsOf(diagram, lands, nodeOf, elements.branches.length, ohmMm2PerM);
	const branches = [...elements.branches, ...conductors.branches];
	const nodeCount = new Set(nodeOf.values()).size;
	const { branchOfLink, batteries, sources, loads } = elements;
	return {
		nodeCount,
		branches,
		batteries,
		sources,
		loads,
		nodeOf,
		nodeOfEnd: conductors.nodeOfEnd,
		branchOfConductor: new Map(conductors.branches.map(({ origin, index }) => [origin.id, index])),
		branchOfLink,
		poles: polesOf({ nodeCount, branches, batteries, sources }),
		branchesAt: branchesAt(nodeCount, branches),
		unresolved: [...mounts.unresolved, ...conductors.unresolved]
	};
}

/** Branch indices at each node; a branch from a node to itself is listed once. */
export function branchesAt(nodeCount: number, branches: readonly Pick<Branch, 'a' | 'b'>[]): readonly (readonly number[])[] {
	const at: number[][] = Array.from({ length: nodeCount }, () => []);
	branches.forEach(({ a, b }, index) => {
		at[a]!.push(index);
		if (a !== b) at[b]!.push(index);
	});
	return at;
}

const metalKey = (part: PartId, end: LinkEnd): Metal => (end === CHASSIS ? CHASSIS : `${part}.${end}`);

const endsOf = (link: Link): readonly LinkEnd[] => ('between' in link ? link.between : [link.positive, link.negative]);

/** A block's plate lies bare on its host stud: one piece of metal. */
function mountsOf(diagram: Diagram, lookup: PartLookup, lands: Landing): { joined: [Metal, Metal][]; unresolved: Unresolved[] } {
	const joined: [Metal, Metal][] = [];
	const unresolved: Unresolved[] = [];
	for (const [id, host] of Object.entries(diagram.mounts)) {
		const block = lands.part(id);
		const plates = block ? lookup(block).terminals.filter((terminal) => terminal.mountingPlate) : [];
		const blockRef = { part: id, terminal: '' };
		if (!block || lookup(block).definition === null) unresolved.push({ kind: 'mount', id, ref: blockRef, reason: lands.whyNot(blockRef) });
		else if (plates.length === 0) unresolved.push({ kind: 'mount', id, ref: blockRef, reason: 'no-plate' });
		else if (!lands.terminal(host)) unresolved.push({ kind: 'mount', id, ref: host, reason: lands.whyNot(host) });
		else for (const plate of plates) joined.push([`${id}.${plate.id}`, studKey(host)]);
	}
	return { joined, unresolved };
}

function numberNodes(metals: readonly Metal[], joined: readonly (readonly [Metal, Metal])[]): Map<StudKey, NodeIndex> {
	const indexOf = new Map(metals.map((key, index) => [key, index]));
	const one = unionFind(metals.length);
	for (const [a, b] of joined) one.union(indexOf.get(a)!, indexOf.get(b)!);

	const numbers = new Map<number, NodeIndex>();
	return new Map(
		metals.map((key, index) => {
			const root = one.find(index);
			if (!numbers.has(root)) numbers.set(root, numbers.size);
			return [key, numbers.get(root)!];
		})
	);
}

type ConductorBranch = Branch & { readonly origin: { readonly kind: 'conductor'; readonly id: ConductorId } };

function conductorsOf(diagram: Diagram, lands: Landing, nodeOf: ReadonlyMap<StudKey, NodeIndex>, firstIndex: number, ohmMm2PerM?: number) {
	const branches: ConductorBranch[] = [];
	const nodeOfEnd = new Map<ConductorId, { from: NodeIndex; to: NodeIndex }>();
	const unresolved: Unresolved[] = [];
	for (const [id, conductor] of Object.entries(diagram.conductors)) {
		const [from, to] = [lands.metalOfEnd(id, 'from'), lands.metalOfEnd(id, 'to')];
		if (from === null || to === null) {
			const ref = from === null ? conductor.from : conductor.to;
			unresolved.push({ kind: 'conductor', id, ref, reason: lands.whyNot(ref) });
			continue;
		}
		const ends = { from: nodeOf.get(from)!, to: nodeOf.get(to)! };
		nodeOfEnd.set(id, ends);
		branches.push({
			index: firstIndex + branches.length,
			a: ends.from,
			b: ends.to,
			resistanceOhm: conductorOhm(conductor, ohmMm2PerM),
			origin: { kind: 'conductor', id },
			device: null,
			switchedBy: null,
			ratedA: null,
			kind: 'conductor'
		});
	}
	return { branches, nodeOfEnd, unresolved };
}
