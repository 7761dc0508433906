import type { Point } from '#core/geometry';
import type { Primitive } from './primitives.ts';
import { circle, polygon } from './shapes.ts';

const hexagon = ({ x, y }: Point, acrossFlatsMm: number): Point[] =>
	Array.from({ length: 6 }, (_, corner) => {
		const angle = (corner * Math.PI) / 3;
		const radius = acrossFlatsMm / Math.sqrt(3);
		return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
	});

/** A nut with the thread's end in it, from above. */
export const nutFromAbove = (at: Point, acrossFlatsMm: number, majorMm: number): Primitive[] => [
	polygon(hexagon(at, acrossFlatsMm), { fill: 'metal', stroke: 'metal-dark', width: 0.4 }),
	circle(at.x, at.y, majorMm / 2, { fill: 'case-raised', stroke: 'metal-dark', width: 0.5 }),
	circle(at.x, at.y, majorMm * 0.34, { stroke: 'metal-dark', width: 0.3 })
];
