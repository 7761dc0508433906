/**
 * Primitives made ready for a 2D context: outlines become Path2D objects once, so that a frame only strokes and
 * fills them. Consecutive strokes of one style become a single path.
 */
import type { Paint, Primitive } from '#core/graphics';
import { boxHeight, boxOfPoints, boxWidth, type Point } from '#core/geometry';

/** What Path2D and a 2D context have in common, as far as we draw with it. */
export type Pen = Pick<Path2D, 'moveTo' | 'lineTo' | 'arcTo' | 'arc' | 'rect' | 'roundRect' | 'closePath'>;

export type TextPrimitive = Extract<Primitive, { kind: 'text' }>;
type Outline = Exclude<Primitive, TextPrimitive>;

export interface PathOp<P> {
	readonly kind: 'path';
	readonly path: P;
	readonly fill: Paint | null;
	readonly stroke: Paint | null;
	readonly widthMm: number;
	readonly dash: readonly number[];
	readonly cap: 'butt' | 'round';
	readonly opacity: number;
	/** Longest side of the largest outline in it, so that details too small to see can be left out. */
	readonly sizeMm: number;
}

export type Op<P = Path2D> = PathOp<P> | { readonly kind: 'text'; readonly text: TextPrimitive };

/** Of a stroke that gives no width; the SVG writer's too. */
const HAIRLINE_MM = 0.35;
const SOLID: readonly number[] = [];

export function compile<P extends Pen>(primitives: readonly Primitive[], newPath: () => P): Op<P>[] {
	const ops: Op<P>[] = [];
	for (const primitive of primitives) {
		if (primitive.kind === 'text') {
			ops.push({ kind: 'text', text: primitive });
			continue;
		}
		const last = ops.at(-1);
		const sizeMm = extentMm(primitive);
		if (last?.kind === 'path' && mayJoin(last, primitive)) {
			trace(last.path, primitive);
			ops[ops.length - 1] = { ...last, sizeMm: Math.max(last.sizeMm, sizeMm) };
			continue;
		}
		const path = newPath();
		trace(path, primitive);
		ops.push({ kind: 'path', path, sizeMm, ...styleOf(primitive) });
	}
	return ops;
}

function styleOf(primitive: Outline): Omit<PathOp<unknown>, 'kind' | 'path' | 'sizeMm'> {
	return {
		fill: primitive.fill ?? null,
		stroke: primitive.stroke ?? null,
		widthMm: primitive.width ?? HAIRLINE_MM,
		dash: primitive.dash ?? SOLID,
		cap: primitive.cap ?? 'butt',
		opacity: primitive.opacity ?? 1
	};
}

function extentMm(primitive: Outline): number {
	if (primitive.kind === 'rect') return Math.max(primitive.w, primitive.h);
	if (primitive.kind === 'circle') return 2 * primitive.r;
	const box = boxOfPoints(primitive.points);
	return Math.max(boxWidth(box), boxHeight(box));
}

/** Fills stay apart: where two overlap, the edge of the upper one must cover the lower one. */
function mayJoin(op: PathOp<unknown>, primitive: Outline): boolean {
	const style = styleOf(primitive);
	return (
		op.fill === null &&
		style.fill === null &&
		op.opacity === 1 &&
		style.opacity === 1 &&
		op.stroke === style.stroke &&
		op.widthMm === style.widthMm &&
		op.cap === style.cap &&
		op.dash.length === 0 &&
		style.dash.length === 0
	);
}

/** Adds the outline of a primitive to a path. */
export function trace(pen: Pen, primitive: Outline): void {
	switch (primitive.kind) {
		case 'rect':
			if (primitive.r) pen.roundRect(primitive.x, primitive.y, primitive.w, primitive.h, primitive.r);
			else pen.rect(primitive.x, primitive.y, primitive.w, primitive.h);
			return;
		case 'circle':
			pen.moveTo(primitive.x + primitive.r, primitive.y);
			pen.arc(primitive.x, primitive.y, primitive.r, 0, 2 * Math.PI);
			return;
		case 'polyline':
			tracePolyline(pen, primitive.points, primitive.round ?? 0);
			if (primitive.closed) pen.closePath();
	}
}

/** Corners are rounded by `round`, or by less where a segment is too short for it. */
export function tracePolyline(pen: Pick<Pen, 'moveTo' | 'lineTo' | 'arcTo'>, points: readonly Point[], round: number): void {
	const [first] = points;
	if (!first) return;
	pen.moveTo(first.x, first.y);
	for (let i = 1; i < points.length; i++) {
		const at = points[i]!;
		const next = points[i + 1];
		if (!next || round <= 0) {
			pen.lineTo(at.x, at.y);
			continue;
		}
		const before = points[i - 1]!;
		const room = Math.min(Math.hypot(at.x - before.x, at.y - before.y), Math.hypot(next.x - at.x, next.y - at.y)) / 2;
		pen.arcTo(at.x, at.y, next.x, next.y, Math.min(round, room));
	}
}
