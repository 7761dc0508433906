import { unionFind, type Network, type NodeIndex, type UnionFind } from '#core/network';
import type { Levels } from './circuit.ts';

/** What hangs together in one case. */
export interface Connection {
	/** Joined by closed branches, batteries and sources that are on: one reference each. */
	readonly islands: UnionFind;
	/** Sources that can deliver: on, and their input fed. */
	readonly sourceOn: readonly boolean[];
	/** Sources that alone hold their rail: without them, their terminals are on different islands. */
	readonly holdsRail: readonly boolean[];
	/** Loads with a battery or source between their terminals. */
	readonly loadFed: readonly boolean[];
	/** 1 at the node of each island that is held at 0 V. */
	readonly pinned: Uint8Array;
}

/**
 * @param barred sources that must stay off whatever feeds them
 *
 * Converters may feed one another in a chain, so sources are switched on one after another, from those that are
 * fed from outside, until none is added; two that only feed each other stay off.
 */
export function connect(network: Network, levels: Levels, barred: ReadonlySet<number>): Connection {
	const { nodeCount, branches, batteries, sources, loads } = network;
	const metal = unionFind(nodeCount);
	const rigid = unionFind(nodeCount);
	branches.forEach(({ a, b }, i) => {
		if (!levels.closed[i]) return;
		metal.union(a, b);
		rigid.union(a, b);
	});
	const connected = batteries.filter(({ index }) => levels.battery[index]);
	for (const { positive, negative } of connected) rigid.union(positive, negative);

	const islands = unionFind(nodeCount);
	for (let node = 0; node < nodeCount; node++) islands.union(node, rigid.find(node));
	const supplied: NodeIndex[] = connected.map(({ positive }) => positive);
	const isLive = (node: NodeIndex): boolean => supplied.some((other) => islands.same(node, other));
	// A load shorted by metal has no supply between its terminals, even on a live island.
	const isFed = ({ positive, negative }: { positive: NodeIndex; negative: NodeIndex }): boolean =>
		islands.same(positive, negative) && !metal.same(positive, negative) && isLive(positive);

	const sourceOn = sources.map(() => false);
	for (let added = true; added;) {
		added = false;
		for (const source of sources) {
			const { index, maxA, fedBy, positive, negative } = source;
			if (sourceOn[index] || barred.has(index) || levels.source[index]! <= 0 || maxA <= 0) continue;
			if (fedBy !== null && !isFed(loads[fedBy]!)) continue;
			sourceOn[index] = added = true;
			islands.union(positive, negative);
			supplied.push(positive);
		}
	}
	return {
		islands,
		sourceOn,
		holdsRail: sources.map(({ positive, negative }) => !rigid.same(positive, negative)),
		loadFed: loads.map(isFed),
		pinned: pins(network, islands)
	};
}

/** A negative battery terminal on the negative pole if the island has one, else the next best. */
function pins({ nodeCount, batteries, sources, poles }: Network, islands: UnionFind): Uint8Array {
	const supplies = [...batteries, ...sources].map(({ negative }) => negative);
	const candidates = [...supplies.filter((node) => poles[node] === 'negative'), ...supplies, ...Array(nodeCount).keys()];
	const pinned = new Uint8Array(nodeCount);
	const done = new Set<number>();
	for (const node of candidates) {
		const island = islands.find(node);
		if (done.has(island)) continue;
		done.add(island);
		pinned[node] = 1;
	}
	return pinned;
}
