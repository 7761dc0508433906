/** Names anything a user can select: "part:B1", "conductor:C3", "stud:D1.L", "area:A1", "note:N1", "underlay:U1". */
export type ItemKind = 'part' | 'conductor' | 'stud' | FrameKind;
/** What is a rectangle on the drawing and nothing else. */
export type FrameKind = 'area' | 'note' | 'underlay';
export type ItemKey = `${ItemKind}:${string}`;

export const itemKey = (kind: ItemKind, id: string): ItemKey => `${kind}:${id}`;

export function parseItemKey(key: ItemKey): { kind: ItemKind; id: string } {
	const colon = key.indexOf(':');
	return { kind: key.slice(0, colon) as ItemKind, id: key.slice(colon + 1) };
}

/** Ids by the record of the diagram they stand in; of studs their keys. */
export type IdsByKind = Record<`${ItemKind}s`, string[]>;

export function idsByKind(keys: Iterable<ItemKey>): IdsByKind {
	const ids: IdsByKind = { parts: [], conductors: [], studs: [], areas: [], notes: [], underlays: [] };
	for (const key of keys) {
		const { kind, id } = parseItemKey(key);
		ids[`${kind}s`].push(id);
	}
	return ids;
}
