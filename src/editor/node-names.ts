import { terminalRef, type StudKey } from '#core/diagram';
import type { NodeIndex } from '#core/network';
import { partName, type Study } from '#core/rules';

const INTERNAL = '@';

/** Terminal that stands for a node: a stud of the drawing before anything inside a part; undefined where there is none. */
export function terminalOf({ network }: Study): (node: NodeIndex) => StudKey | undefined {
	const known = new Map<NodeIndex, StudKey>();
	for (const [key, node] of network.nodeOf) if (!known.has(node) && !key.includes(INTERNAL)) known.set(node, key);
	return (node) => known.get(node);
}

/** "B1 +", "the chassis", or the part a node lies in. */
export function nodeNames(study: Study): (node: NodeIndex) => string {
	const stud = terminalOf(study);
	const inside = new Map<NodeIndex, StudKey>();
	for (const [key, node] of study.network.nodeOf) if (!inside.has(node)) inside.set(node, key);
	return (node) => {
		const key = stud(node);
		if (key !== undefined) return study.studName(key);
		const other = inside.get(node);
		if (other === undefined || other.startsWith(INTERNAL)) return 'the chassis';
		return partName(study.part(terminalRef(other).part));
	};
}
