/** jsPDF with the packet's font, in millimetres. */
import { jsPDF } from 'jspdf';
import { base64Of, type Fonts } from './fonts.ts';
import type { Measure } from './page.ts';
import type { Size } from './paper.ts';

export const PT_PER_MM = 72 / 25.4;
const FAMILY = 'Sheet';

export type PdfDocument = jsPDF;

const formatOf = ({ widthMm, heightMm }: Size) => ({
	format: [widthMm, heightMm],
	orientation: widthMm > heightMm ? ('landscape' as const) : ('portrait' as const)
});

export function newDocument(size: Size, fonts: Fonts): PdfDocument {
	const doc = new jsPDF({ unit: 'mm', compress: true, putOnlyUsedFonts: true, ...formatOf(size) });
	for (const [style, bytes] of [
		['normal', fonts.regular],
		['bold', fonts.bold]
	] as const) {
		doc.addFileToVFS(`sheet-${style}.ttf`, base64Of(bytes));
		doc.addFont(`sheet-${style}.ttf`, FAMILY, style);
	}
	return doc;
}

export function addSheet(doc: PdfDocument, size: Size): void {
	const { format, orientation } = formatOf(size);
	doc.addPage(format, orientation);
}

export function setFont(doc: PdfDocument, sizeMm: number, bold: boolean): void {
	doc.setFont(FAMILY, bold ? 'bold' : 'normal');
	doc.setFontSize(sizeMm * PT_PER_MM);
}

export function measureWith(doc: PdfDocument): Measure {
	return (text, sizeMm, bold = false) => {
		setFont(doc, sizeMm, bold);
		return doc.getTextWidth(text);
	};
}

/** Characters of a text that the font has no glyph for. */
export function missingGlyphs(doc: PdfDocument, text: string): string[] {
	setFont(doc, 3, false);
	const { metadata } = doc.getFont() as unknown as { metadata: { characterToGlyph(code: number): number } };
	return [...new Set(text)].filter((character) => character.trim() !== '' && metadata.characterToGlyph(character.codePointAt(0)!) === 0);
}
