import type { Point } from '#core/geometry';

/** The format keeps coordinates within this distance of the origin. */
export const DRAWING_LIMIT_MM = 1e6;

export const insideDrawing = ({ x, y }: Point): boolean => Math.abs(x) <= DRAWING_LIMIT_MM && Math.abs(y) <= DRAWING_LIMIT_MM;
