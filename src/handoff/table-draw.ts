/** Rows of a laid table as lines and text. */
import { line, rect, text, type Primitive } from '#core/graphics';
import { LEADING, PAD_X_MM, PAD_Y_MM, type LaidCell, type LaidRow, type LaidTable } from './table-layout.ts';

/** Left edges of the columns. */
const lefts = ({ widths }: LaidTable, x: number): number[] =>
	widths.map((_, index) => x + widths.slice(0, index).reduce((a, b) => a + b, 0));

const totalWidth = ({ widths }: LaidTable): number => widths.reduce((sum, width) => sum + width, 0);

export function drawHead(laid: LaidTable, x: number, y: number): Primitive[] {
	const { head, headHeightMm, sizes } = laid;
	return [
		rect(x, y, totalWidth(laid), headHeightMm, { fill: 'case-raised' }),
		...cells(laid, head, x, y, headHeightMm, sizes.headMm, true),
		line(x, y, x + totalWidth(laid), y, { stroke: 'ink', width: 0.35 }),
		line(x, y + headHeightMm, x + totalWidth(laid), y + headHeightMm, { stroke: 'ink', width: 0.35 })
	];
}

export const groupHeightMm = ({ sizes }: LaidTable): number => sizes.bodyMm * LEADING + 2 * PAD_Y_MM;

export function drawGroup(laid: LaidTable, name: string, continued: boolean, x: number, y: number): Primitive[] {
	const height = groupHeightMm(laid);
	return [
		text(x + PAD_X_MM, y + height / 2, continued ? `${name}, continued` : name, laid.sizes.bodyMm, { align: 'start', bold: true }),
		line(x, y + height, x + totalWidth(laid), y + height, { stroke: 'muted', width: 0.18 })
	];
}

/** @param shaded rows are tinted three by three, so that the eye keeps its line */
export function drawRow(laid: LaidTable, row: LaidRow, x: number, y: number, shaded: boolean): Primitive[] {
	const { table, sizes } = laid;
	const width = totalWidth(laid);
	const boxes = lefts(laid, x).flatMap((left, index) =>
		table.columns[index]!.byHand && row.cells[index]!.lines.length === 0
			? [rect(left + 0.4, y + 0.6, laid.widths[index]! - 0.8, row.heightMm - 1.2, { fill: 'paper', stroke: 'muted', width: 0.18 })]
			: []
	);
	return [
		...(shaded ? [rect(x, y, width, row.heightMm, { fill: 'case-raised', opacity: 0.45 })] : []),
		...cells(laid, row.cells, x, y, row.heightMm, sizes.bodyMm, false),
		...boxes,
		line(x, y + row.heightMm, x + width, y + row.heightMm, { stroke: 'faint', width: 0.18 })
	];
}

function cells(
	laid: LaidTable,
	laidCells: readonly LaidCell[],
	x: number,
	y: number,
	height: number,
	sizeMm: number,
	bold: boolean
): Primitive[] {
	const step = sizeMm * LEADING;
	return lefts(laid, x).flatMap((left, index) => {
		const { lines } = laidCells[index]!;
		const isNumber = laid.table.columns[index]!.kind === 'number';
		const at = isNumber ? left + laid.widths[index]! - PAD_X_MM - 0.6 : left + PAD_X_MM;
		// Heads stand on the line below them, rows hang from the line above.
		const top = bold ? y + height - PAD_Y_MM - lines.length * step : y + PAD_Y_MM;
		return lines.map((words, lineIndex) =>
			text(at, top + (lineIndex + 0.5) * step, words, sizeMm, { align: isNumber ? 'end' : 'start', bold })
		);
	});
}
