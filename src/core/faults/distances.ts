import { byForm, type Network, type NodeIndex } from '#core/network';
import { heap } from './heap.ts';

export interface Distances<Goal> {
	/** Metres of conductor to the nearest goal; Infinity where none is reached. */
	readonly lengthM: Float64Array;
	readonly goal: (node: NodeIndex) => Goal | undefined;
	/** The next node on the shortest way there, −1 at the goal itself. */
	readonly next: Int32Array;
}

export interface Goals<Goal> {
	readonly at: readonly { readonly node: NodeIndex; readonly goal: Goal }[];
	readonly enters: (node: NodeIndex) => boolean;
	/** Metres by branch. */
	readonly lengthM: Float64Array;
}

/** Branches at each node with their far ends, from `first[node]` on: flat, because all of them are walked. */
const neighbours = byForm(({ nodeCount, branches, branchesAt }) => {
	const first = new Int32Array(nodeCount + 1);
	branchesAt.forEach((at, node) => (first[node + 1] = first[node]! + at.length));
	const branch = Int32Array.from(branchesAt.flat());
	const far = new Int32Array(branch.length);
	for (let node = 0; node < nodeCount; node++) {
		for (let i = first[node]!; i < first[node + 1]!; i++) {
			const { a, b } = branches[branch[i]!]!;
			far[i] = a === node ? b : a;
		}
	}
	return { first, branch, far };
});

/** Shortest ways along conductors from every node to its nearest goal; bars, switches and fuses have no length. */
export function distancesTo<Goal>(network: Network, { at, enters, lengthM }: Goals<Goal>): Distances<Goal> {
	const { nodeCount } = network;
	const { first, branch, far } = neighbours(network);
	const least = new Float64Array(nodeCount).fill(Infinity);
	const next = new Int32Array(nodeCount).fill(-1);
	const goals: (Goal | undefined)[] = new Array(nodeCount);
	const open = heap();
	for (const { node, goal } of at) {
		if (least[node] === 0) continue;
		least[node] = 0;
		goals[node] = goal;
		open.push(0, node);
	}
	while (open.size > 0) {
		const { item: node, priority } = open.pop();
		if (priority > least[node]!) continue;
		for (let i = first[node]!; i < first[node + 1]!; i++) {
			const to = far[i]!;
			const reached = priority + lengthM[branch[i]!]!;
			if (reached >= least[to]! || !enters(to)) continue;
			least[to] = reached;
			next[to] = node;
			goals[to] = goals[node];
			open.push(reached, to);
		}
	}
	return { lengthM: least, goal: (node) => goals[node], next };
}
