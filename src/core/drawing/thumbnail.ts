import type { Diagram } from '#core/diagram';
import { boxHeight, boxWidth, inflateBox } from '#core/geometry';
import { PALETTES, svgOf, type Primitive, type ThemeName } from '#core/graphics';
import { composeScene } from './compose.ts';

/** Millimetres around the drawing, as a share of its longer side. */
const MARGIN = 0.04;

/**
 * The drawing as small pictures, SVG text for each theme: no lettering, and no line thinner than a pixel.
 *
 * @param sizePx longer side of the picture as it will be shown
 * @returns null for an empty sheet
 */
export function thumbnails(diagram: Diagram, sizePx: number): Readonly<Record<Exclude<ThemeName, 'paper'>, string>> | null {
	const { items, order, bounds } = composeScene(diagram);
	if (!bounds) return null;
	const longerMm = Math.max(boxWidth(bounds), boxHeight(bounds), 1);
	const thinnestMm = longerMm / sizePx;
	const box = inflateBox(bounds, longerMm * MARGIN);
	const shapes = order.flatMap((key) => items.get(key)!.primitives).flatMap((shape) => simplified(shape, thinnestMm));
	const scale = (sizePx * (25.4 / 96)) / longerMm;
	return { light: svgOf(shapes, box, PALETTES.light, { scale }), dark: svgOf(shapes, box, PALETTES.dark, { scale }) };
}

function simplified(shape: Primitive, thinnestMm: number): Primitive[] {
	if (shape.kind === 'text') return [];
	return [shape.stroke ? { ...shape, width: Math.max(shape.width ?? 0, thinnestMm) } : shape];
}
