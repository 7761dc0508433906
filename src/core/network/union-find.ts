/** Disjoint sets over 0 … size−1, with path halving; the smaller index stays the representative. */
export interface UnionFind {
	find(item: number): number;
	union(a: number, b: number): void;
	same(a: number, b: number): boolean;
}

export function unionFind(size: number): UnionFind {
	const parent = Int32Array.from({ length: size }, (_, i) => i);
	const find = (item: number): number => {
		while (parent[item] !== item) {
			parent[item] = parent[parent[item]!]!;
			item = parent[item]!;
		}
		return item;
	};
	return {
		find,
		union(a, b) {
			const [rootA, rootB] = [find(a), find(b)];
			if (rootA < rootB) parent[rootB] = rootA;
			else parent[rootA] = rootB;
		},
		same: (a, b) => find(a) === find(b)
	};
}
