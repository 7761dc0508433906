/** Setting the selected parts in line, or at equal distances: one step, and what is locked or mounted stays. */
import { hostsOf, idsByKind, moveEach, type PartId } from '#core/diagram';
import { alignBoxes, distributeBoxes, type AlignTo, type Box, type DistributeAlong, type Point } from '#core/geometry';
import { partBox } from '#core/layout';
import { drawingMessages } from './drawing-messages.ts';
import type { Editor } from './editor.svelte.ts';

export function align(editor: Editor, to: AlignTo): void {
	arrange(editor, 2, 'align', (boxes) => alignBoxes(boxes, to));
}

export function distribute(editor: Editor, along: DistributeAlong): void {
	arrange(editor, 3, 'distribute', (boxes) => distributeBoxes(boxes, along));
}

function arrange(
	editor: Editor,
	least: number,
	verb: 'align' | 'distribute',
	shiftsOf: (boxes: ReadonlyMap<PartId, Box>) => ReadonlyMap<PartId, Point>
): void {
	const { diagram } = editor;
	const boxes = new Map(standing(editor).map((id) => [id, partBox(diagram, id)!]));
	if (boxes.size < least) return editor.refuse(drawingMessages.tooFew[verb]);
	const shifts = shiftsOf(boxes);
	if (shifts.size === 0) return editor.announce(drawingMessages.already[verb]);
	editor.run(moveEach({ moves: Object.fromEntries(shifts), verb }));
}

/** The selected parts, a block on a stud by what carries it. */
function standing({ diagram, selection }: Editor): PartId[] {
	return [...new Set(idsByKind(selection).parts.map((id) => hostsOf(diagram, id).at(-1) ?? id))];
}
