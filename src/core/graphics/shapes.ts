/** Short constructors for primitives, so that outlines read as a list of shapes. */
import type { Box, Point } from '#core/geometry';
import type { Paint, Primitive, Style } from './primitives.ts';

type TextOptions = Omit<Extract<Primitive, { kind: 'text' }>, 'kind' | 'x' | 'y' | 'text' | 'size'>;

/** A rectangle by its top left corner; `r` rounds the corners. */
export const rect = (x: number, y: number, w: number, h: number, style: Style & { readonly r?: number }): Primitive => ({
	kind: 'rect',
	x,
	y,
	w,
	h,
	...style
});

/** A rectangle by its centre. */
export const block = (cx: number, cy: number, w: number, h: number, style: Style & { readonly r?: number }): Primitive =>
	rect(cx - w / 2, cy - h / 2, w, h, style);

export const boxRect = (box: Box, style: Style & { readonly r?: number }): Primitive =>
	rect(box.minX, box.minY, box.maxX - box.minX, box.maxY - box.minY, style);

export const circle = (x: number, y: number, r: number, style: Style): Primitive => ({ kind: 'circle', x, y, r, ...style });

export const line = (x1: number, y1: number, x2: number, y2: number, style: Style): Primitive => ({
	kind: 'polyline',
	points: [
		{ x: x1, y: y1 },
		{ x: x2, y: y2 }
	],
	...style
});

export const polyline = (points: readonly Point[], style: Style & { readonly round?: number }): Primitive => ({
	kind: 'polyline',
	points,
	...style
});

export const polygon = (points: readonly Point[], style: Style): Primitive => ({ kind: 'polyline', points, closed: true, ...style });

/** Text centred on (x, y) both ways, unless `align` says otherwise sideways. */
export const text = (x: number, y: number, content: string, size: number, options: TextOptions = {}): Primitive => ({
	kind: 'text',
	x,
	y,
	text: content,
	size,
	align: 'middle',
	fill: 'ink' satisfies Paint,
	...options
});
