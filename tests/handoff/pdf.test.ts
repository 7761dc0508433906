/** The packet as another program reads it (poppler). */
import { describe, expect, test } from 'vitest';
import { emptyDiagram } from '#core/diagram';
import { PAPERS, packetPdf, type PacketOptions } from '#handoff';
import { example } from '../support/examples/figures.ts';
import { fonts, packetOf } from '../support/packet.ts';
import { pdfFonts, pdfPageTexts, pdfSizes } from '../support/pdf.ts';

const A4: PacketOptions = { paper: 'a4', drawingPaper: 'a3', placing: 'fitted' };
const LETTER: PacketOptions = { paper: 'letter', drawingPaper: 'letter', placing: 'tiled' };

/** As read from the page, whatever line a text was broken on. */
const flat = (text: string): string => text.replaceAll(/\s+/g, ' ');

describe.each([
	['ridge-post-before', A4],
	['pagemoor-after', LETTER],
	['otters-reach-before', LETTER],
	['skarv-fell-after', A4]
] as const)('%s', async (name, options) => {
	const diagram = example(name);
	const input = packetOf(diagram);
	const { bytes, sheets, missing } = await packetPdf(input, options, fonts);
	const pages = pdfPageTexts(new Uint8Array(bytes));
	const whole = flat(pages.join('\n'));

	test('has as many pages as it says, each with its number', () => {
		expect(pages).toHaveLength(sheets);
		pages.forEach((text, index) => {
			const number = `${index + 1} of ${sheets}`;
			expect(flat(text), `page ${index + 1}`).toContain(number);
		});
	});
	test('has the title of every table and the name of every conductor and part', () => {
		const tables = input.sections.filter(({ layout }) => layout !== 'labels').flatMap((section) => section.tables);
		for (const { title } of tables) expect(whole).toContain(title);
		for (const { label } of [...Object.values(diagram.conductors), ...Object.values(diagram.parts)]) expect(whole).toContain(label.trim());
	});
	test('has every finding in full', () => {
		const words = (text: string): string[] => text.match(/[\p{L}\d.]+/gu) ?? [];
		const present = new Set(words(whole));
		for (const { cells } of input.sections.find(({ id }) => id === 'findings')!.tables[0]!.rows)
			for (const word of words(String(cells.what))) expect(present, word).toContain(word);
	});
	test('prints the signs that ordinary fonts lack, from a font of its own', () => {
		for (const sign of ['Ω', '→', '−', '·', '°', '²', '×'].filter((sign) => JSON.stringify(input.sections).includes(sign)))
			expect(whole).toContain(sign);
		expect(missing).toEqual([]);
		const used = pdfFonts(new Uint8Array(bytes));
		expect(used).toHaveLength(2);
		for (const line of used) expect(line).toMatch(/TrueType\s+Identity-H\s+yes/);
	});
	test('says nothing undefined', () => expect(whole).not.toMatch(/undefined|NaN|\[object/));
	test('repeats the head of a table on every sheet', () => {
		const order = pages.slice(1).filter((text) => text.includes('Assembly order') && /sheet \d+ of/.test(text));
		expect(order.length).toBeGreaterThan(1);
		for (const text of order) expect(text).toContain('Stop until');
	});
	test('contents give the first sheet of each section', () => {
		for (const { title, id } of input.sections) {
			if (id === 'cover' || id === 'drawing') continue;
			const [, page] = new RegExp(`${title.replaceAll(/[()]/g, '.')}.*?(\\d+)(?: to \\d+)?$`, 'm').exec(pages[0]!)!;
			expect(flat(pages[Number(page) - 1]!), title).toContain(title);
		}
	});
	test('is on the paper that was asked for', () => {
		const points = (mm: number): number => (mm * 72) / 25.4;
		const allowed = [options.paper, options.drawingPaper].flatMap((id) => {
			const { widthMm, heightMm } = PAPERS[id];
			return [
				[widthMm, heightMm],
				[heightMm, widthMm]
			];
		});
		for (const [width, height] of pdfSizes(new Uint8Array(bytes)))
			expect(allowed.some(([w, h]) => Math.abs(points(w!) - width) < 0.5 && Math.abs(points(h!) - height) < 0.5)).toBe(true);
	});
});

test('an empty diagram makes a packet that says so', async () => {
	const { bytes } = await packetPdf(packetOf(emptyDiagram()), A4, fonts);
	const whole = flat(pdfPageTexts(new Uint8Array(bytes)).join('\n'));
	expect(whole).toContain('The diagram has no conductors.');
	expect(whole).not.toMatch(/undefined|NaN/);
});

test('characters without a shape are named', async () => {
	const diagram = example('ridge-post-after');
	const odd = { ...diagram, titleBlock: { ...diagram.titleBlock, title: '船 Ridge Ω' } };
	expect((await packetPdf(packetOf(odd, ['cover']), A4, fonts)).missing).toEqual(['船']);
});

test('text that people type is printed as it is, whatever it looks like', async () => {
	const diagram = example('ridge-post-after');
	const odd = { ...diagram, titleBlock: { ...diagram.titleBlock, title: 'A (b) \\ </svg> & "c"' } };
	const { bytes } = await packetPdf(packetOf(odd, ['cover']), A4, fonts);
	expect(pdfPageTexts(new Uint8Array(bytes))[0]).toContain('A (b) \\ </svg> & "c"');
});
