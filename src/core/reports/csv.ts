/**
 * Tables as comma-separated values: RFC 4180, lines ended by CR LF, with a byte order mark, because spreadsheets that
 * guess the encoding without one turn Ω, ² and − into rubbish, and readers that know UTF-8 skip it.
 *
 * A text that a spreadsheet would take for a formula (it begins with =, +, −, @, a tab or a line break) gets an
 * apostrophe before it, by which spreadsheets know text. Numbers are never touched: they are written as digits with a
 * plain hyphen for minus, and a minus before digits alone is no formula.
 */
import { columnTitle, shownNumber } from './cell-text.ts';
import type { Cell, Column, Table } from './table.ts';

const BYTE_ORDER_MARK = '\uFEFF';
const LINE_END = '\r\n';

const FORMULA = /^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/;

export function csvOf(tables: readonly Table[]): string {
	const blocks = tables.map((made) => {
		const { columns, rows } = made;
		const grouped = rows.some(({ group }) => group !== undefined);
		const head = [...(grouped ? ['Group'] : []), ...columns.map(columnTitle)].map((title) => field(title));
		const lines = rows.map(({ group, cells }) =>
			[...(grouped ? [field(group ?? '')] : []), ...columns.map((column) => field(inUnit(column, cells[column.id] ?? null)))].join(',')
		);
		const title = tables.length > 1 ? [field(made.title)] : [];
		return [...title, head.join(','), ...lines].join(LINE_END);
	});
	return BYTE_ORDER_MARK + blocks.join(LINE_END + LINE_END) + LINE_END;
}

/** Programs read a point in every country; only the unit is the reader's. */
const inUnit = (column: Column, cell: Cell): Cell => (typeof cell === 'number' ? shownNumber(column, cell) : cell);

/** Six significant digits are more than any input has. */
const DIGITS = 6;

function field(cell: Cell): string {
	if (cell === null) return '';
	if (typeof cell === 'number') return Number.isFinite(cell) ? String(Number(cell.toPrecision(DIGITS))) : cell > 0 ? 'unlimited' : '';
	const text = FORMULA.test(cell) ? `'${cell}` : cell;
	// Where a semicolon or tab parts the fields, they must not part a text either.
	return /[",;\t\r\n]|^ | $/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
