/** Sections → sheets: numbered, with their contents on the cover. */
import type { Diagram } from '#core/diagram';
import type { Scene } from '#core/drawing';
import { line, text, type Primitive } from '#core/graphics';
import { describe } from '#core/parts';
import type { Section, Table } from '#core/reports';
import { drawingPages, drawingSheets, placesOf, type DrawingSheets, type Placing } from './drawing-sheets.ts';
import { putFigures } from './figures.ts';
import { Flow, MARGIN_MM } from './flow.ts';
import { labelSheets } from './label-sheets.ts';
import type { Measure, Page } from './page.ts';
import { sheetSize, type PaperId, type Size } from './paper.ts';
import { drawRunning } from './running.ts';
import { LARGE, PLAIN } from './table-layout.ts';
import { drawTitleBlock, TITLE_BLOCK_MM, type SheetNumber } from './title-block.ts';
import { remembered } from './remembered.ts';

export interface PacketOptions {
	/** For tables and labels. */
	readonly paper: PaperId;
	readonly drawingPaper: PaperId;
	readonly placing: Placing;
}

export interface PacketInput {
	readonly diagram: Diagram;
	/** As the canvas shows it. */
	readonly scene: Scene;
	readonly sections: readonly Section[];
	/** "Checked against …: 2 errors." */
	readonly verdict: string;
	/** True leaves out the list of where the parts are on the drawing. */
	readonly withoutPlaces?: boolean;
}

/** Sheets of a section before the number of all is known. */
interface Bound {
	readonly section: Section;
	readonly count: number;
	pages(first: number, total: number): Page[];
}

export function packetPages(input: PacketInput, options: PacketOptions, measureText: Measure): Page[] {
	const measure = remembered(measureText);
	const sheets = drawingSheets(input.scene, options.drawingPaper, options.placing);
	const bound = input.sections.filter(({ id }) => id !== 'cover').map((section) => bind(section, input, options, sheets, measure));
	const cover = input.sections.find(({ id }) => id === 'cover');
	const size = sheetSize(options.paper, 'portrait');
	// The contents take the same room whatever the numbers in them.
	const coverCount = cover ? coverSheets(cover, input, size, firstsOf(bound, 1), measure).sheets.length : 0;
	const total = coverCount + bound.reduce((sum, { count }) => sum + count, 0);
	const firsts = firstsOf(bound, coverCount + 1);
	return [
		...(cover ? coverPages(cover, input, size, firsts, total, measure) : []),
		...bound.flatMap((part, index) => part.pages(firsts[index]!.page, total))
	];
}

interface First {
	readonly section: Section;
	readonly page: number;
	readonly count: number;
}

function firstsOf(bound: readonly Bound[], from: number): First[] {
	let page = from;
	return bound.map(({ section, count }) => {
		const first = { section, page, count };
		page += count;
		return first;
	});
}

function bind(section: Section, input: PacketInput, options: PacketOptions, sheets: DrawingSheets | null, measure: Measure): Bound {
	if (section.id === 'drawing') return bindDrawing(section, input, options, sheets, measure);
	const size = sheetSize(options.paper, section.orientation);
	const filled =
		section.layout === 'labels'
			? labelSheets(section.tables, size, measure)
			: filledWith(section.tables, size, section.layout === 'large' ? LARGE : PLAIN, measure);
	return running(section, input, size, filled, measure);
}

const filledWith = (tables: readonly Table[], size: Size, sizes: typeof PLAIN, measure: Measure): readonly (readonly Primitive[])[] => {
	const flow = new Flow(size, sizes, measure);
	for (const table of tables) {
		flow.table(table);
		putFigures(flow, table, measure);
	}
	return flow.sheets;
};

function running(
	section: Section,
	{ diagram, verdict }: PacketInput,
	size: Size,
	filled: readonly (readonly Primitive[])[],
	measure: Measure
): Bound {
	return {
		section,
		count: filled.length,
		pages: (first, total) =>
			filled.map((primitives, index) => ({
				size,
				primitives: [
					...primitives,
					...drawRunning(
						size,
						{ block: diagram.titleBlock, section: section.title, verdict },
						{ sheet: first + index, sheets: total },
						measure
					)
				],
				...(index === 0 ? { bookmark: section.title } : {})
			}))
	};
}

/** The drawing, then a list of where each part is on it. */
function bindDrawing(section: Section, input: PacketInput, options: PacketOptions, sheets: DrawingSheets | null, measure: Measure): Bound {
	const size = sheetSize(options.paper, 'portrait');
	if (!sheets) return running(section, input, size, filledWith([whereTable(input, null, 1)], size, PLAIN, measure), measure);
	const listed = (first: number): readonly (readonly Primitive[])[] =>
		input.withoutPlaces ? [] : filledWith([whereTable(input, sheets, first)], size, PLAIN, measure);
	return {
		section,
		count: sheets.sheets.length + listed(1).length,
		pages: (first, total) => [
			...drawingPages(sheets, input.diagram, section.title, first, total, measure),
			...running({ ...section, title: 'Where the parts are' }, input, size, listed(first), measure).pages(
				first + sheets.sheets.length,
				total
			)
		]
	};
}

