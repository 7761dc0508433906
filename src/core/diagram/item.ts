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
