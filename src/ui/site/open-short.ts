/** Drops a short: on what is given, else on what is selected. */
import { parseItemKey, type ItemKey } from '#core/diagram';
import type { Editor } from '#editor';
import type { Workbench } from '../context.ts';

/** A stud or a conductor that the latest check saw on the positive side. */
export function canBeShorted({ check }: Pick<Editor, 'check'>, key: ItemKey): boolean {
	const { kind, id } = parseItemKey(key);
	const pole = kind === 'stud' ? check?.studPole[id] : kind === 'conductor' ? check?.conductors[id]?.pole : undefined;
	return pole === 'positive' || pole === 'shorted';
}

export function openShort({ editor, view }: Workbench, key?: ItemKey): void {
	view.shortAt = key ?? [...editor.selection].find((selected) => canBeShorted(editor, selected)) ?? null;
	view.dialog = 'short';
}
