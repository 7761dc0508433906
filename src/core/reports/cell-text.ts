import { compactNumber, fahrenheitFromCelsius, feetFromMetres, fixedText, inchesFromMillimetres, reader } from '#core/units';
import type { Cell, Column } from './table.ts';

type Precision = Pick<Column, 'unit' | 'decimals' | 'digits'>;

interface Shown {
	readonly unit: string | undefined;
	readonly decimals: number | undefined;
	readonly of: (value: number) => number;
}

/** A column as the reader wants it: its unit, decimals that are as exact in it, and its numbers converted. */
function shown({ unit, decimals }: Pick<Column, 'unit' | 'decimals'>): Shown {
	const { long, short, temperature } = reader();
	if (unit === 'm' && long === 'ft') return { unit: 'ft', decimals, of: feetFromMetres };
	if (unit === 'mm' && short === 'in') return { unit: 'in', decimals: (decimals ?? 0) + 2, of: inchesFromMillimetres };
	if (unit === '°C' && temperature === '°F') return { unit: '°F', decimals, of: fahrenheitFromCelsius };
	return { unit, decimals, of: (value) => value };
}

/** A cell as people read it; the unit stands in the column's head. */
export function cellText(column: Precision, cell: Cell): string {
	if (cell === null) return '';
	if (typeof cell === 'string') return cell;
	if (!Number.isFinite(cell)) return cell > 0 ? 'unlimited' : '–';
	const { decimals, of } = shown(column);
	const text = decimals === undefined ? compactNumber(of(cell), column.digits) : fixedText(of(cell), decimals);
	return /^-0([.,]0*)?$/.test(text) ? text.slice(1) : text.replace('-', '−');
}

/** The unit of a column as the reader wants it. */
export const shownUnit = (column: Pick<Column, 'unit'>): string | undefined => shown(column).unit;

/** The number of a cell in the reader's unit. */
export const shownNumber = (column: Pick<Column, 'unit'>, value: number): number => shown(column).of(value);

/** "Length (m)". */
export function columnTitle(column: Pick<Column, 'title' | 'unit'>): string {
	const unit = shownUnit(column);
	return unit === undefined ? column.title : column.title === '' ? unit : `${column.title} (${unit})`;
}
