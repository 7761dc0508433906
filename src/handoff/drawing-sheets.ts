/** The drawing on sheets: whole on one, or cut into tiles large enough to read. */
import { parseItemKey, type Diagram, type PartId } from '#core/diagram';
import type { Scene } from '#core/drawing';
import { boxCentre, boxHeight, boxWidth, inflateBox, boxesIntersect, polylineIntersectsBox, type Box, type Point } from '#core/geometry';
import { boundsOf, line, rect, text, type Primitive, wrap } from '#core/graphics';
import { drawFrame, frameBox, zoneAt } from './frame.ts';
import type { Measure, Page } from './page.ts';
import { sheetSize, type Orientation, type PaperId, type Size } from './paper.ts';
import { scaled } from './scale.ts';
import { scenePrimitives } from './scene.ts';
import { drawTitleBlock, TITLE_BLOCK_MM, type SheetNumber } from './title-block.ts';
import { fixedText } from '#core/units';

export type Placing = 'fitted' | 'tiled';

/** Most text of a drawing is this high; on a tile it comes out at 2.5 mm, which ISO 3098 gives as the least. */
const USUAL_TEXT_MM = 9.5;
const LEAST_TEXT_MM = 2.5;
const TILE_SCALE = LEAST_TEXT_MM / USUAL_TEXT_MM;
/** Shown on both of two neighbouring tiles, on paper. */
const OVERLAP_MM = 10;
const AIR_MM = 4;
const LEGEND_ROOM_MM = 52;
/** A diagram larger than this many tiles is printed smaller. */
const MOST_TILES = 24;

export interface DrawingSheet {
	readonly window: Box;
	readonly primitives: readonly Primitive[];
	readonly column: number;
	readonly row: number;
}

export interface DrawingSheets {
	readonly size: Size;
	/** Millimetres on paper for one of the drawing. */
	readonly scale: number;
	readonly columns: number;
	readonly rows: number;
	readonly sheets: readonly DrawingSheet[];
	/** Where a point of the drawing is: which sheet, from 0, and its field. */
	find(point: Point): { readonly sheet: number; readonly zone: string };
}

/** Null for a drawing with nothing on it. */
export function drawingSheets(scene: Scene, paper: PaperId, placing: Placing): DrawingSheets | null {
	if (!scene.bounds) return null;
	const bounds = inflateBox(scene.bounds, 10);
	const layouts = (['landscape', 'portrait'] as const).map((orientation) => layOut(bounds, paper, orientation, placing));
	const better =
		placing === 'fitted' ? (a: Layout, b: Layout) => b.scale > a.scale : (a: Layout, b: Layout) => b.columns * b.rows < a.columns * a.rows;
	const chosen = better(layouts[0]!, layouts[1]!) ? layouts[1]! : layouts[0]!;
	return cut(scene, bounds, chosen);
}

interface Layout {
	readonly size: Size;
	readonly area: Box;
	readonly scale: number;
	readonly columns: number;
	readonly rows: number;
}

const areaOf = (size: Size): Box => {
	const frame = frameBox(size);
	return {
		minX: frame.minX + AIR_MM / 2,
		minY: frame.minY + AIR_MM / 2,
		maxX: frame.maxX - AIR_MM / 2,
		maxY: frame.maxY - TITLE_BLOCK_MM.height - AIR_MM / 2
	};
};

function layOut(bounds: Box, paper: PaperId, orientation: Orientation, placing: Placing): Layout {
	const size = sheetSize(paper, orientation);
	const area = areaOf(size);
	const [w, h] = [boxWidth(area), boxHeight(area)];
	const fitted = Math.min(w / boxWidth(bounds), h / boxHeight(bounds), 1);
	if (placing === 'fitted' || fitted >= TILE_SCALE) return { size, area, scale: fitted, columns: 1, rows: 1 };
	const tiles = (length: number, room: number): number => Math.max(1, Math.ceil((length * TILE_SCALE - OVERLAP_MM) / (room - OVERLAP_MM)));
	let [columns, rows] = [tiles(boxWidth(bounds), w), tiles(boxHeight(bounds), h)];
	while (columns * rows > MOST_TILES) {
		if (columns >= rows) columns -= 1;
		else rows -= 1;
	}
	const span = (count: number, room: number): number => count * room - (count - 1) * OVERLAP_MM;
	return { size, area, columns, rows, scale: Math.min(span(columns, w) / boxWidth(bounds), span(rows, h) / boxHeight(bounds), 1) };
}

