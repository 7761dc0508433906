/** Which node to remove next, and which neighbours it then has. */
export interface Order {
	readonly order: Int32Array;
	/** By node: neighbours at the moment of its removal, original or by fill; all of them are removed later. */
	readonly later: readonly (readonly number[])[];
}

/**
 * Exact minimum degree: always the node with the fewest neighbours left. Wiring is nearly a tree, so most nodes go
 * with one or two neighbours and hardly any fill appears.
 */
export function minimumDegreeOrder(nodeCount: number, edges: readonly (readonly [number, number])[]): Order {
	const neighbours: Set<number>[] = Array.from({ length: nodeCount }, () => new Set());
	for (const [a, b] of edges) {
		if (a === b) continue;
		neighbours[a]!.add(b);
		neighbours[b]!.add(a);
	}

	// Entries are not removed when a degree changes; a stale one is recognised when it is taken.
	const byDegree: number[][] = [];
	const file = (node: number): void => void (byDegree[neighbours[node]!.size] ??= []).push(node);
	for (let node = nodeCount - 1; node >= 0; node--) file(node);

	const removed = new Uint8Array(nodeCount);
	const order = new Int32Array(nodeCount);
	const later: (readonly number[])[] = new Array(nodeCount);
	let degree = 0;
	for (let count = 0; count < nodeCount;) {
		const node = byDegree[degree]?.pop();
		if (node === undefined) {
			degree++;
			continue;
		}
		if (removed[node] || neighbours[node]!.size !== degree) continue;
		removed[node] = 1;
		order[count++] = node;

		const left = [...neighbours[node]!];
		later[node] = left;
		for (const a of left) {
			const ofA = neighbours[a]!;
			ofA.delete(node);
			for (const b of left) if (b !== a) ofA.add(b);
			file(a);
		}
		degree = Math.max(0, degree - 1);
	}
	return { order, later };
}
