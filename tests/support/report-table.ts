import type { Cell, Table } from '#core/reports';

/** The row whose first cell is this. */
export function rowOf(table: Table, first: string): Readonly<Record<string, Cell>> {
	const row = table.rows.find(({ cells }) => cells[table.columns[0]!.id] === first);
	if (!row) throw new Error(`"${table.title}" has no row "${first}".`);
	return row.cells;
}

/** Every cell and sentence of a table, for finding words that must or must not be there. */
export const allText = ({ title, lead = '', columns, rows, notes }: Table): string =>
	[title, lead, ...columns.map((column) => column.title), ...rows.flatMap(({ cells, group = '' }) => [group, ...Object.values(cells).map(String)]), ...notes].join('\n'); // prettier-ignore
