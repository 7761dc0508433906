/** Shapes that several parts share. Sizes are millimetres at full size. */
import type { Box } from '#core/geometry';
import { boxRect, type Primitive } from '#core/graphics';

/** A box of this size around (0, 0). */
export const centredBox = (widthMm: number, heightMm: number): Box => ({
	minX: -widthMm / 2,
	minY: -heightMm / 2,
	maxX: widthMm / 2,
	maxY: heightMm / 2
});

/** The moulded or sheet-metal body. */
export const body = (box: Box, r = 3): Primitive => boxRect(box, { fill: 'case', stroke: 'case-edge', width: 0.6, r });
