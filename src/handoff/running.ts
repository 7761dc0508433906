/** Head and foot of sheets that hold tables. */
import type { Diagram } from '#core/diagram';
import { line, text, type Primitive, wrap } from '#core/graphics';
import { MARGIN_MM } from './flow.ts';
import type { Measure } from './page.ts';
import type { Size } from './paper.ts';
import { sheetText, type SheetNumber } from './title-block.ts';

const SIZE_MM = 2.5;

export interface Running {
	readonly block: Diagram['titleBlock'];
	readonly section: string;
	/** "Checked against …: 2 errors": on every sheet, so that no sheet alone reads as a clean bill. */
	readonly verdict: string;
}

export function drawRunning(
	{ widthMm, heightMm }: Size,
	{ block, section, verdict }: Running,
	number: SheetNumber,
	measure: Measure
): Primitive[] {
	const [left, right] = [MARGIN_MM.left, widthMm - MARGIN_MM.right];
	const top = MARGIN_MM.top - 6;
	const bottom = heightMm - MARGIN_MM.bottom + 5;
	const rule = { stroke: 'muted', width: 0.25 } as const;
	const cut = (words: string, room: number, bold = false): string => {
		const [first = '', ...rest] = wrap(words, room, (t) => measure(t, SIZE_MM, bold));
		return rest.length > 0 ? `${first} …` : first;
	};
	const name = [block.title.trim() || 'Untitled diagram', block.supplementaryTitle.trim()].filter((t) => t !== '').join(', ');
	const identity = [
		block.identificationNumber.trim(),
		block.revisionIndex.trim() === '' ? 'no revision' : `revision ${block.revisionIndex.trim()}`,
		block.dateOfIssue.trim()
	];
	const sectionMm = measure(section, SIZE_MM, true);
	const sheet = sheetText(number);
	return [
		text(left, top - 2.5, cut(name, right - left - sectionMm - 12), SIZE_MM, { align: 'start' }),
		text(right, top - 2.5, section, SIZE_MM, { align: 'end', bold: true }),
		line(left, top, right, top, rule),
		line(left, bottom, right, bottom, rule),
		text(left, bottom + 2.5, identity.filter((t) => t !== '').join(' · '), SIZE_MM, { align: 'start' }),
		text(right, bottom + 2.5, sheet, SIZE_MM, { align: 'end', bold: true }),
		text(left, bottom + 6, cut(verdict, right - left), 2.2, { align: 'start', fill: 'muted' })
	];
}
