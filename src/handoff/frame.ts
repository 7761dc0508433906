/**
 * Frame of a drawing sheet after ISO 5457: 20 mm to bind at the left, 10 mm elsewhere, and a grid of fields of 50 mm
 * counted from the middle: numbers from left to right, letters from top to bottom without I and O.
 */
import type { Box, Point } from '#core/geometry';
import { boxRect, line, text, type Primitive } from '#core/graphics';
import type { Size } from './paper.ts';

const LEFT_MM = 20;
const OTHERS_MM = 10;
const BAND_MM = 5;
const FIELD_MM = 50;
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

export const frameBox = ({ widthMm, heightMm }: Size): Box => ({
	minX: LEFT_MM,
	minY: OTHERS_MM,
	maxX: widthMm - OTHERS_MM,
	maxY: heightMm - OTHERS_MM
});

/** Borders between fields along a side, from `from` to `to`; the middle of the sheet is always one. */
function borders(from: number, to: number, middle: number): number[] {
	const inside: number[] = [];
	for (let at = middle; at > from + FIELD_MM / 4; at -= FIELD_MM) inside.unshift(at);
	for (let at = middle + FIELD_MM; at < to - FIELD_MM / 4; at += FIELD_MM) inside.push(at);
	return [from, ...inside, to];
}

const columnsOf = (size: Size): number[] => borders(LEFT_MM, size.widthMm - OTHERS_MM, size.widthMm / 2);
const rowsOf = (size: Size): number[] => borders(OTHERS_MM, size.heightMm - OTHERS_MM, size.heightMm / 2);

/** "C4": the field of a point on the sheet. */
export function zoneAt({ x, y }: Point, size: Size): string {
	const index = (edges: readonly number[], value: number): number =>
		Math.max(
			0,
			Math.min(
				edges.length - 2,
				edges.findLastIndex((edge) => edge <= value)
			)
		);
	return `${LETTERS[index(rowsOf(size), y)]}${index(columnsOf(size), x) + 1}`;
}

export function drawFrame(size: Size): Primitive[] {
	const box = frameBox(size);
	const outer = { minX: box.minX - BAND_MM, minY: box.minY - BAND_MM, maxX: box.maxX + BAND_MM, maxY: box.maxY + BAND_MM };
	const thin = { stroke: 'muted', width: 0.18 } as const;
	const columns = columnsOf(size);
	const rows = rowsOf(size);
	const between = (edges: readonly number[]): number[] => edges.slice(1).map((edge, i) => (edge + edges[i]!) / 2);
	const mark = (x: number, y: number, word: string): Primitive => text(x, y, word, 2.5, { fill: 'muted' });
	return [
		boxRect(outer, thin),
		...columns.slice(1, -1).flatMap((x) => [line(x, outer.minY, x, box.minY, thin), line(x, box.maxY, x, outer.maxY, thin)]),
		...rows.slice(1, -1).flatMap((y) => [line(outer.minX, y, box.minX, y, thin), line(box.maxX, y, outer.maxX, y, thin)]),
		...between(columns).flatMap((x, i) => [mark(x, box.minY - BAND_MM / 2, String(i + 1)), mark(x, box.maxY + BAND_MM / 2, String(i + 1))]),
		...between(rows).flatMap((y, i) => [mark(box.minX - BAND_MM / 2, y, LETTERS[i]!), mark(box.maxX + BAND_MM / 2, y, LETTERS[i]!)]),
		boxRect(box, { stroke: 'ink', width: 0.7 })
	];
}
