/**
 * Writes drawings to look at, with `symbols` at the end as symbols:
 *
 *     npx tsx tests/support/draw-sheet.ts parts [light|dark|paper] > sheet.svg
 *     npx tsx tests/support/draw-sheet.ts FILE.json [light|dark|paper] > diagram.svg
 */
import { readFileSync } from 'node:fs';
import { DiagramSchema, type Part } from '#core/diagram';
import { composeScene, drawPart, type DrawnItem, type Scene } from '#core/drawing';
import { inflateBox, unionBoxes, type Box } from '#core/geometry';
import { PALETTES, svgOf, text, type Primitive, type ThemeName } from '#core/graphics';
import { definitionOf, newParams, partDefinitions } from '#core/parts';
import { SYMBOLS } from '#core/symbols';

const [what = 'parts', theme = 'light', view = 'outlines'] = process.argv.slice(2);
const symbols = view === 'symbols' ? SYMBOLS : null;

const MARGIN_MM = 40;
const SHEET_WIDTH_MM = 1900;

const primitivesOf = ({ order, items }: Scene): Primitive[] => {
	const drawn = order.map((key) => items.get(key)!);
	return [...drawn.flatMap((item) => item.primitives), ...drawn.flatMap((item) => item.labels)];
};

/** Every kind at its defaults, and a few with other parameters, in rows. */
function contactSheet(): { primitives: Primitive[]; box: Box } {
	const extras: [string, Part['params'], Part['rotation']][] = [
		['battery', { chemistry: 'lead-acid', capacityAh: 120 }, 0],
		['fused-bus', { positions: 6, fuseA: [250, 100, 40, 60, null, 125] }, 0],
		['fused-bus', { positions: 3, fuseA: [250, 100, 40] }, 90],
		['inline-fuse', { family: 'class-t', fuseA: 225 }, 0],
		['inline-fuse', { family: 'strip-sf51', fuseA: 150 }, 0],
		['load', { connection: 'studs', draw: 90 }, 0],
		['blade-panel', { ways: 12, fuseA: [5, 10, 10, 6, 2, 5, 10, 15, null, 20, 3, 7.5] }, 0],
		['positive-bus', { studs: 6 }, 0],
		['shunt', {}, 90]
	];
	const shown = [...partDefinitions.map(({ kind }) => [kind, {}, 0] as const), ...extras];
	const primitives: Primitive[] = [];
	let x = MARGIN_MM;
	let y = MARGIN_MM;
	let rowHeight = 0;
	let box: Box = { minX: 0, minY: 0, maxX: SHEET_WIDTH_MM, maxY: 0 };
	for (const [kind, params, rotation] of shown) {
		const part: Part = {
			kind,
			label: `${definitionOf(kind)!.letter}1`,
			at: { x: 0, y: 0 },
			rotation,
			params: { ...newParams(kind), ...params },
			note: ''
		};
		const size = drawPart('P', part, { at: { x: 0, y: 0 }, turn: rotation }, { symbols }).box;
		if (x + size.maxX - size.minX > SHEET_WIDTH_MM - MARGIN_MM) {
			x = MARGIN_MM;
			y += rowHeight + 70;
			rowHeight = 0;
		}
		const item: DrawnItem = drawPart('P', part, { at: { x: x - size.minX, y: y - size.minY }, turn: rotation }, { symbols });
		primitives.push(
			...item.primitives,
			...item.labels,
			text(item.box.minX, item.box.maxY + 14, kind, 11, { align: 'start', fill: 'muted' })
		);
		x += size.maxX - size.minX + MARGIN_MM;
		rowHeight = Math.max(rowHeight, size.maxY - size.minY);
		box = unionBoxes(box, item.box);
	}
	return { primitives, box: inflateBox(box, MARGIN_MM) };
}

function diagramSheet(path: string): { primitives: Primitive[]; box: Box } {
	const scene = composeScene(DiagramSchema.parse(JSON.parse(readFileSync(path, 'utf8'))), { symbols });
	return { primitives: primitivesOf(scene), box: inflateBox(scene.bounds ?? { minX: 0, minY: 0, maxX: 100, maxY: 100 }, MARGIN_MM) };
}

const { primitives, box } = what === 'parts' ? contactSheet() : diagramSheet(what);
process.stdout.write(svgOf(primitives, box, PALETTES[theme as ThemeName]));
