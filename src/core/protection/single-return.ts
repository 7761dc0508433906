/**
 * Most returns serve one load: what a fault can send through such a one is what can reach that load's positive
 * terminal, limited by the same devices, and needs no flow of its own.
 */
import { unionFind, type LoadBranch, type Form, type SourceBranch } from '#core/network';
import type { FlowTree } from './tree-flow.ts';

/** The one load or source behind this end of a branch between negative nodes; null when there are others, or a supply. */
export type SingleReturn = (branch: number, end: 'from' | 'to') => LoadBranch | SourceBranch | null;

/**
 * Holds for systems whose negative metal is one piece without devices in it, and where nothing but the upper pole of a
 * battery is positive; for others there is no such answer.
 *
 * @param metal tree of all branches
 */
export function singleReturns(network: Form, metal: FlowTree): SingleReturn {
	if (!isPlain(network)) return () => null;
	const { nodeCount, loads, sources, batteries, branches } = network;
	const users = [...loads, ...sources];
	// Added up over one side of a bridge: how many terminals there are, and the number of the terminal if it is one.
	const counts = new Float64Array(nodeCount);
	const numbers = new Float64Array(nodeCount);
	users.forEach(({ negative }, i) => {
		counts[negative]! += 1;
		numbers[negative]! += i;
	});
	// A source or battery behind the end can drive as well as be driven.
	for (const { negative } of [...batteries, ...sources]) counts[negative]! += 2;
	const count = metal.flow(counts);
	const number = metal.flow(numbers);
	return (branch, end) => {
		if (count.intoEnd(branch, end) !== 1) return null;
		const user = users[number.intoEnd(branch, end)!]!;
		return network.poles[user.positive] === 'positive' && branches[branch]!.device === null ? user : null;
	};
}

function isPlain({ nodeCount, branches, batteries, sources, loads, poles }: Form): boolean {
	const supplies = [...batteries, ...sources];
	if (supplies.some(({ positive, negative }) => poles[positive] !== 'positive' || poles[negative] !== 'negative')) return false;
	if (loads.some(({ positive, negative }) => poles[positive] === 'negative' || poles[negative] === 'positive')) return false;
	if (branches.some(({ a, device }) => device !== null && poles[a] === 'negative')) return false;
	const metal = unionFind(nodeCount);
	for (const { a, b } of branches) metal.union(a, b);
	return supplies.every(({ negative }) => metal.same(negative, supplies[0]!.negative));
}
