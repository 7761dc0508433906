/** Grouping and locking what is selected, each one step. */
import {
	freshGroup,
	groupItems,
	groupOf,
	idsByKind,
	isLockedIn,
	lockItems,
	membersOf,
	reroute as rerouteConductors,
	type ItemKey
} from '#core/diagram';
import { drawingMessages } from './drawing-messages.ts';
import type { Editor } from './editor.svelte.ts';

export function group(editor: Editor): void {
	const { parts, areas, notes } = idsByKind(editor.selection);
	editor.run(groupItems({ parts, areas, notes, group: freshGroup(editor.diagram) }));
}

/** Takes every group apart of which something is selected. */
export function ungroup(editor: Editor): void {
	const { diagram } = editor;
	const groups = new Set([...editor.selection].flatMap((key) => groupOf(diagram, key) ?? []));
	if (groups.size === 0) return editor.refuse(drawingMessages.noGroup);
	const { parts, areas, notes } = idsByKind([...groups].flatMap((name) => membersOf(diagram, name)));
	editor.run(groupItems({ parts, areas, notes, group: null }));
}

/** Whether all that is selected is locked already. */
export const allLocked = ({ diagram, selection }: Editor): boolean =>
	selection.size > 0 && [...selection].filter((key) => !key.startsWith('stud:')).every((key) => isLockedIn(diagram, key));

/** Locks what is selected, or unlocks it where all of it is locked. */
export function toggleLock(editor: Editor, keys: Iterable<ItemKey> = editor.selection): void {
	const { studs: _, ...things } = idsByKind(new Set(keys));
	editor.run(lockItems({ ...things, locked: !allLocked(editor) }));
}

/** Leaves the routes of the selected conductors to the program again; of all, with none selected. */
export function reroute(editor: Editor): void {
	const { conductors } = idsByKind(editor.selection);
	const all = Object.keys(editor.diagram.conductors);
	const chosen = conductors.length > 0 ? conductors : all;
	if (chosen.length === 0) return editor.refuse(drawingMessages.noConductors);
	editor.run(rerouteConductors({ conductors: chosen }));
}
