import { unionFind, type Form } from '#core/network';
import { bridgesOf } from './bridges.ts';

/** Metal that no fuse or breaker interrupts, with every switch closed. */
export interface Zones {
	/**
	 * The zone of a branch whose ends stay joined without it and without a device between them: a flow into one end is
	 * then a flow into the other. Null for any other branch.
	 */
	onLoop(branch: number): number | null;
}

export function zonesOf({ nodeCount, branches }: Form): Zones {
	const free = branches.filter(({ device }) => !device);
	const isBridge = bridgesOf(
		nodeCount,
		free.map(({ a, b }) => ({ from: a, to: b }))
	);
	const zones = unionFind(nodeCount);
	for (const { a, b } of free) zones.union(a, b);
	const onLoop = new Map(free.flatMap(({ index, a }, i) => (isBridge[i] ? [] : [[index, zones.find(a)] as const])));
	return { onLoop: (branch) => onLoop.get(branch) ?? null };
}
