import type { BatteryBranch, Branch, NodeIndex, Pole, SourceBranch } from './types.ts';
import { unionFind } from './union-find.ts';

/** What joins metal to metal: enough of a network to tell poles. */
interface Metalwork {
	readonly nodeCount: number;
	readonly branches: readonly Pick<Branch, 'a' | 'b'>[];
	readonly batteries: readonly Pick<BatteryBranch, 'positive' | 'negative'>[];
	readonly sources: readonly Pick<SourceBranch, 'positive' | 'negative'>[];
}

/**
 * Pole of each node with every switch closed. Metal that carries some battery's or source's + terminal is
 * positive, also where another battery's − sits on it: the midpoint of a series string is not grounded, so it
 * must be treated as positive. Metal with − terminals only is negative.
 */
export function polesOf({ nodeCount, branches, batteries, sources }: Metalwork): readonly Pole[] {
	const metal = unionFind(nodeCount);
	for (const { a, b } of branches) metal.union(a, b);

	const pole = new Map<NodeIndex, Pole>();
	const supplies = [...batteries, ...sources];
	for (const { negative } of supplies) pole.set(metal.find(negative), 'negative');
	for (const { positive } of supplies) pole.set(metal.find(positive), 'positive');
	for (const { positive, negative } of supplies) if (metal.same(positive, negative)) pole.set(metal.find(positive), 'shorted');
	return Array.from({ length: nodeCount }, (_, node) => pole.get(metal.find(node)) ?? 'floating');
}
