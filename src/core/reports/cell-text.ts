import { compactNumber } from '#core/units';
import type { Cell, Column } from './table.ts';

/** A cell as people read it; the unit stands in the column's head. */
export function cellText({ decimals, digits }: Pick<Column, 'decimals' | 'digits'>, cell: Cell): string {
	if (cell === null) return '';
	if (typeof cell === 'string') return cell;
	if (!Number.isFinite(cell)) return cell > 0 ? 'unlimited' : '–';
	const text = decimals === undefined ? compactNumber(cell, digits) : cell.toFixed(decimals);
	return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text.replace('-', '−');
}
