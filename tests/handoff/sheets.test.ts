/** Paper: ISO 216, ANSI/ASME Y14.1; frames and fields: ISO 5457, from memory. */
import { describe, expect, test } from 'vitest';
import { composeScene } from '#core/drawing';
import { boundsOf, wrap } from '#core/graphics';
import type { Table } from '#core/reports';
import { packetPages, PAPER_IDS, sheetSize, type PacketOptions } from '#handoff';
import { drawingPages, drawingSheets } from '../../src/handoff/drawing-sheets.ts';
import { drawingSvg } from '../../src/handoff/drawing-svg.ts';
import { Flow } from '../../src/handoff/flow.ts';
import { zoneAt } from '../../src/handoff/frame.ts';
import { scenePrimitives } from '../../src/handoff/scene.ts';
import { layTable, PLAIN } from '../../src/handoff/table-layout.ts';
import { example } from '../support/examples/figures.ts';
import { packetOf } from '../support/packet.ts';

/** As wide as text in the packet's font on average; layouts must hold for any. */
const measure = (text: string, sizeMm: number, bold = false): number => text.length * sizeMm * (bold ? 0.6 : 0.52);

describe('fields of a frame', () => {
	// A3 lying on its side: 420 × 297, borders 20 at the left and 10 elsewhere, fields of 50 mm from the middle.
	const a3 = sheetSize('a3', 'landscape');
	test('are counted from the top left corner', () => expect(zoneAt({ x: 21, y: 11 }, a3)).toBe('A1'));
	test('have a border in the middle of the sheet', () => {
		expect(zoneAt({ x: 209, y: 148 }, a3)).not.toBe(zoneAt({ x: 211, y: 148 }, a3));
		expect(zoneAt({ x: 209, y: 148 }, a3)[0]).not.toBe(zoneAt({ x: 209, y: 149 }, a3)[0]);
	});
	test('leave out I and O', () => {
		const letters = Array.from({ length: 40 }, (_, index) => zoneAt({ x: 30, y: 12 + index * 50 }, { widthMm: 200, heightMm: 2000 })[0]);
		expect(letters.join('')).not.toMatch(/[IO]/);
	});
});

describe('the drawing', () => {
	const scene = composeScene(example('ridge-post-after'));
	const texts = (list: ReturnType<typeof scenePrimitives>): string[] => list.flatMap((p) => (p.kind === 'text' ? [p.text] : []));

	test.each(PAPER_IDS)('fits on one sheet of %s, inside its frame', (paper) => {
		const sheets = drawingSheets(scene, paper, 'fitted')!;
		expect(sheets.sheets).toHaveLength(1);
		const box = boundsOf(sheets.sheets[0]!.primitives);
		const { window } = sheets.sheets[0]!;
		expect(box.minX).toBeGreaterThanOrEqual(window.minX);
		expect(box.maxX).toBeLessThanOrEqual(window.maxX);
		expect(box.minY).toBeGreaterThanOrEqual(window.minY);
		expect(box.maxY).toBeLessThanOrEqual(window.maxY);
	});
	test('is the canvas’s scene, whole, as a picture and on paper', () => {
		const drawn = texts(scenePrimitives(scene));
		expect(drawn.length).toBeGreaterThan(100);
		expect(texts([...drawingSheets(scene, 'a3', 'fitted')!.sheets[0]!.primitives])).toEqual(drawn);
		const svg = drawingSvg(scene, 'Title')!;
		expect(svg.match(/<text /g)).toHaveLength(drawn.length);
	});
	test('in tiles has text of 2.5 mm, and every part on one of them', () => {
		const sheets = drawingSheets(scene, 'a4', 'tiled')!;
		expect(sheets.sheets.length).toBeGreaterThan(3);
		expect(sheets.scale * 9.5).toBeGreaterThanOrEqual(2.5 - 1e-9);
		const all = new Set(sheets.sheets.flatMap(({ primitives }) => texts([...primitives])));
		for (const text of texts(scenePrimitives(scene))) expect(all).toContain(text);
	});
	test('finds a part on the tile whose window shows it', () => {
		const sheets = drawingSheets(scene, 'a4', 'tiled')!;
		for (const { body, key } of scene.items.values()) {
			if (!body) continue;
			const centre = { x: (body.minX + body.maxX) / 2, y: (body.minY + body.maxY) / 2 };
			const { sheet, zone } = sheets.find(centre);
			expect(sheets.sheets[sheet], key).toBeDefined();
			expect(zone).toMatch(/^[A-H]\d$/);
		}
	});
	test('has no sheet for a tile with nothing on it, and no neighbour names one', () => {
		// A part in each of two opposite corners, far apart: the other corners are empty.
		const parts = Object.values(example('ridge-post-after').parts).slice(0, 2);
		const apart = {
			...example('ridge-post-after'),
			conductors: {},
			mounts: {},
			stacks: {},
			parts: Object.fromEntries(parts.map((part, i) => [`P${i}`, { ...part, at: { x: i * 2000, y: i * 2000 } }]))
		};
		const sheets = drawingSheets(composeScene(apart), 'a4', 'tiled')!;
		const tiles = sheets.columns * sheets.rows;
		expect(tiles).toBeGreaterThan(3);
		expect(sheets.sheets.length).toBeLessThan(tiles);
		for (const { primitives } of sheets.sheets) expect(primitives.length).toBeGreaterThan(0);
		const pages = drawingPages(sheets, apart, 'Wiring diagram', 5, 40, measure);
		const named = pages.flatMap(({ primitives }) => texts([...primitives]).flatMap((text) => /^sheet (\d+)$/.exec(text)?.[1] ?? []));
		for (const number of named) expect(Number(number)).toBeLessThan(5 + sheets.sheets.length);
		// Both parts are found on a sheet that shows them.
		for (const { body } of composeScene(apart).items.values()) {
			if (!body) continue;
			const { sheet } = sheets.find({ x: (body.minX + body.maxX) / 2, y: (body.minY + body.maxY) / 2 });
			expect(sheets.sheets[sheet]!.primitives.length).toBeGreaterThan(3);
		}
	});
	test('of an empty diagram is nothing', () => {
		const empty = composeScene({ ...example('ridge-post-after'), parts: {}, conductors: {}, mounts: {} });
		expect(drawingSheets(empty, 'a4', 'fitted')).toBeNull();
		expect(drawingSvg(empty, '')).toBeNull();
	});
});

