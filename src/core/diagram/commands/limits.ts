import type { Point } from '#core/geometry';

/** The format keeps coordinates within this distance of the origin. */
const DRAWING_LIMIT_MM = 1e6;

const isOnDrawing = ({ x, y }: Point): boolean => Math.abs(x) <= DRAWING_LIMIT_MM && Math.abs(y) <= DRAWING_LIMIT_MM;

/**
 * Why something cannot be at these places, moved by an offset, or null when all are on the drawing.
 *
 * @param it begins the sentence: "That is", "There it would be"
 */
export const edgeReason = (places: readonly Point[], it: string, by: Point = { x: 0, y: 0 }): string | null =>
	places.every(({ x, y }) => isOnDrawing({ x: x + by.x, y: y + by.y }))
		? null
		: `${it} beyond the edge of the drawing, which reaches ${DRAWING_LIMIT_MM / 1000} m each way.`;
