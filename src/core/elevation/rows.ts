/** The column of labels beside the drawing, with their leaders. */
import type { Box, Point } from '#core/geometry';
import { circle, polyline, text, textWidthMm, type Paint, type Primitive } from '#core/graphics';
import { spread } from './spread.ts';
import type { ElevationRoom, LayerMark } from './types.ts';
import { fitted } from './words.ts';

/** Detail is written a little smaller. */
export const DETAIL = 0.9;
/** Heights of a row with one line and with two, in text sizes. */
const ONE_LINE = 1.5;
const TWO_LINES = 2.6;
const MARK = 1.35;

export interface Row {
	/** Index of the layer it names; null for thread, cover and seat. */
	readonly layer: number | null;
	/** Where its leader begins. */
	readonly from: Point;
	readonly title: string;
	readonly detail: string | null;
	readonly paint: Paint;
	readonly marks: readonly LayerMark[];
}

export interface PlacedRows {
	readonly primitives: readonly Primitive[];
	readonly boxes: readonly { readonly layer: number | null; readonly box: Box }[];
	readonly words: readonly Box[];
}

const rowHeightEm = ({ detail }: Pick<Row, 'detail'>, leastEm: number): number => Math.max(leastEm, detail === null ? ONE_LINE : TWO_LINES);

/** Rows in the order of their leaders' heights, from the top; leaders keep that order and so never cross. */
export function placeRows(
	rows: readonly Row[],
	leftMm: number,
	rightMm: number,
	elbowMm: number,
	textMm: number,
	{ rowEm = 0, gripEm = 0 }: Pick<ElevationRoom, 'rowEm' | 'gripEm'>
): PlacedRows {
	const heights = rows.map((row) => rowHeightEm(row, rowEm) * textMm);
	const middles = spread(rows.map(({ from }, index) => ({ at: from.y, height: heights[index]! })));
	const primitives: Primitive[] = [];
	const boxes: { layer: number | null; box: Box }[] = [];
	const words: Box[] = [];
	rows.forEach((row, index) => {
		const y = middles[index]!;
		const height = heights[index]!;
		const textX = leftMm + row.marks.length * MARK * textMm;
		primitives.push(
			polyline([row.from, { x: elbowMm, y: row.from.y }, { x: leftMm - 0.9 * textMm, y }, { x: leftMm - 0.25 * textMm, y }], {
				stroke: row.marks[0]?.paint ?? 'muted',
				width: textMm * 0.06
			}),
			circle(row.from.x, row.from.y, textMm * 0.13, { fill: row.marks[0]?.paint ?? 'muted' })
		);
		const lines = row.detail === null ? [y] : [y - 0.58 * textMm, y + 0.62 * textMm];
		const end = rightMm - (row.layer === null ? 0 : gripEm * textMm);
		row.marks.forEach((mark, place) => primitives.push(...markDisc(leftMm + (place + 0.45) * MARK * textMm, lines[0]!, mark, textMm)));
		const write = (content: string, x: number, at: number, size: number, fill: Paint) => {
			const shown = fitted(content, end - x, (candidate) => textWidthMm(candidate, size));
			primitives.push(text(x, at, shown, size, { align: 'start', fill }));
			words.push({ minX: x, maxX: x + textWidthMm(shown, size), minY: at - size * 0.6, maxY: at + size * 0.6 });
		};
		write(row.title, textX, lines[0]!, textMm, row.paint);
		if (row.detail !== null) write(row.detail, leftMm, lines[1]!, textMm * DETAIL, 'muted');
		boxes.push({ layer: row.layer, box: { minX: leftMm - 0.4 * textMm, maxX: rightMm, minY: y - height / 2, maxY: y + height / 2 } });
	});
	return { primitives, boxes, words };
}

/** A numbered disc; the number is the one in the list of findings. */
export const markDisc = (x: number, y: number, { number, paint }: LayerMark, textMm: number): Primitive[] => [
	circle(x, y, textMm * 0.6, { fill: paint }),
	text(x, y, String(number), textMm * 0.85, { bold: true, fill: 'case' })
];
