import { unionFind, type LoadBranch, type Form, type NodeIndex, type SourceBranch } from '#core/network';

/** How a load gets its energy from the bank. */
export interface Rail {
	/** Volts at the load, for draws given in amps. */
	readonly volts: number;
	/** Of all converters on the way. */
	readonly efficiency: number;
}

export interface Rails {
	/** Null for a load that the bank does not feed. */
	of(load: Pick<LoadBranch, 'positive'>): Rail | null;
	/** True for a source that brings energy into the bank from elsewhere. */
	bringsIn(source: SourceBranch): boolean;
}

/** @param bank positive terminals of the batteries that count, and their voltage together */
export function railsOf(network: Form, bank: { readonly positives: readonly NodeIndex[]; readonly volts: number }): Rails {
	const metal = unionFind(network.nodeCount);
	for (const { a, b } of network.branches) metal.union(a, b);
	const bankMetal = new Set(bank.positives.map(metal.find));
	const isOnBank = (node: NodeIndex): boolean => bankMetal.has(metal.find(node));

	const railAt = (node: NodeIndex, seen: ReadonlySet<number>): Rail | null => {
		if (isOnBank(node)) return { volts: bank.volts, efficiency: 1 };
		const source = network.sources.find(({ index, fedBy, positive }) => fedBy !== null && !seen.has(index) && metal.same(positive, node));
		if (!source) return null;
		const input = railAt(network.loads[source.fedBy!]!.positive, new Set([...seen, source.index]));
		return input && { volts: source.setV, efficiency: input.efficiency * source.efficiency };
	};
	return {
		of: ({ positive }) => railAt(positive, new Set()),
		bringsIn: ({ positive, fedBy }) => isOnBank(positive) && (fedBy === null || railAt(network.loads[fedBy]!.positive, new Set()) === null)
	};
}