function whereTable({ diagram, scene }: PacketInput, sheets: DrawingSheets | null, first: number): Table {
	const places = sheets ? placesOf(sheets, scene) : new Map<string, never>();
	const rows = Object.entries(diagram.parts).map(([id, part]) => {
		const place = places.get(id);
		const { definition, name, summary } = describe(part);
		return {
			cells: {
				part: part.label.trim() || id,
				what: name,
				ratings: definition ? summary : '',
				sheet: place ? first + place.sheet : null,
				zone: place?.zone ?? '',
				note: part.note.trim()
			}
		};
	});
	return {
		id: 'where',
		title: 'Where the parts are',
		lead: 'Fields are named by the letters and numbers along the frame.',
		columns: [
			{ id: 'part', title: 'Part', kind: 'text' },
			{ id: 'what', title: 'What it is', kind: 'text' },
			{ id: 'ratings', title: 'Ratings', kind: 'text' },
			{ id: 'sheet', title: 'Sheet', kind: 'number', decimals: 0 },
			{ id: 'zone', title: 'Field', kind: 'text' },
			{ id: 'note', title: 'Note', kind: 'text' }
		],
		rows,
		whenEmpty: 'The diagram has no parts.',
		notes: []
	};
}

const TITLE_MM = 9;
const SUBTITLE_MM = 5;
const CONTENTS_MM = 3;

function coverSheets(section: Section, { diagram, verdict }: PacketInput, size: Size, firsts: readonly First[], measure: Measure) {
	const { title, supplementaryTitle } = diagram.titleBlock;
	const flow = new Flow(size, PLAIN, measure);
	const links: { readonly sheet: number; readonly y: number; readonly page: number }[] = [];
	flow.put([], 6);
	flow.paragraph(title.trim() || 'Untitled diagram', TITLE_MM, { bold: true });
	if (supplementaryTitle.trim() !== '') flow.paragraph(supplementaryTitle.trim(), SUBTITLE_MM);
	flow.put([], 2);
	flow.paragraph('Hand-off packet: drawing, schedules and tests', 3.4, { muted: true });
	flow.put([], 2);
	for (const table of section.tables) flow.table(table);
	flow.space(6);
	if (firsts.length > 0) flow.paragraph('Contents', 4.2, { bold: true });
	flow.put([], 1);
	for (const { section: listed, page, count } of firsts) {
		const height = CONTENTS_MM * 1.7;
		flow.need(height);
		const y = flow.y + height / 2;
		const number = count === 1 ? String(page) : `${page} to ${page + count - 1}`;
		const titleMm = measure(listed.title, CONTENTS_MM, true);
		const right = flow.left + flow.width;
		links.push({ sheet: flow.sheets.length - 1, y: flow.y, page });
		flow.put(
			[
				text(flow.left, y, listed.title, CONTENTS_MM, { align: 'start', bold: true }),
				text(flow.left + titleMm + 3, y, cutTo(listed.purpose, flow.width - titleMm - 25, measure), 2.5, { align: 'start', fill: 'muted' }),
				text(right, y, number, CONTENTS_MM, { align: 'end' }),
				line(flow.left, y + height / 2, right, y + height / 2, { stroke: 'faint', width: 0.18 })
			],
			height
		);
	}
	flow.space(5);
	flow.need(TITLE_BLOCK_MM.height + 16);
	flow.paragraph(verdict, 2.7);
	flow.paragraph('A drawing aid, not an inspection: have the finished installation inspected by a licensed person.', 2.7, { bold: true });
	return { sheets: flow.sheets, links };
}

function cutTo(words: string, roomMm: number, measure: Measure): string {
	if (measure(words, 2.5) <= roomMm) return words;
	let end = words.length;
	while (end > 0 && measure(`${words.slice(0, end)} …`, 2.5) > roomMm) end = words.lastIndexOf(' ', end - 1);
	return end > 0 ? `${words.slice(0, end)} …` : '';
}

function coverPages(section: Section, input: PacketInput, size: Size, firsts: readonly First[], total: number, measure: Measure): Page[] {
	const { sheets, links } = coverSheets(section, input, size, firsts, measure);
	const bottom = size.heightMm - MARGIN_MM.bottom + 2;
	const block = { minX: MARGIN_MM.left, maxX: size.widthMm - MARGIN_MM.right, minY: bottom - TITLE_BLOCK_MM.height, maxY: bottom };
	return sheets.map((primitives, index) => {
		const number: SheetNumber = { sheet: index + 1, sheets: total };
		const isLast = index === sheets.length - 1;
		return {
			size,
			primitives: [
				...primitives,
				...(isLast
					? drawTitleBlock(block, input.diagram.titleBlock, 'Hand-off packet', number, measure)
					: drawRunning(size, { block: input.diagram.titleBlock, section: section.title, verdict: input.verdict }, number, measure))
			],
			links: links
				.filter(({ sheet }) => sheet === index)
				.map(({ y, page }) => ({ box: { minX: block.minX, maxX: block.maxX, minY: y, maxY: y + CONTENTS_MM * 1.7 }, page })),
			...(index === 0 ? { bookmark: section.title } : {})
		};
	});
}
