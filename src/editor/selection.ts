/** Which things of a diagram a set of item keys still names. */
import { parseItemKey, terminalRef, type Diagram, type ItemKey } from '#core/diagram';

export const NOTHING: ReadonlySet<ItemKey> = new Set();

const exists = (diagram: Diagram, key: ItemKey): boolean => {
	const { kind, id } = parseItemKey(key);
	if (kind === 'part') return Object.hasOwn(diagram.parts, id);
	if (kind === 'conductor') return Object.hasOwn(diagram.conductors, id);
	if (kind !== 'stud') return Object.hasOwn(diagram[`${kind}s`], id);
	return Object.hasOwn(diagram.parts, terminalRef(id).part);
};

/** The selection without what is gone; the same set when nothing is. */
export function pruned(diagram: Diagram, selection: ReadonlySet<ItemKey>): ReadonlySet<ItemKey> {
	const kept = [...selection].filter((key) => exists(diagram, key));
	return kept.length === selection.size ? selection : new Set(kept);
}

export const selectionOf = (diagram: Diagram, keys: Iterable<ItemKey>): ReadonlySet<ItemKey> => pruned(diagram, new Set(keys));
