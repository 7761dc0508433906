/** How things are drawn, without saying on what. */
export type { Paint, Primitive, Style } from './primitives.ts';
export { block, boxRect, circle, line, polygon, polyline, rect, text } from './shapes.ts';