function cut(scene: Scene, bounds: Box, { size, area, scale, columns, rows }: Layout): DrawingSheets {
	const [w, h] = [boxWidth(area), boxHeight(area)];
	const [stepX, stepY] = [w - OVERLAP_MM, h - OVERLAP_MM];
	// The drawing in the middle of all tiles together.
	const restX = (columns - 1) * stepX + w - boxWidth(bounds) * scale;
	const restY = (rows - 1) * stepY + h - boxHeight(bounds) * scale;
	const originX = area.minX + restX / 2 - bounds.minX * scale;
	const originY = area.minY + restY / 2 - bounds.minY * scale;
	const primitives = scenePrimitives(scene);
	const tiles = Array.from({ length: columns * rows }, (_, index): DrawingSheet => {
		const [column, row] = [index % columns, Math.floor(index / columns)];
		const [dx, dy] = [originX - column * stepX, originY - row * stepY];
		return {
			window: area,
			primitives: primitives.map((primitive) => scaled(primitive, scale, dx, dy)).filter((primitive) => shows(primitive, area)),
			column,
			row
		};
	});
	// A tile with nothing on it is not printed; its neighbours say so by naming no sheet there.
	const sheets = tiles.filter((tile) => tile.primitives.length > 0);
	return {
		size,
		scale,
		columns,
		rows,
		sheets,
		find(point) {
			const onAll = { x: point.x * scale + originX, y: point.y * scale + originY };
			const inTile = (at: number, from: number, step: number, count: number): number =>
				Math.max(0, Math.min(count - 1, Math.floor((at - from - OVERLAP_MM / 2) / step)));
			const column = inTile(onAll.x, area.minX, stepX, columns);
			const row = inTile(onAll.y, area.minY, stepY, rows);
			return {
				sheet: Math.max(0, sheetAt({ sheets }, column, row)),
				zone: zoneAt({ x: onAll.x - column * stepX, y: onAll.y - row * stepY }, size)
			};
		}
	};
}

/** A conductor that leads around a tile is not on it. */
const shows = (primitive: Primitive, area: Box): boolean =>
	boxesIntersect(boundsOf([primitive]), area) &&
	(primitive.kind !== 'polyline' ||
		primitive.closed === true ||
		polylineIntersectsBox(primitive.points, inflateBox(area, primitive.width ?? 0)));

/** Index of the sheet that is this tile; -1 where there is nothing on it. */
const sheetAt = ({ sheets }: Pick<DrawingSheets, 'sheets'>, column: number, row: number): number =>
	sheets.findIndex((sheet) => sheet.column === column && sheet.row === row);

/** Where each part is, by its id. */
export const placesOf = (sheets: DrawingSheets, scene: Scene): Map<PartId, { readonly sheet: number; readonly zone: string }> =>
	new Map(
		[...scene.items.values()].flatMap(({ key, body }) => {
			const { kind, id } = parseItemKey(key);
			return kind === 'part' && body ? [[id, sheets.find(boxCentre(body))] as const] : [];
		})
	);

