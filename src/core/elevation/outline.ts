/** Shapes of things on a stud, from the side; z is height above the seat and y runs the other way. */
import type { Point } from '#core/geometry';
import { circle, line, polygon, polyline, rect, type Paint, type Primitive, type Style } from '#core/graphics';

export const COPPER = { fill: 'metal', stroke: 'metal-dark', width: 0.25 } as const;
export const STEEL = { fill: 'case-raised', stroke: 'case-edge', width: 0.25 } as const;
export const MOULDING = { fill: 'case', stroke: 'case-edge', width: 0.3 } as const;

/** Between two heights, from one x to another. */
export const slab = (x1: number, x2: number, z1: number, z2: number, style: Style & { readonly r?: number }): Primitive =>
	rect(Math.min(x1, x2), -z2, Math.abs(x2 - x1), z2 - z1, style);

export const at = (x: number, z: number): Point => ({ x, y: -z });

/** A line where something was cut off in the drawing, as draughtsmen wave it. */
export const breakLine = (x: number, z1: number, z2: number, side: -1 | 1): Primitive => {
	const h = z2 - z1;
	const wave = Math.min(1, h / 6) * side;
	return polyline([at(x, z1), at(x + wave, z1 + h * 0.25), at(x, z1 + h * 0.5), at(x - wave, z1 + h * 0.75), at(x, z2)], {
		stroke: 'case-edge',
		width: 0.3,
		round: 2
	});
};

/** Something round seen from its end. */
export const endOn = (z: number, diameterMm: number, fill: Paint, hidden: boolean): Primitive =>
	circle(
		0,
		-z,
		diameterMm / 2,
		hidden ? { stroke: 'metal-dark', width: 0.25, dash: [1, 0.8] } : { fill, stroke: 'metal-dark', width: 0.25 }
	);

export { circle, line, polygon, polyline, rect };
