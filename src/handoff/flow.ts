/**
 * Fills sheets from top to bottom. A row is never broken unless it alone is higher than a sheet, a head is repeated on
 * every sheet, and neither a title, a group's name nor a single last row is left alone.
 */
import { line, text, type Primitive, wrap } from '#core/graphics';
import type { Table } from '#core/reports';
import type { Measure } from './page.ts';
import type { Size } from './paper.ts';
import { drawGroup, drawHead, drawRow, groupHeightMm } from './table-draw.ts';
import { layTable, LEADING, type LaidRow, type LaidTable, type TextSizes } from './table-layout.ts';

/** Free area of a table's sheet. */
export const MARGIN_MM = { left: 18, right: 12, top: 20, bottom: 18 };

const TITLE_MM = 4.2;
const LEAD_MM = 2.7;
const NOTE_MM = 2.3;
const GAP_MM = 6;
/** Rows that stay with the head of their table. */
const WITH_HEAD = 2;
/** Longer notes may go on to the next sheet. */
const MOST_NOTES_MM = 30;

export class Flow {
	readonly #sheets: Primitive[][] = [];
	#y = 0;

	constructor(
		private readonly size: Size,
		private readonly sizes: TextSizes,
		private readonly measure: Measure
	) {
		this.newSheet();
	}

	get sheets(): readonly (readonly Primitive[])[] {
		return this.#sheets;
	}
	get left(): number {
		return MARGIN_MM.left;
	}
	get width(): number {
		return this.size.widthMm - MARGIN_MM.left - MARGIN_MM.right;
	}
	get y(): number {
		return this.#y;
	}
	get #bottom(): number {
		return this.size.heightMm - MARGIN_MM.bottom;
	}
	get #whole(): number {
		return this.#bottom - MARGIN_MM.top;
	}
	get #room(): number {
		return this.#bottom - this.#y;
	}

	newSheet(): void {
		this.#sheets.push([]);
		this.#y = MARGIN_MM.top;
	}

	put(primitives: readonly Primitive[], heightMm: number): void {
		this.#sheets.at(-1)!.push(...primitives);
		this.#y += heightMm;
	}

	space(mm: number): void {
		if (this.#y > MARGIN_MM.top) this.#y += mm;
	}

	/** Goes on to the next sheet unless this much is free. */
	need(mm: number): void {
		if (this.#room < mm && this.#y > MARGIN_MM.top) this.newSheet();
	}

	paragraph(words: string, sizeMm: number, options: { bold?: boolean; muted?: boolean; keepMm?: number } = {}): void {
		const { bold = false, muted = false, keepMm = 0 } = options;
		const step = sizeMm * LEADING;
		const lines = wrap(words, this.width, (t) => this.measure(t, sizeMm, bold));
		this.need(Math.min(lines.length * step + keepMm, this.size.heightMm - MARGIN_MM.top - MARGIN_MM.bottom));
		for (const words of lines) {
			this.need(step);
			this.put([text(this.left, this.#y + step / 2, words, sizeMm, { align: 'start', bold, fill: muted ? 'muted' : 'ink' })], step);
		}
	}

	table(table: Table): void {
		const laid = layTable(table, this.width, this.sizes, this.measure);
		const firstRows = laid.rows.slice(0, WITH_HEAD).reduce((sum, row) => sum + row.heightMm, 0);
		const leadMm =
			table.lead === undefined ? 0 : wrap(table.lead, this.width, (t) => this.measure(t, LEAD_MM)).length * LEAD_MM * LEADING + 1.5;
		this.space(GAP_MM);
		this.need(TITLE_MM * LEADING + 2 + leadMm + laid.headHeightMm + groupHeightMm(laid) + firstRows);
		this.paragraph(table.title, TITLE_MM, { bold: true });
		this.put([], 1);
		if (table.lead !== undefined) {
			this.paragraph(table.lead, LEAD_MM, { muted: true });
			this.put([], 1.5);
		}
		if (table.rows.length === 0) this.paragraph(table.whenEmpty, LEAD_MM);
		else this.#rows(laid, this.#notesMm(table));
		this.put([], 1.5);
		for (const note of table.notes) this.paragraph(note, NOTE_MM, { muted: true });
	}

	#notesMm({ notes }: Table): number {
		const lines = notes.flatMap((note) => wrap(note, this.width, (t) => this.measure(t, NOTE_MM)));
		return lines.length === 0 ? 0 : Math.min(1.5 + lines.length * NOTE_MM * LEADING, MOST_NOTES_MM);
	}

	/** @param notesMm what follows the last row and must not stand alone on a sheet */
	#rows(laid: LaidTable, notesMm: number): void {
		const { rows } = laid;
		const hasHead = laid.head.some(({ lines }) => lines.length > 0);
		const head = () => hasHead && this.put(drawHead(laid, this.left, this.#y), laid.headHeightMm);
		head();
		let group: string | undefined;
		let inGroup = 0;
		rows.forEach((row, index) => {
			const isNew = row.row.group !== group;
			const next = rows[index + 1];
			const groupMm = isNew && row.row.group !== undefined ? groupHeightMm(laid) : 0;
			// The row before the last takes the last one along, rather than leave it alone on a sheet.
			const takesLast = next !== undefined && index === rows.length - 2 && next.row.group === row.row.group;
			const tailMm = index === rows.length - 1 ? notesMm : takesLast ? next.heightMm + notesMm : 0;
			const neededMm = Math.min(groupMm + row.heightMm + tailMm, this.#whole - laid.headHeightMm);
			let continued = false;
			if (this.#room < neededMm) {
				this.newSheet();
				head();
				continued = !isNew;
			}
			if (isNew) inGroup = 0;
			if (row.row.group !== undefined && (isNew || continued)) {
				this.put(drawGroup(laid, row.row.group, continued, this.left, this.#y), groupHeightMm(laid));
			}
			group = row.row.group;
			for (const part of this.#pieces(laid, row)) {
				if (this.#room < part.heightMm) {
					this.newSheet();
					head();
				}
				this.put(drawRow(laid, part, this.left, this.#y, inGroup % 6 >= 3), part.heightMm);
			}
			inGroup += 1;
		});
		this.put([line(this.left, this.#y, this.left + this.width, this.#y, { stroke: 'ink', width: 0.35 })], 0);
	}

	/** A row higher than a sheet, in pieces that are not. */
	#pieces(laid: LaidTable, row: LaidRow): LaidRow[] {
		const roomMm = this.size.heightMm - MARGIN_MM.top - MARGIN_MM.bottom - laid.headHeightMm - groupHeightMm(laid);
		if (row.heightMm <= roomMm) return [row];
		const step = laid.sizes.bodyMm * LEADING;
		const perSheet = Math.max(1, Math.floor(roomMm / step) - 1);
		const most = Math.max(...row.cells.map(({ lines }) => lines.length));
		return Array.from({ length: Math.ceil(most / perSheet) }, (_, index) => {
			const cells = row.cells.map(({ lines }) => ({ lines: lines.slice(index * perSheet, (index + 1) * perSheet) }));
			return { row: row.row, cells, heightMm: Math.max(...cells.map(({ lines }) => lines.length)) * step + 2 };
		});
	}
}
