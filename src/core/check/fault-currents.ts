import type { NodeIndex } from '#core/network';
import type { Study } from '#core/rules';

const known = new WeakMap<Study['faults'], Map<NodeIndex, number | null>>();

/** Greatest short-circuit current at a node, amps, to the return beside it; null where a short is not defined. Kept. */
export function faultCurrentA({ faults }: Study, node: NodeIndex): number | null {
	let byNode = known.get(faults);
	if (!byNode) known.set(faults, (byNode = new Map()));
	let currentA = byNode.get(node);
	if (currentA === undefined) byNode.set(node, (currentA = faults.short(node, 'greatest')?.currentA ?? null));
	return currentA;
}
