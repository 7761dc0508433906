/** Drawings that go with a table's rows, side by side below it. */
import { boxHeight, boxWidth } from '#core/geometry';
import { boxRect, text, type Primitive, wrap } from '#core/graphics';
import type { Figure, Table } from '#core/reports';
import type { Flow } from './flow.ts';
import type { Measure } from './page.ts';
import { scaled } from './scale.ts';

const TEXT_MM = 2.3;
const CAPTION_MM = 2.7;
const GAP_MM = 4;
const PAD_MM = 2;

export function putFigures(flow: Flow, { rows, title }: Table, measure: Measure): void {
	const figures = rows.flatMap(({ figure }) => figure ?? []);
	if (figures.length === 0) return;
	const widest = Math.max(...figures.map((figure) => boxWidth(figure.box) * scaleOf(figure))) + 2 * PAD_MM;
	const perRow = Math.max(1, Math.floor((flow.width + GAP_MM) / (widest + GAP_MM)));
	const width = (flow.width + GAP_MM) / perRow - GAP_MM;
	flow.space(GAP_MM * 2);
	for (let start = 0; start < figures.length; start += perRow) {
		const row = figures.slice(start, start + perRow);
		const height = Math.max(...row.map(({ box, textMm }) => (boxHeight(box) * TEXT_MM) / textMm)) + 2 * PAD_MM + CAPTION_MM * 1.6;
		// The heading stays with the first of them.
		flow.need(height + (start === 0 ? 8 : 0));
		if (start === 0) flow.paragraph(`${title}: figures`, 4.2, { bold: true });
		flow.put([], start === 0 ? 1 : 0);
		flow.put(
			row.flatMap((figure, index) => card(figure, flow.left + index * (width + GAP_MM), flow.y, width, height, measure)),
			height + GAP_MM
		);
	}
}

const scaleOf = ({ textMm }: Figure): number => TEXT_MM / textMm;

function card(figure: Figure, x: number, y: number, width: number, height: number, measure: Measure): Primitive[] {
	const scale = scaleOf(figure);
	const { box, primitives, caption } = figure;
	const [words = ''] = wrap(caption, width - 2 * PAD_MM, (t) => measure(t, CAPTION_MM, true));
	const dx = x + PAD_MM - box.minX * scale;
	const dy = y + PAD_MM + CAPTION_MM * 1.6 - box.minY * scale;
	return [
		boxRect({ minX: x, minY: y, maxX: x + width, maxY: y + height }, { stroke: 'muted', width: 0.18, r: 1 }),
		text(x + PAD_MM, y + PAD_MM + CAPTION_MM / 2, words, CAPTION_MM, { align: 'start', bold: true }),
		...primitives.map((primitive) => scaled(primitive, scale, dx, dy))
	];
}