describe('tables', () => {
	const table = (rows: number, words = 'some text', group?: string): Table => ({
		id: 't',
		title: 'A table',
		columns: [
			{ id: 'a', title: 'Name', kind: 'text' },
			{ id: 'b', title: 'What', kind: 'text' }
		],
		rows: Array.from({ length: rows }, (_, index) => ({ cells: { a: `row ${index + 1}.`, b: words }, ...(group ? { group } : {}) })),
		whenEmpty: 'nothing',
		notes: []
	});
	const size = sheetSize('a4', 'portrait');
	const laid = (made: Table): string[][] => {
		const flow = new Flow(size, PLAIN, measure);
		flow.table(made);
		return flow.sheets.map((sheet) => sheet.flatMap((p) => (p.kind === 'text' ? [p.text] : [])));
	};

	test.each(Array.from({ length: 40 }, (_, index) => 35 + index))(
		'of %d rows: no sheet holds a single row, every sheet has the head',
		(rows) => {
			for (const texts of laid(table(rows))) {
				expect(texts).toContain('Name');
				expect(texts.filter((text) => text.startsWith('row ')).length).toBeGreaterThan(1);
			}
		}
	);
	test.each(Array.from({ length: 40 }, (_, index) => 35 + index))('of %d rows: notes stay with the last row', (rows) => {
		const sheets = laid({ ...table(rows), notes: ['A note.', 'Another note.'] });
		expect(sheets.at(-1)!.some((text) => text.startsWith('row '))).toBe(true);
	});
	test('show every row once, in order', () => {
		const shown = laid(table(200))
			.flat()
			.filter((text) => text.startsWith('row '));
		expect(shown).toEqual(Array.from({ length: 200 }, (_, index) => `row ${index + 1}.`));
	});
	test('repeat the name of a group that goes on', () => {
		const sheets = laid(table(120, 'x', 'Group'));
		expect(sheets.length).toBeGreaterThan(1);
		for (const texts of sheets.slice(1)) expect(texts).toContain('Group, continued');
	});
	test('break a row that is higher than a sheet, and lose nothing of it', () => {
		const words = Array.from({ length: 3000 }, (_, index) => `word${index}`);
		const shown = laid(table(1, words.join(' ')))
			.flat()
			.join(' ')
			.match(/word\d+/g);
		expect(shown).toEqual(words);
	});
	test.each(['a4', 'letter'] as const)('of the packet on %s: everything lies on its sheet and in its column', (paper) => {
		for (const name of ['ridge-post-before', 'otters-reach-before', 'skarv-fell-before', 'pagemoor-before']) {
			const input = packetOf(example(name));
			const options: PacketOptions = { paper, drawingPaper: paper, placing: 'fitted' };
			for (const [index, { size: sheet, primitives }] of packetPages(input, options, measure).entries()) {
				for (const primitive of primitives) {
					if (primitive.kind !== 'text') continue;
					const width = measure(primitive.text, primitive.size, primitive.bold);
					const left =
						primitive.align === 'end' ? primitive.x - width : primitive.align === 'start' ? primitive.x : primitive.x - width / 2;
					const where = `${name} sheet ${index + 1}: ${primitive.text}`;
					expect(left, where).toBeGreaterThanOrEqual(4);
					expect(left + width, where).toBeLessThanOrEqual(sheet.widthMm - 4);
					expect(primitive.y, where).toBeLessThanOrEqual(sheet.heightMm - 4);
				}
			}
			for (const made of input.sections.flatMap(({ tables }) => tables)) {
				const { widths, rows, head } = layTable(made, 180, PLAIN, measure);
				expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(180, 6);
				for (const { cells } of rows)
					cells.forEach(({ lines }, column) => {
						for (const line of lines) expect(measure(line, PLAIN.bodyMm), line).toBeLessThanOrEqual(widths[column]!);
					});
				head.forEach(({ lines }, column) => {
					for (const line of lines) expect(measure(line, PLAIN.headMm, true), line).toBeLessThanOrEqual(widths[column]!);
				});
			}
		}
	});
});

describe('wrapping', () => {
	const count = (text: string): number => text.length;
	test.each([
		['one two three', 7, ['one two', 'three']],
		['terminal-mounted', 10, ['terminal-', 'mounted']],
		['abcdefghij', 4, ['abcd', 'efgh', 'ij']],
		['a\nb', 9, ['a', 'b']],
		['fits', 4, ['fits']],
		['lug 12 AWG', 7, ['lug', '12 AWG']]
	])('%j in %d', (text, width, lines) => expect(wrap(text, width, count)).toEqual(lines));
});
