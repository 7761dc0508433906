import type { NodeIndex } from './types.ts';
import { unionFind, type UnionFind } from './union-find.ts';

interface Joined {
	readonly nodeCount: number;
	readonly branches: readonly { readonly a: NodeIndex; readonly b: NodeIndex }[];
	readonly batteries: readonly { readonly positive: NodeIndex; readonly negative: NodeIndex }[];
}

/** Nodes joined by branches and batteries, by node index: only between such has a voltage a value. */
export function islandsOf({ nodeCount, branches, batteries }: Joined): UnionFind {
	const islands = unionFind(nodeCount);
	for (const { a, b } of branches) islands.union(a, b);
	for (const { positive, negative } of batteries) islands.union(positive, negative);
	return islands;
}
