/** Things that were grouped: parts, areas and notes that bear the same name. */
import { itemKey, parseItemKey, type ItemKey } from './item.ts';
import type { Diagram } from './schema.ts';

type Grouped = Pick<Diagram, 'parts' | 'areas' | 'notes'>;

export function groupOf({ parts, areas, notes }: Grouped, key: ItemKey): string | null {
	const { kind, id } = parseItemKey(key);
	const record = kind === 'part' ? parts : kind === 'area' ? areas : kind === 'note' ? notes : {};
	return (Object.hasOwn(record, id) && record[id]!.group) || null;
}

/** All that belongs to a group, in the order of the diagram. */
export function membersOf({ parts, areas, notes }: Grouped, group: string): ItemKey[] {
	const of = (kind: 'part' | 'area' | 'note', record: Readonly<Record<string, { readonly group?: string | undefined }>>): ItemKey[] =>
		Object.entries(record).flatMap(([id, thing]) => (thing.group === group ? [itemKey(kind, id)] : []));
	return [...of('area', areas), ...of('part', parts), ...of('note', notes)];
}

/** These things and all that belong to one of their groups. */
export function withGroups(diagram: Grouped, keys: readonly ItemKey[]): ItemKey[] {
	return [
		...new Set(
			keys.flatMap((key) => {
				const group = groupOf(diagram, key);
				return group === null ? [key] : [key, ...membersOf(diagram, group)];
			})
		)
	];
}

/** Whether a thing is to stay where it is. */
export function isLockedIn(diagram: Diagram, key: ItemKey): boolean {
	const { kind, id } = parseItemKey(key);
	if (kind === 'stud') return false;
	const record = diagram[`${kind}s`];
	return Object.hasOwn(record, id) && record[id]!.locked === true;
}

/** A name no group has. @param more names that are taken as well */
export function freshGroup({ parts, areas, notes }: Grouped, more: Iterable<string> = []): string {
	const taken = new Set([...[parts, areas, notes].flatMap((record) => Object.values(record).map(({ group }) => group)), ...more]);
	let number = 1;
	while (taken.has(`G${number}`)) number += 1;
	return `G${number}`;
}
