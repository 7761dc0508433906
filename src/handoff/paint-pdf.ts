/** Primitives → PDF, with the same numbers the SVG writer uses. */
import { BASELINE_SHIFT, type Palette, type Primitive } from '#core/graphics';
import { setFont, type PdfDocument } from './pdf-document.ts';

const HAIRLINE_MM = 0.35;
const HALO = 0.3;

type Polyline = Extract<Primitive, { kind: 'polyline' }>;
type Text = Extract<Primitive, { kind: 'text' }>;

export function paint(doc: PdfDocument, primitives: readonly Primitive[], palette: Palette): void {
	for (const primitive of primitives) {
		const faint = primitive.opacity !== undefined && primitive.opacity < 1;
		if (faint) {
			doc.saveGraphicsState();
			doc.setGState(doc.GState({ opacity: primitive.opacity, 'stroke-opacity': primitive.opacity }));
		}
		if (primitive.kind === 'text') paintText(doc, primitive, palette);
		else paintShape(doc, primitive, palette);
		if (faint) doc.restoreGraphicsState();
	}
}

function paintShape(doc: PdfDocument, primitive: Exclude<Primitive, Text>, palette: Palette): void {
	const { fill, stroke, width, dash, cap } = primitive;
	if (!fill && !stroke) return;
	if (fill) doc.setFillColor(palette[fill]);
	if (stroke) {
		doc.setDrawColor(palette[stroke]);
		doc.setLineWidth(width ?? HAIRLINE_MM);
		doc.setLineDashPattern(dash ? [...dash] : [], 0);
		doc.setLineCap(cap === 'round' ? 'round' : 'butt');
		doc.setLineJoin(primitive.kind === 'polyline' ? 'round' : 'miter');
	}
	const style = fill && stroke ? 'DF' : fill ? 'F' : 'S';
	switch (primitive.kind) {
		case 'rect': {
			const { x, y, w, h, r = 0 } = primitive;
			const radius = Math.min(r, w / 2, h / 2);
			if (radius > 0) doc.roundedRect(x, y, w, h, radius, radius, style);
			else doc.rect(x, y, w, h, style);
			return;
		}
		case 'circle':
			doc.circle(primitive.x, primitive.y, primitive.r, style);
			return;
		case 'polyline':
			trace(doc, primitive);
			if (primitive.closed) doc.close();
			if (style === 'DF') doc.fillStroke();
			else if (style === 'F') doc.fill();
			else doc.stroke();
	}
}

/** Corners rounded to at most `round`, as quadratic curves written as cubic ones. */
function trace(doc: PdfDocument, { points, round = 0 }: Polyline): void {
	const [first, ...rest] = points;
	if (!first) return;
	doc.moveTo(first.x, first.y);
	rest.forEach((point, index) => {
		const before = points[index]!;
		const after = points[index + 2];
		const inLength = Math.hypot(point.x - before.x, point.y - before.y);
		const outLength = after ? Math.hypot(after.x - point.x, after.y - point.y) : 0;
		const radius = Math.min(round, inLength / 2, outLength / 2);
		if (!after || radius <= 0) {
			doc.lineTo(point.x, point.y);
			return;
		}
		const toward = (other: typeof point, length: number) => ({
			x: point.x + ((other.x - point.x) * radius) / length,
			y: point.y + ((other.y - point.y) * radius) / length
		});
		const enter = toward(before, inLength);
		const leave = toward(after, outLength);
		const third = (a: number, b: number): number => a + ((b - a) * 2) / 3;
		doc.lineTo(enter.x, enter.y);
		doc.curveTo(third(enter.x, point.x), third(enter.y, point.y), third(leave.x, point.x), third(leave.y, point.y), leave.x, leave.y);
	});
}

const ALIGN = { start: 'left', middle: 'center', end: 'right' } as const;

function paintText(
	doc: PdfDocument,
	{ x, y, size, text, bold = false, halo, align = 'start', fill = 'ink' }: Text,
	palette: Palette
): void {
	if (text === '') return;
	setFont(doc, size, bold);
	const at = [x, y + size * BASELINE_SHIFT] as const;
	if (halo) {
		doc.setDrawColor(palette[halo]);
		doc.setLineWidth(size * HALO);
		doc.setLineDashPattern([], 0);
		doc.setLineJoin('round');
		doc.text(text, ...at, { align: ALIGN[align], renderingMode: 'stroke' });
	}
	doc.setTextColor(palette[fill]);
	doc.text(text, ...at, { align: ALIGN[align] });
}
