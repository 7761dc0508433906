/**
 * Bridges of a graph: edges on no loop, whose removal cuts it in two. Tarjan, "A note on finding the bridges of a
 * graph" (1974), without recursion: a chain of wiring may be thousands of nodes long.
 *
 * @returns 1 by edge for a bridge; an edge from a node to itself is none
 */
export function bridgesOf(nodeCount: number, edges: readonly { readonly from: number; readonly to: number }[]): Uint8Array {
	const first = new Int32Array(nodeCount + 1);
	for (const { from, to } of edges) {
		first[from + 1]!++;
		first[to + 1]!++;
	}
	for (let node = 0; node < nodeCount; node++) first[node + 1]! += first[node]!;
	const place = first.slice(0, nodeCount);
	const at = new Int32Array(2 * edges.length);
	edges.forEach(({ from, to }, index) => {
		at[place[from]!++] = index;
		at[place[to]!++] = index;
	});

	const isBridge = new Uint8Array(edges.length);
	const visit = new Int32Array(nodeCount);
	/** Earliest visited node reached from a node or what was visited from it, without going back the way it came. */
	const low = new Int32Array(nodeCount);
	const cameBy = new Int32Array(nodeCount).fill(-1);
	const next = first.slice(0, nodeCount);
	let visits = 0;
	for (let root = 0; root < nodeCount; root++) {
		if (visit[root] !== 0) continue;
		visit[root] = low[root] = ++visits;
		for (let node = root; node >= 0;) {
			if (next[node]! < first[node + 1]!) {
				const edge = at[next[node]!++]!;
				const to = edges[edge]!.from === node ? edges[edge]!.to : edges[edge]!.from;
				if (edge === cameBy[node] || to === node) continue;
				if (visit[to] === 0) {
					visit[to] = low[to] = ++visits;
					cameBy[to] = edge;
					node = to;
				} else low[node] = Math.min(low[node]!, visit[to]!);
				continue;
			}
			const edge = cameBy[node]!;
			if (edge < 0) break;
			const before = edges[edge]!.from === node ? edges[edge]!.to : edges[edge]!.from;
			if (low[node]! > visit[before]!) isBridge[edge] = 1;
			low[before] = Math.min(low[before]!, low[node]!);
			node = before;
		}
	}
	return isBridge;
}
