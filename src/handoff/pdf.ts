import type { Diagram } from '#core/diagram';
import { PALETTES } from '#core/graphics';
import type { Fonts } from './fonts.ts';
import type { Page } from './page.ts';
import { packetPages, type PacketInput, type PacketOptions } from './packet.ts';
import { paint } from './paint-pdf.ts';
import { addSheet, measureWith, missingGlyphs, newDocument, type PdfDocument } from './pdf-document.ts';
import { sheetSize } from './paper.ts';

export interface Packet {
	readonly bytes: ArrayBuffer;
	readonly sheets: number;
	/** Characters that the font has no shape for: they print as boxes. */
	readonly missing: readonly string[];
}

/** How far it is, from 0 to 1; may be awaited, so that the window can show it. */
export type Progress = (share: number) => void | Promise<void>;

export async function packetPdf(
	input: PacketInput,
	options: PacketOptions,
	fonts: Fonts,
	progress: Progress = () => undefined
): Promise<Packet> {
	const measuring = newDocument(sheetSize(options.paper, 'portrait'), fonts);
	const pages = packetPages(input, options, measureWith(measuring));
	const doc = newDocument(pages[0]?.size ?? sheetSize(options.paper, 'portrait'), fonts);
	describe(doc, input.diagram);
	for (const [index, page] of pages.entries()) {
		if (index > 0) addSheet(doc, page.size);
		paintPage(doc, page);
		await progress((index + 1) / pages.length);
	}
	link(doc, pages);
	const words = pages
		.flatMap(({ primitives, window }) => [...primitives, ...(window?.primitives ?? [])])
		.map((p) => (p.kind === 'text' ? p.text : ''));
	return { bytes: doc.output('arraybuffer'), sheets: pages.length, missing: missingGlyphs(measuring, words.join('')) };
}

function describe(doc: PdfDocument, { titleBlock }: Diagram): void {
	const { title, supplementaryTitle, creator, legalOwner, identificationNumber } = titleBlock;
	doc.setProperties({
		title: [title, supplementaryTitle].filter((text) => text.trim() !== '').join(', ') || 'Wiring diagram',
		subject: ['Hand-off packet', identificationNumber].filter((text) => text.trim() !== '').join(', '),
		author: creator || legalOwner,
		creator: 'Wireworthy'
	});
	doc.setLanguage('en');
	doc.setDisplayMode('fullwidth', 'continuous', 'UseOutlines');
}

function paintPage(doc: PdfDocument, { window, primitives }: Page): void {
	const palette = PALETTES.paper;
	if (window) {
		const { minX, minY, maxX, maxY } = window.box;
		doc.saveGraphicsState();
		doc.rect(minX, minY, maxX - minX, maxY - minY, null);
		doc.clip();
		doc.discardPath();
		paint(doc, window.primitives, palette);
		doc.restoreGraphicsState();
	}
	paint(doc, primitives, palette);
}

function link(doc: PdfDocument, pages: readonly Page[]): void {
	pages.forEach(({ links = [], bookmark }, index) => {
		if (bookmark !== undefined) doc.outline.add(null, bookmark, { pageNumber: index + 1 });
		if (links.length === 0) return;
		doc.setPage(index + 1);
		for (const { box, page } of links) doc.link(box.minX, box.minY, box.maxX - box.minX, box.maxY - box.minY, { pageNumber: page });
	});
}
