/** What keys, menus and buttons do with the selection. Each is one undo step, or a refusal in words. */
import {
	idsByKind,
	insertedIds,
	insertFragment,
	itemKey,
	isLockedIn,
	moveItems,
	removeItems,
	rotateParts,
	fragmentOf,
	type Fragment,
	type ItemKey
} from '#core/diagram';
import { translateBox, type Point } from '#core/geometry';
import { fragmentText, readFragment } from './clipboard.ts';
import { drawingMessages } from './drawing-messages.ts';
import type { Editor } from './editor.svelte.ts';
import { bodiesIn, shiftToFree } from './free-place.ts';
import { messages } from './messages.ts';
import { GRID_MM } from './new-part.ts';

/** Where copies are tried first. */
const BESIDE: Point = { x: 4 * GRID_MM, y: 4 * GRID_MM };
const AS_COPIED: Point = { x: 0, y: 0 };
/** Between copies and what is there. */
const CLEAR_MM = 20;

export function deleteSelection(editor: Editor): void {
	const { diagram, selection } = editor;
	if ([...selection].some((key) => isLockedIn(diagram, key))) return editor.refuse(drawingMessages.lockedDelete);
	const { studs: _, ...things } = idsByKind(selection);
	editor.run(removeItems(things));
}

export function selectAll(editor: Editor): void {
	const { parts, conductors, areas, notes } = editor.diagram;
	editor.select([
		...Object.keys(areas).map((id) => itemKey('area', id)),
		...Object.keys(parts).map((id) => itemKey('part', id)),
		...Object.keys(conductors).map((id) => itemKey('conductor', id)),
		...Object.keys(notes).map((id) => itemKey('note', id))
	]);
}

/** Moves the selected parts, areas, notes and pictures by steps of the grid; steps in quick succession are one undo step. */
export function nudge(editor: Editor, steps: Point, stepMm: number = GRID_MM): void {
	const command = moveItems(idsByKind(editor.selection), { x: steps.x * stepMm, y: steps.y * stepMm });
	if (!command) return editor.refuse(messages.nothingToMove);
	editor.run(command, { group: 'nudge' });
}

export function turn(editor: Editor, quarterTurns: 1 | -1 = 1): void {
	const { parts } = idsByKind(editor.selection);
	if (parts.length === 0) return editor.refuse(messages.nothingToTurn);
	editor.run(rotateParts({ parts, quarterTurns }));
}

/** The selected parts as text, or null (said to the user) when no part is selected. */
export function copyText(editor: Editor): string | null {
	const { parts } = idsByKind(editor.selection);
	if (parts.length === 0) {
		editor.refuse(messages.nothingToCopy);
		return null;
	}
	editor.announce(messages.copied(parts.length));
	return fragmentText(editor.diagram, parts);
}

export function duplicate(editor: Editor): readonly ItemKey[] {
	const { parts } = idsByKind(editor.selection);
	if (parts.length === 0) {
		editor.refuse(messages.nothingToCopy);
		return [];
	}
	const added = insert(editor, fragmentOf(editor.diagram, parts), BESIDE);
	if (added.length > 0) editor.announce(messages.duplicated(parts.length));
	return added;
}

/** Pastes text from a clipboard, which may be hostile. Returns what was added. */
export function pasteText(editor: Editor, text: string): readonly ItemKey[] {
	const read = readFragment(text);
	if ('problem' in read) {
		editor.refuse(read.problem);
		return [];
	}
	return insert(editor, read.fragment, AS_COPIED);
}

/** Copies lie beside what is there, so that they can be seen to be two. */
function insert(editor: Editor, fragment: Fragment, first: Point): readonly ItemKey[] {
	const bodies = bodiesIn({ ...editor.diagram, ...fragment }).map((body) => translateBox(body, first));
	const further = shiftToFree(bodies, bodiesIn(editor.diagram), CLEAR_MM);
	const by = { x: first.x + further.x, y: first.y + further.y };
	const ids = insertedIds(editor.diagram, fragment);
	if (editor.run(insertFragment({ fragment, by })) !== null) return [];
	const keys = [
		...[...ids.parts.values()].map((id) => itemKey('part', id)),
		...[...ids.conductors.values()].map((id) => itemKey('conductor', id))
	];
	editor.select(keys);
	return keys;
}
