/** How things are drawn, without saying on what. */
export type { Paint, Primitive, Style } from './primitives.ts';
export { block, boxRect, circle, line, polygon, polyline, rect, text } from './shapes.ts';
export { nutFromAbove } from './hardware.ts';
export { placePrimitives } from './transform.ts';
export { boundsOf } from './bounds.ts';
export { BASELINE_SHIFT, textWidthMm } from './text.ts';
export { widestPiece, wrap } from './wrap.ts';
export { PALETTES, type Palette, type ThemeName } from './palette.ts';
export { escapeXml, pathData, svgElements, svgOf, type SvgOptions } from './svg.ts';
