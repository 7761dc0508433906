/** Areas, notes and pictures as they are made by hand: with an id, a usual look, and selected at once. */
import {
	addArea,
	addNote,
	addUnderlay,
	editUnderlay,
	freshId,
	itemKey,
	type Area,
	type FrameKind,
	type Note,
	type Underlay
} from '#core/diagram';
import { distance, type Box, type Point } from '#core/geometry';
import { drawingMessages } from './drawing-messages.ts';
import type { Editor } from './editor.svelte.ts';
import { SELECT } from './tool.ts';

const NOTE_MM = 300;

/** With the area tool in hand: an area like the tool's, or an ordinary place. */
export function drawArea(editor: Editor, { minX, minY, maxX, maxY }: Box): void {
	const { tool, diagram } = editor;
	const like = tool.kind === 'area' ? tool.like : { label: '', spaces: [], ambientC: null };
	const area: Area = { ...like, spaces: [...like.spaces], at: { x: minX, y: minY }, widthMm: maxX - minX, heightMm: maxY - minY };
	const id = freshId(diagram.areas, 'A');
	if (editor.run(addArea({ id, area })) === null) selectNew(editor, 'area', id);
}

export function writeNote(editor: Editor, at: Point, to: Note['to'], text: string): void {
	const id = freshId(editor.diagram.notes, 'N');
	if (editor.run(addNote({ id, note: { text, at, widthMm: NOTE_MM, to } })) === null) selectNew(editor, 'note', id);
}

/** A picture in the middle of what is seen, so wide that it fills most of it; its scale is set afterwards. */
export function layPicture(
	editor: Editor,
	picture: Pick<Underlay, 'label' | 'picture' | 'widthPx' | 'heightPx'>,
	middle: Point,
	widthMm: number
): void {
	const mmPerPx = widthMm / picture.widthPx;
	const at = { x: middle.x - widthMm / 2, y: middle.y - (picture.heightPx * mmPerPx) / 2 };
	const id = freshId(editor.diagram.underlays, 'U');
	if (editor.run(addUnderlay({ id, underlay: { ...picture, at, mmPerPx, opacity: 0.6 } })) === null) selectNew(editor, 'underlay', id);
}

/** Sets the scale of a picture by two points of it, in drawing coordinates, and the distance between them. The first point stays. */
export function scalePicture(editor: Editor, id: string, from: Point, to: Point, distanceMm: number): void {
	const underlay = editor.diagram.underlays[id];
	const drawnMm = distance(from, to);
	if (!underlay || drawnMm === 0) return editor.refuse(drawingMessages.noDistance);
	const factor = distanceMm / drawnMm;
	const at = { x: from.x + (underlay.at.x - from.x) * factor, y: from.y + (underlay.at.y - from.y) * factor };
	editor.run(editUnderlay({ underlay: id, set: { mmPerPx: underlay.mmPerPx * factor, at } }));
}

function selectNew(editor: Editor, kind: FrameKind, id: string): void {
	editor.select([itemKey(kind, id)]);
	editor.setTool(SELECT);
}
