import type { Network } from './types.ts';
import { unionFind, type UnionFind } from './union-find.ts';

/** Nodes joined by branches and batteries, by node index: only between such has a voltage a value. */
export function islandsOf({ nodeCount, branches, batteries }: Pick<Network, 'nodeCount' | 'branches' | 'batteries'>): UnionFind {
	const islands = unionFind(nodeCount);
	for (const { a, b } of branches) islands.union(a, b);
	for (const { positive, negative } of batteries) islands.union(positive, negative);
	return islands;
}
