import { EMPTY_BOX, boxOfPoints, inflateBox, unionBoxes, type Box } from '#core/geometry';
import type { Primitive } from './primitives.ts';
import { textWidthMm } from './text.ts';

/** Smallest box around everything painted, strokes included. `EMPTY_BOX` for nothing. */
export const boundsOf = (primitives: readonly Primitive[]): Box =>
	primitives.reduce((box, primitive) => unionBoxes(box, boundsOfPrimitive(primitive)), EMPTY_BOX);

function boundsOfPrimitive(primitive: Primitive): Box {
	switch (primitive.kind) {
		case 'rect': {
			const { x, y, w, h } = primitive;
			return stroked({ minX: x, minY: y, maxX: x + w, maxY: y + h }, primitive);
		}
		case 'circle': {
			const { x, y, r } = primitive;
			return stroked({ minX: x - r, minY: y - r, maxX: x + r, maxY: y + r }, primitive);
		}
		case 'polyline':
			return stroked(boxOfPoints(primitive.points), primitive);
		case 'text': {
			const { x, y, size } = primitive;
			const width = textWidthMm(primitive.text, size, primitive.bold);
			const left = primitive.align === 'middle' ? x - width / 2 : primitive.align === 'end' ? x - width : x;
			return { minX: left, minY: y - size * 0.6, maxX: left + width, maxY: y + size * 0.6 };
		}
	}
}

const stroked = (box: Box, { stroke, width = 0 }: { stroke?: unknown; width?: number }): Box => (stroke ? inflateBox(box, width / 2) : box);
