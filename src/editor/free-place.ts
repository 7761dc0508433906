/** Where there is room on the sheet for parts that come from elsewhere. */
import type { Diagram, Part } from '#core/diagram';
import { boxesIntersect, inflateBox, rotateBox, translateBox, type Box, type Point } from '#core/geometry';
import { partBox } from '#core/layout';
import { describe } from '#core/parts';

const STEP_MM = 25;
/** Rings searched around the place asked for: 2 m. */
const RINGS = 80;

export const bodyOf = (part: Part): Box => translateBox(rotateBox(describe(part).box, part.rotation), part.at);

/** Bodies of the parts of a diagram, as drawn. */
export const bodiesIn = (diagram: Diagram): Box[] => Object.keys(diagram.parts).map((id) => partBox(diagram, id)!);

/**
 * How far bodies have to be shifted, in steps of 25 mm, to lie `clearMm` apart from those that are there: the shortest
 * way, or none at all where nothing within 2 m is free.
 */
export function shiftToFree(bodies: readonly Box[], taken: readonly Box[], clearMm: number): Point {
	const grown = bodies.map((body) => inflateBox(body, clearMm));
	const isFree = (by: Point): boolean =>
		grown.every((body) => {
			const shifted = translateBox(body, by);
			return !taken.some((other) => boxesIntersect(other, shifted));
		});
	for (let ring = 0; ring <= RINGS; ring += 1) {
		const found = ringOf(ring).find(isFree);
		if (found) return found;
	}
	return { x: 0, y: 0 };
}

/** The points of a square ring, nearest first; to the right and downwards before the other ways. */
function ringOf(ring: number): Point[] {
	const along = Array.from({ length: 2 * ring + 1 }, (_, i) => i - ring);
	return along
		.flatMap((x) => (Math.abs(x) === ring ? along : [-ring, ring]).map((y) => ({ x: x * STEP_MM, y: y * STEP_MM })))
		.sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y) || b.x - a.x || b.y - a.y);
}
