import type { Network, NodeIndex } from '#core/network';
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

/** Shortest ways along conductors from every node to its nearest goal; bars, switches and fuses have no length. */
export function distancesTo<Goal>({ nodeCount, branches, branchesAt }: Network, { at, enters, lengthM }: Goals<Goal>): Distances<Goal> {
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
		for (const index of branchesAt[node]!) {
			const { a, b } = branches[index]!;
			const far = a === node ? b : a;
			const reached = priority + lengthM[index]!;
			if (reached >= least[far]! || !enters(far)) continue;
			least[far] = reached;
			next[far] = node;
			goals[far] = goals[node];
			open.push(reached, far);
		}
	}
	return { lengthM: least, goal: (node) => goals[node], next };
}
