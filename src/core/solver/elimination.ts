/**
 * Node voltages of a network of conductances by star-mesh elimination: removing a node replaces its star of
 * conductances by the equivalent mesh. Conductances between nodes and to the reference are kept apart, so that
 * only sums and products of positive numbers occur; nothing is ever subtracted, and a network with a conductance
 * spread of 1e8, or hardly tied to its reference, keeps full precision.
 */
import { minimumDegreeOrder } from './order.ts';
import { pendantTrees, type PendantTrees } from './pendant-trees.ts';

export interface Topology {
	readonly nodeCount: number;
	/** Node pairs; an edge may join a node to itself and several may join the same pair. */
	readonly edges: readonly (readonly [number, number])[];
}

/** The order of elimination and where fill appears: depends on the topology alone, so values can change freely. */
export interface Elimination {
	/**
	 * @param conductanceS siemens by edge, zero or more
	 * @param pinned 1 at each node held at 0 V
	 */
	factor(conductanceS: Float64Array, pinned: Uint8Array): Factors;
}

export interface Factors {
	/** Volts by node for the amps injected at each node. What reaches a node with no way to a pin is dropped. */
	solve(injectionA: Float64Array): Float64Array;
	/**
	 * Ohms seen between two nodes, `b` null for the reference: as the power one ampere from one to the other would
	 * need, a sum of positive terms. Visits only the few nodes eliminated after the two. Infinity where no way joins them.
	 */
	resistanceOhm(a: number, b: number | null): number;
	/**
	 * 1 by node where ohms to other nodes may not be those of earlier factors of the same plan, to the last bit; null
	 * where that may be so anywhere. An edit of a dead end moves the nodes beyond it alone.
	 */
	changedSince(earlier: Factors): Uint8Array | null;
}

/** What ohms are made of. */
interface Workings {
	readonly pinned: Uint8Array;
	readonly total: Float64Array;
	readonly share: Float64Array;
	trees(): PendantTrees;
}

