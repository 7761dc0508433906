/**
 * Nodes that hang on the rest by one conductance, directly or by way of others that do: dead ends, as most wiring is
 * when nothing draws. Ohms from such a node to the node where its tree stands are a plain sum along the way.
 */
export interface PendantTrees {
	/** By node: what it hangs on, −1 where it does not hang, and ohms to that. */
	readonly support: Int32Array;
	readonly ohm: Float64Array;
	/** By node: the first node on its way that does not hang; the node itself where it does not. */
	readonly foot: Int32Array;
	/** By node: ohms to its foot. */
	readonly footOhm: Float64Array;
	/** Ohms between two nodes with one foot. */
	withinOhm(a: number, b: number): number;
}

/** What is left of the network at a node when the nodes before it in the order have been eliminated. */
export interface Remainder {
	/** Nodes it is then joined to. */
	readonly joined: readonly number[];
	/** Ohms to the one node, where there is one. */
	readonly ohm: number;
}

/** @param order of elimination: a dead end comes before what it hangs on */
export function pendantTrees(order: Int32Array, isHeld: Uint8Array, remainderOf: (node: number) => Remainder): PendantTrees {
	const support = new Int32Array(order.length).fill(-1);
	const ohm = new Float64Array(order.length);
	// Where a node is part of a mesh, what remains after it is not the network itself any more.
	const isMeshed = isHeld.slice();
	for (const node of order) {
		const { joined, ohm: ohms } = remainderOf(node);
		if (joined.length === 1 && !isMeshed[node]) {
			support[node] = joined[0]!;
			ohm[node] = ohms;
		} else for (const other of joined) isMeshed[other] = 1;
	}

	const foot = new Int32Array(order.length);
	const footOhm = new Float64Array(order.length);
	const steps = new Int32Array(order.length);
	for (let i = order.length - 1; i >= 0; i--) {
		const node = order[i]!;
		const under = support[node]!;
		foot[node] = under < 0 ? node : foot[under]!;
		if (under < 0) continue;
		footOhm[node] = ohm[node]! + footOhm[under]!;
		steps[node] = steps[under]! + 1;
	}
	return {
		support,
		ohm,
		foot,
		footOhm,
		withinOhm(a, b) {
			let sum = 0;
			while (a !== b) {
				if (steps[a]! < steps[b]!) [a, b] = [b, a];
				sum += ohm[a]!;
				a = support[a]!;
			}
			return sum;
		}
	};
}
