/** The tag with a conductor's designation and gauge, on one of its straight runs. */
import { distance, inflateBox, type Box, type Point } from '#core/geometry';
import { boxRect, text, textWidthMm, type Primitive } from '#core/graphics';
import { Occupied } from './occupied.ts';

const SIZE_MM = 9.5;
const PADDING_MM = 2.5;
/** A run is worth this much more when the tag lies along it. */
const ALONG = 1.6;
const TRIED = [0.5, 0.35, 0.65, 0.2, 0.8];

export interface Tag {
	readonly words: string;
	readonly box: Box;
}

const boxAround = ({ x, y }: Point, words: string): Box => {
	const width = textWidthMm(words, SIZE_MM) + 2 * PADDING_MM;
	const height = SIZE_MM + PADDING_MM;
	return { minX: x - width / 2, minY: y - height / 2, maxX: x + width / 2, maxY: y + height / 2 };
};

/**
 * Places for the tags of all conductors, in order: on the longest straight run, level runs first, clear of the
 * bodies and of the tags before it where there is such a place.
 */
export function placeTags(
	conductors: Iterable<readonly [id: string, words: string, route: readonly Point[]]>,
	bodies: readonly Box[]
): Map<string, Tag> {
	const tags = new Map<string, Tag>();
	const occupied = new Occupied(bodies);
	for (const [id, words, route] of conductors) {
		if (words === '' || route.length < 2) continue;
		const places = placesFor(words, route);
		const box = places.find((place) => !occupied.meets(place)) ?? places[0]!;
		occupied.add(inflateBox(box, 1));
		tags.set(id, { words, box });
	}
	return tags;
}

// Most routes are the same ones as in the drawing before.
const placesOnRoute = new WeakMap<readonly Point[], { words: string; places: readonly Box[] }>();

/** Boxes to try, best first. */
function placesFor(words: string, route: readonly Point[]): readonly Box[] {
	const known = placesOnRoute.get(route);
	if (known?.words === words) return known.places;
	const places = placesOn(route).map((at) => boxAround(at, words));
	placesOnRoute.set(route, { words, places });
	return places;
}

/** Points to try, best first. */
function placesOn(route: readonly Point[]): Point[] {
	const runs = route.slice(1).map((end, index) => {
		const start = route[index]!;
		const level = Math.abs(end.y - start.y) < Math.abs(end.x - start.x);
		return { start, end, worth: distance(start, end) * (level ? ALONG : 1) };
	});
	return runs
		.sort((a, b) => b.worth - a.worth)
		.slice(0, 3)
		.flatMap(({ start, end }) => TRIED.map((t) => ({ x: start.x + (end.x - start.x) * t, y: start.y + (end.y - start.y) * t })));
}

export const drawTag = ({ words, box }: Tag): Primitive[] => [
	boxRect(box, { fill: 'paper', stroke: 'case-edge', width: 0.35, r: 2 }),
	text((box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2, words, SIZE_MM, { upright: true })
];