export function planElimination({ nodeCount, edges }: Topology): Elimination {
	const { order, later } = minimumDegreeOrder(nodeCount, edges);

	// Slot s of node k is its conductance to node column[s], which is removed after k.
	const start = new Int32Array(nodeCount + 1);
	for (let k = 0; k < nodeCount; k++) start[k + 1] = start[k]! + later[k]!.length;
	const column = Int32Array.from(later.flat());
	const slotOf = later.map((nodes, k) => new Map(nodes.map((node, i) => [node, start[k]! + i])));
	const slotBetween = (a: number, b: number): number => slotOf[a]!.get(b) ?? slotOf[b]!.get(a)!;
	const slotOfEdge = Int32Array.from(edges, ([a, b]) => (a === b ? -1 : slotBetween(a, b)));

	// In the order of removal, the slots of each node's mesh: one for each pair of later neighbours.
	const mesh = Int32Array.from(
		Array.from(order).flatMap((k) => later[k]!.flatMap((a, i) => later[k]!.slice(i + 1).map((b) => slotBetween(a, b))))
	);

	// What a node passes on reaches nodes on its way along `next` to the last one, and no others.
	const rank = new Int32Array(nodeCount);
	order.forEach((node, place) => (rank[node] = place));
	const nextOf = Int32Array.from(later, (nodes) => nodes.reduce((best, node) => (best < 0 || rank[node]! < rank[best]! ? node : best), -1));

	const workings = new WeakMap<Factors, Workings>();
	const changed = (before: Workings, after: Workings): Uint8Array | null => {
		const [trees, treesBefore] = [after.trees(), before.trees()];
		const isChanged = new Uint8Array(nodeCount);
		for (let i = nodeCount - 1; i >= 0; i--) {
			const k = order[i]!;
			const under = trees.support[k]!;
			if (under !== treesBefore.support[k] || after.pinned[k] !== before.pinned[k]) return null;
			if (under >= 0) isChanged[k] = trees.ohm[k] === treesBefore.ohm[k] ? isChanged[under]! : 1;
			else if (after.total[k] !== before.total[k] || !isSame(after.share, before.share, start[k]!, start[k + 1]!)) return null;
		}
		return isChanged;
	};

	const factor = (conductanceS: Float64Array, pinned: Uint8Array): Factors => {
		const between = new Float64Array(column.length);
		const share = new Float64Array(column.length);
		const toReference = new Float64Array(nodeCount);
		const total = new Float64Array(nodeCount);
		for (let e = 0; e < slotOfEdge.length; e++) if (slotOfEdge[e]! >= 0) between[slotOfEdge[e]!]! += conductanceS[e]!;

		let next = 0;
		for (const k of order) {
			const [first, end] = [start[k]!, start[k + 1]!];
			if (pinned[k]) {
				for (let s = first; s < end; s++) toReference[column[s]!]! += between[s]!;
				next += ((end - first) * (end - first - 1)) / 2;
				continue;
			}
			let sum = toReference[k]!;
			for (let s = first; s < end; s++) sum += between[s]!;
			total[k] = sum;
			if (sum > 0) for (let s = first; s < end; s++) share[s] = between[s]! / sum;
			for (let s = first; s < end; s++) {
				toReference[column[s]!]! += share[s]! * toReference[k]!;
				for (let t = s + 1; t < end; t++) between[mesh[next++]!]! += share[s]! * between[t]!;
			}
		}

		const solve = (injectionA: Float64Array): Float64Array => {
			const carried = injectionA.slice();
			for (const k of order) {
				const amps = carried[k]!;
				if (amps !== 0) for (let s = start[k]!; s < start[k + 1]!; s++) carried[column[s]!]! += share[s]! * amps;
			}
			const nodeV = new Float64Array(nodeCount);
			for (let i = nodeCount - 1; i >= 0; i--) {
				const k = order[i]!;
				if (total[k] === 0) continue;
				let volts = carried[k]! / total[k]!;
				for (let s = start[k]!; s < start[k + 1]!; s++) volts += share[s]! * nodeV[column[s]!]!;
				nodeV[k] = volts;
			}
			return nodeV;
		};

		let planted: PendantTrees | null = null;
		const trees = (): PendantTrees =>
			(planted ??= pendantTrees(order, pinned, (k) => {
				const joined: number[] = [];
				for (let s = start[k]!; s < start[k + 1]!; s++) if (between[s]! > 0) joined.push(column[s]!);
				return { joined, ohm: 1 / total[k]! };
			}));
		const carriedA = new Float64Array(nodeCount);
		const throughMeshOhm = (a: number, b: number | null): number => {
			carriedA[a] = 1;
			if (b !== null) carriedA[b] = -1;
			let ohms = 0;
			for (let [x, y] = [a, b ?? -1]; x >= 0 || y >= 0;) {
				const k = y < 0 || (x >= 0 && rank[x]! <= rank[y]!) ? x : y;
				const amps = carriedA[k]!;
				carriedA[k] = 0;
				if (amps !== 0 && !pinned[k]) {
					ohms += amps ** 2 / total[k]!;
					for (let s = start[k]!; s < start[k + 1]!; s++) carriedA[column[s]!]! += share[s]! * amps;
				}
				if (x === k) x = nextOf[k]!;
				if (y === k) y = nextOf[k]!;
			}
			return ohms;
		};
		const betweenFeet = new Map<number, number>();
		const resistanceOhm = (a: number, b: number | null): number => {
			if (a === b) return 0;
			const { foot, footOhm, withinOhm } = trees();
			const [footA, footB] = [foot[a]!, b === null ? nodeCount : foot[b]!];
			if (footA === footB) return withinOhm(a, b!);
			const key = Math.min(footA, footB) * (nodeCount + 1) + Math.max(footA, footB);
			let ohms = betweenFeet.get(key);
			if (ohms === undefined) betweenFeet.set(key, (ohms = throughMeshOhm(footA, b === null ? null : footB)));
			return footOhm[a]! + ohms + (b === null ? 0 : footOhm[b]!);
		};
		const factors: Factors = {
			solve,
			resistanceOhm,
			changedSince(earlier) {
				const before = workings.get(earlier);
				return before ? changed(before, own) : null;
			}
		};
		const own: Workings = { pinned, total, share, trees };
		workings.set(factors, own);
		return factors;
	};
	return { factor };
}

function isSame(a: Float64Array, b: Float64Array, first: number, end: number): boolean {
	for (let i = first; i < end; i++) if (a[i] !== b[i]) return false;
	return true;
}
