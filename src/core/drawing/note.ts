/** A note: a card with words, and a leader to what it is about. */
import { itemKey, type Note } from '#core/diagram';
import type { Box, Point } from '#core/geometry';
import { boxRect, circle, line, text, textWidthMm, wrap, type Primitive } from '#core/graphics';
import { drawnFrame } from './frame.ts';
import type { DrawnItem } from './types.ts';

const TEXT_MM = 18;
const LEADING_MM = 24;
const PADDING_MM = 11;
const DOT_MM = 4;
/** A card without words is still there to be taken hold of. */
const EMPTY_LINES = 1;

const linesOf = ({ text: words, widthMm }: Pick<Note, 'text' | 'widthMm'>): string[] =>
	wrap(words, widthMm - 2 * PADDING_MM, (each) => textWidthMm(each, TEXT_MM));

export function noteBox(note: Pick<Note, 'text' | 'at' | 'widthMm'>): Box {
	const { at, widthMm } = note;
	const lines = Math.max(EMPTY_LINES, linesOf(note).length);
	return { minX: at.x, minY: at.y, maxX: at.x + widthMm, maxY: at.y + lines * LEADING_MM + 2 * PADDING_MM };
}

/** @param target where its leader ends; null for words by themselves */
export function drawNote(id: string, note: Note, target: Point | null): DrawnItem {
	const frame = noteBox(note);
	const card = boxRect(frame, { fill: 'case', stroke: 'note', width: 0.8, r: 3 });
	const bar = boxRect({ ...frame, maxX: frame.minX + 4 }, { fill: 'note' });
	const from = target && leaderStart(frame, target);
	const leader: Primitive[] =
		target && from
			? [line(from.x, from.y, target.x, target.y, { stroke: 'note', width: 1.6 }), circle(target.x, target.y, DOT_MM, { fill: 'note' })]
			: [];
	const lines = linesOf(note).map((words, i) =>
		text(frame.minX + PADDING_MM, frame.minY + PADDING_MM + (i + 0.5) * LEADING_MM, words, TEXT_MM, { align: 'start' })
	);
	const primitives = [...leader, card, bar];
	// The card once more: names of parts are painted after all that is drawn, and must not show through.
	const labels = [card, bar, ...lines];
	return drawnFrame(itemKey('note', id), frame, primitives, labels);
}

/** The nearest point of the card's edge; null where the target lies under it. */
function leaderStart({ minX, minY, maxX, maxY }: Box, { x, y }: Point): Point | null {
	const from = { x: Math.min(maxX, Math.max(minX, x)), y: Math.min(maxY, Math.max(minY, y)) };
	return from.x === x && from.y === y ? null : from;
}
