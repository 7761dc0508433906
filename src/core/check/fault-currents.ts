import type { StudKey } from '#core/diagram';
import type { NodeIndex } from '#core/network';
import type { Study } from '#core/rules';

const known = new WeakMap<Study, Map<NodeIndex, number | null>>();

/** Greatest short-circuit current at a node, amps, to the return beside it; null where a short is not defined. Kept. */
export function faultCurrentA(study: Study, node: NodeIndex): number | null {
	let byNode = known.get(study);
	if (!byNode) known.set(study, (byNode = new Map()));
	let currentA = byNode.get(node);
	if (currentA === undefined) byNode.set(node, (currentA = study.faults.short(node, 'greatest')?.currentA ?? null));
	return currentA;
}

/** The same at each stud where it is defined. */
export function studFaults(study: Study): Record<StudKey, number> {
	const faults: Record<StudKey, number> = {};
	for (const [key, node] of study.network.nodeOf) {
		if (key.includes('@')) continue;
		const currentA = faultCurrentA(study, node);
		if (currentA !== null) faults[key] = currentA;
	}
	return faults;
}
