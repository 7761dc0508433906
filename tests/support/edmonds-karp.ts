/**
 * Maximum flow as the textbooks have it: Edmonds and Karp, "Theoretical improvements in algorithmic efficiency for
 * network flow problems" (1972): augment along shortest paths in a matrix of residual capacities. Slow and plain on
 * purpose: it is what the program's own method is compared with. Infinite capacities are given as a large number.
 */
export function edmondsKarp(
	nodeCount: number,
	arcs: readonly { from: number; to: number; capacity: number }[],
	source: number,
	sink: number
): number {
	const residual = Array.from({ length: nodeCount }, () => new Float64Array(nodeCount));
	for (const { from, to, capacity } of arcs) residual[from]![to]! += capacity;

	let flow = 0;
	for (;;) {
		const parent = new Int32Array(nodeCount).fill(-1);
		parent[source] = source;
		const queue = [source];
		for (const node of queue) {
			residual[node]!.forEach((capacity, to) => {
				if (capacity <= 0 || parent[to]! >= 0) return;
				parent[to] = node;
				queue.push(to);
			});
		}
		if (parent[sink]! < 0) return flow;
		let least = Infinity;
		for (let node = sink; node !== source; node = parent[node]!) least = Math.min(least, residual[parent[node]!]![node]!);
		for (let node = sink; node !== source; node = parent[node]!) {
			residual[parent[node]!]![node]! -= least;
			residual[node]![parent[node]!]! += least;
		}
		flow += least;
	}
}