/** @param first number of the first of these sheets */
export function drawingPages(
	sheets: DrawingSheets,
	diagram: Diagram,
	title: string,
	first: number,
	total: number,
	measure: Measure
): Page[] {
	return sheets.sheets.map((sheet, index) => {
		const frame = frameBox(sheets.size);
		// Room for the legend beside it comes before its usual width.
		const width = Math.min(TITLE_BLOCK_MM.width, boxWidth(frame) - LEGEND_ROOM_MM);
		const block = { minX: frame.maxX - width, maxX: frame.maxX, minY: frame.maxY - TITLE_BLOCK_MM.height, maxY: frame.maxY };
		const number: SheetNumber = { sheet: first + index, sheets: total };
		return {
			size: sheets.size,
			window: { box: sheet.window, primitives: sheet.primitives },
			primitives: [
				...drawFrame(sheets.size),
				...neighbours(sheets, sheet, first),
				...drawTitleBlock(block, diagram.titleBlock, title, number, measure),
				...legend({ ...block, minX: frame.minX, maxX: block.minX }, sheets, sheet, measure)
			],
			...(index === 0 ? { bookmark: title } : {})
		};
	});
}

/** "sheet 5" at each side where the drawing goes on. */
function neighbours(sheets: DrawingSheets, { column, row, window }: DrawingSheet, first: number): Primitive[] {
	const { x, y } = boxCentre(window);
	const tag = (tagX: number, tagY: number, dx: number, dy: number): Primitive[] => {
		const at = sheetAt(sheets, column + dx, row + dy);
		if (at < 0) return [];
		return [
			rect(tagX - 9, tagY - 2.2, 18, 4.4, { fill: 'paper', stroke: 'muted', width: 0.18, r: 1 }),
			text(tagX, tagY, `sheet ${first + at}`, 2.5)
		];
	};
	return [
		...tag(window.minX + 9, y, -1, 0),
		...tag(window.maxX - 9, y, 1, 0),
		...tag(x, window.minY + 2.2, 0, -1),
		...tag(x, window.maxY - 2.2, 0, 1)
	];
}

const LEGEND_MM = 2.2;

function legend(box: Box, sheets: DrawingSheets, sheet: DrawingSheet, measure: Measure): Primitive[] {
	const { scale, columns, rows } = sheets;
	const isTiled = columns * rows > 1;
	const key = isTiled ? keyMap({ minX: box.minX + 2, minY: box.minY + 3, maxX: box.minX + 16, maxY: box.maxY - 3 }, sheets, sheet) : [];
	const left = box.minX + (isTiled ? 18 : 2);
	const words = [
		`Scale about 1 : ${fixedText(1 / scale, 1)}. Parts are drawn at their size; lengths of conductors are in the schedule, not in the drawing.`,
		'Plus and minus signs on the conductors tell the poles apart without colour.',
		...(isTiled ? ['Neighbouring sheets overlap by 10 mm.'] : []),
		...(sheets.sheets.length < columns * rows ? ['Crossed out at the left: nothing is drawn there, and no sheet is printed.'] : [])
	];
	const lines = words.flatMap((line) => wrap(line, box.maxX - left - 2, (t) => measure(t, LEGEND_MM)));
	return [
		...key,
		...lines.map((line, index) => text(left, box.minY + 4 + index * LEGEND_MM * 1.35, line, LEGEND_MM, { align: 'start', fill: 'muted' }))
	];
}

/** Which of the tiles this one is, and which were not printed. */
function keyMap(box: Box, sheets: DrawingSheets, here: DrawingSheet): Primitive[] {
	const { columns, rows } = sheets;
	const cell = Math.min(boxWidth(box) / columns, boxHeight(box) / rows, 8);
	return Array.from({ length: columns * rows }, (_, index) => {
		const [column, row] = [index % columns, Math.floor(index / columns)];
		const [x, y] = [box.minX + column * cell, box.minY + row * cell];
		const isHere = column === here.column && row === here.row;
		const isPrinted = sheetAt(sheets, column, row) >= 0;
		return [
			rect(x, y, cell, cell, { stroke: 'muted', width: 0.25, ...(isHere ? { fill: 'metal' as const } : {}) }),
			...(isPrinted ? [] : [line(x, y, x + cell, y + cell, { stroke: 'muted', width: 0.18 })])
		];
	}).flat();
}
