/** Labels at full size, side by side, with lines to cut along. */
import { boxRect, text, type Primitive, wrap } from '#core/graphics';
import type { Table } from '#core/reports';
import { Flow } from './flow.ts';
import type { Measure } from './page.ts';
import type { Size } from './paper.ts';
import { PLAIN } from './table-layout.ts';

/** Least size of a label; a whole number of them fills the width. */
const LEAST_MM = { width: 43, height: 15 };
/** Warnings are read from farther away. */
const WARNING_MM = { width: 85, height: 30 };

export function labelSheets(tables: readonly Table[], size: Size, measure: Measure): readonly (readonly Primitive[])[] {
	const flow = new Flow(size, PLAIN, measure);
	for (const table of tables) {
		if (table.rows.length === 0) continue;
		const isWarning = table.id === 'warning-labels';
		const least = isWarning ? WARNING_MM : LEAST_MM;
		const perRow = Math.max(1, Math.floor(flow.width / least.width));
		const width = flow.width / perRow;
		flow.space(5);
		flow.need(8 + least.height);
		flow.paragraph([table.title, table.lead].filter(Boolean).join('. '), 2.7, { bold: true });
		flow.put([], 1);
		for (let start = 0; start < table.rows.length; start += perRow) {
			flow.need(least.height);
			const labels = table.rows.slice(start, start + perRow).flatMap(({ cells }, index) => {
				const box = { minX: flow.left + index * width, minY: flow.y, maxX: flow.left + (index + 1) * width, maxY: flow.y + least.height };
				const [words, detail, small] = [cells.text, cells.detail, cells.small].map((cell) => String(cell ?? ''));
				return label(box, words!, detail!, small!, isWarning ? 1.7 : 1, measure);
			});
			flow.put(labels, least.height);
		}
	}
	return flow.sheets;
}

type LabelBox = { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };

const SMALLEST_MM = 1.6;

/** Designation large, the rest as large as fits. */
function label(box: LabelBox, words: string, detail: string, small: string, enlarge: number, measure: Measure): Primitive[] {
	const room = { width: box.maxX - box.minX - 4, height: box.maxY - box.minY - 2.4 };
	for (let factor = enlarge; ; factor *= 0.93) {
		const lines = [
			...wrap(words, room.width, (t) => measure(t, 4 * factor, true)).map((line) => ({ line, size: 4 * factor, bold: true })),
			...[detail, small]
				.filter((part) => part !== '')
				.flatMap((part) =>
					wrap(part, room.width, (t) => measure(t, 2.3 * factor)).map((line) => ({ line, size: 2.3 * factor, bold: false }))
				)
		];
		const height = lines.reduce((sum, { size }) => sum + size * 1.2, 0);
		if (height > room.height && factor * 2.3 > SMALLEST_MM) continue;
		let y = (box.minY + box.maxY - height) / 2;
		const placed = lines.map(({ line, size, bold }) => {
			y += size * 1.2;
			return text((box.minX + box.maxX) / 2, y - size * 0.6, line, size, { bold });
		});
		return [boxRect(box, { stroke: 'muted', width: 0.18, dash: [1.2, 1] }), ...placed];
	}
}
