/** Widths of columns and heights of rows: nothing is clipped, everything wraps. */
import { widestPiece, wrap } from '#core/graphics';
import { cellText, shownUnit, type Column, type Row, type Table } from '#core/reports';
import type { Measure } from './page.ts';

export interface TextSizes {
	readonly bodyMm: number;
	readonly headMm: number;
}

export const PLAIN: TextSizes = { bodyMm: 2.5, headMm: 2.4 };
/** To be read at arm's length. */
export const LARGE: TextSizes = { bodyMm: 3.1, headMm: 2.7 };

export const PAD_X_MM = 1.3;
export const PAD_Y_MM = 0.9;
export const LEADING = 1.22;
/** Room to write in. */
const HAND_MM = { width: 16, height: 7 };
/** A word longer than this may be broken. */
const LONGEST_WORD_MM = 34;
/** A text longer than this wants to wrap. */
const WIDEST_MM = 150;
/** Short texts and designations stay on one line where there is room. */
const SHORT_MM = 17;
const DESIGNATION_MM = 32;

export interface LaidCell {
	readonly lines: readonly string[];
}

export interface LaidRow {
	readonly row: Row;
	readonly cells: readonly LaidCell[];
	readonly heightMm: number;
}

export interface LaidTable {
	readonly table: Table;
	readonly widths: readonly number[];
	readonly head: readonly LaidCell[];
	readonly headHeightMm: number;
	readonly rows: readonly LaidRow[];
	readonly sizes: TextSizes;
}

export function headText(column: Column): string {
	const unit = shownUnit(column);
	return unit === undefined ? column.title : column.title === '' ? unit : `${column.title}\n${unit}`;
}

export function layTable(table: Table, widthMm: number, sizes: TextSizes, measure: Measure): LaidTable {
	const { columns, rows } = table;
	const inBody = (text: string): number => measure(text, sizes.bodyMm);
	const inHead = (text: string): number => measure(text, sizes.headMm, true);
	const texts = rows.map(({ cells }) => columns.map((column) => cellText(column, cells[column.id] ?? null)));
	const widths = columnWidths(table, texts, widthMm, inBody, inHead);
	const lay = (words: string, index: number, measured: (text: string) => number): LaidCell => ({
		lines: words === '' ? [] : wrap(words, widths[index]! - 2 * PAD_X_MM, measured)
	});
	const head = columns.map((column, index) => lay(headText(column), index, inHead));
	const lineCount = (cells: readonly LaidCell[]): number => Math.max(1, ...cells.map(({ lines }) => lines.length));
	const least = columns.some(({ byHand }) => byHand) ? HAND_MM.height : 0;
	return {
		table,
		widths,
		head,
		headHeightMm: lineCount(head) * sizes.headMm * LEADING + 2 * PAD_Y_MM,
		rows: rows.map((row, r) => {
			const cells = texts[r]!.map((words, index) => lay(words, index, inBody));
			return { row, cells, heightMm: Math.max(least, lineCount(cells) * sizes.bodyMm * LEADING + 2 * PAD_Y_MM) };
		}),
		sizes
	};
}

/**
 * Every column gets what its longest word needs. What is left goes to those whose texts are longer than that, in
 * proportion to what they lack; what is left then, to all by their weight.
 */
function columnWidths(
	{ columns }: Table,
	texts: readonly (readonly string[])[],
	widthMm: number,
	inBody: (text: string) => number,
	inHead: (text: string) => number
): number[] {
	const pad = 2 * PAD_X_MM + 0.1;
	const needs = columns.map((column, index) => {
		const own = texts.map((row) => row[index]!);
		const hand = column.byHand ? HAND_MM.width * (column.weight ?? 1) : 0;
		const word = Math.max(widestPiece(headText(column), inHead), ...own.map((words) => widestPiece(words, inBody)), hand);
		const whole = Math.max(
			...headText(column)
				.split('\n')
				.map((words) => inHead(words)),
			...own.map(inBody),
			hand
		);
		const tight = Math.min(word, LONGEST_WORD_MM) + pad;
		const easy = whole <= (index === 0 ? DESIGNATION_MM : SHORT_MM) ? whole + pad : tight;
		return { tight, easy, wanted: Math.max(tight, Math.min(whole, WIDEST_MM) + pad) };
	});
	const fits = needs.reduce((sum, { easy }) => sum + easy, 0) <= EASY_SHARE * widthMm;
	return spread(
		columns,
		needs.map(({ tight, easy, wanted }) => ({ least: fits ? easy : tight, wanted })),
		widthMm
	);
}

/** Beyond this the long texts would be squeezed for the sake of the short ones. */
const EASY_SHARE = 0.75;

function spread(
	columns: readonly Column[],
	needs: readonly { readonly least: number; readonly wanted: number }[],
	widthMm: number
): number[] {
	const least = needs.reduce((sum, need) => sum + need.least, 0);
	if (least >= widthMm) return needs.map((need) => (need.least / least) * widthMm);
	const lacking = needs.reduce((sum, need) => sum + need.wanted - need.least, 0);
	const share = lacking === 0 ? 0 : Math.min(1, (widthMm - least) / lacking);
	const widths = needs.map((need) => need.least + share * (need.wanted - need.least));
	const left = widthMm - widths.reduce((sum, width) => sum + width, 0);
	// Numbers do not get easier to read in a wider column.
	const weights = columns.map(({ kind, weight = 1 }) => (kind === 'number' ? 0.25 * weight : weight));
	const total = weights.reduce((sum, weight) => sum + weight, 0);
	return widths.map((width, index) => width + (left * weights[index]!) / total);
}
