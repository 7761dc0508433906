/**
 * Designations of parts that are too small on the screen to carry them readably: written at a fixed size, in the body
 * where there is room and beside it otherwise. Where two would run into each other, the more important one stays.
 * Places are in CSS pixels from the drawing's origin, so they hold while the view is only moved.
 */
import { parseItemKey, type Diagram, type ItemKey } from '#core/diagram';
import type { DrawnItem } from '#core/drawing';
import { boxesIntersect, inflateBox, type Box, type Point } from '#core/geometry';
import { definitionOf, type PartGroup } from '#core/parts';

export const NAME_PX = 11;
/** Below this a designation cannot be read. */
const READABLE_PX = 10;
const LINE_PX = 13;
const GAP_PX = 2;
/** Two names side by side must not read as one. */
const APART_PX = 3;
const LONGEST = 12;

/** What the system hangs together by is named first. */
const ORDER: readonly (PartGroup | null)[] = ['distribution', 'protection', 'sources', 'charging', 'loads', null];

export interface PlacedName {
	readonly text: string;
	/** Centre. */
	readonly at: Point;
}

export interface NameOptions {
	/** Pixels per millimetre. */
	readonly zoom: number;
	/** Width of a text at NAME_PX, in pixels. */
	readonly widthOf: (text: string) => number;
}

/** Of the parts whose own lettering is too small. Those left without room have null. */
export function placeNames(
	{ parts }: Pick<Diagram, 'parts'>,
	items: ReadonlyMap<ItemKey, DrawnItem>,
	{ zoom, widthOf }: NameOptions
): Map<ItemKey, PlacedName | null> {
	const small = [...items.values()].flatMap((item) => {
		const part = item.body && parts[parseItemKey(item.key).id];
		if (!part || part.label.trim() === '' || letteringMm(item, part.label) * zoom >= READABLE_PX) return [];
		return [{ key: item.key, body: scaled(item.body!, zoom), text: shortened(part.label), rank: rankOf(part.kind) }];
	});
	const bodies = [...items.values()].flatMap(({ key, body }) => (body ? [{ key, box: scaled(body, zoom) }] : []));
	const names = new Map<ItemKey, PlacedName | null>();
	const written: Box[] = [];
	for (const { key, body, text } of small.sort((a, b) => a.rank - b.rank)) {
		const places = placesAround(body, widthOf(text)).filter((box) => !written.some((other) => boxesIntersect(other, box)));
		const clear = places.find((box) => !bodies.some((other) => other.key !== key && boxesIntersect(other.box, box)));
		const box = clear ?? places[0];
		if (box) written.push(inflateBox(box, APART_PX));
		names.set(key, box ? { text, at: { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 } } : null);
	}
	return names;
}

const rankOf = (kind: string): number => ORDER.indexOf(definitionOf(kind)?.group ?? null);

const shortened = (label: string): string => (label.length > LONGEST ? `${label.slice(0, LONGEST - 1).trimEnd()}…` : label);

/** Size of a part's own designation as drawn. */
const letteringMm = ({ labels }: DrawnItem, label: string): number =>
	Math.max(0, ...labels.map((words) => (words.kind === 'text' && words.text === label ? words.size : 0)));

const scaled = ({ minX, minY, maxX, maxY }: Box, zoom: number): Box => ({
	minX: minX * zoom,
	minY: minY * zoom,
	maxX: maxX * zoom,
	maxY: maxY * zoom
});

/** Best first: inside, above, below, right, left, and at the corners. */
function placesAround(body: Box, width: number): Box[] {
	const x = (body.minX + body.maxX) / 2;
	const y = (body.minY + body.maxY) / 2;
	const up = body.minY - GAP_PX - LINE_PX / 2;
	const down = body.maxY + GAP_PX + LINE_PX / 2;
	const right = body.maxX + GAP_PX + width / 2;
	const left = body.minX - GAP_PX - width / 2;
	const fits = body.maxX - body.minX >= width + 4 && body.maxY - body.minY >= LINE_PX;
	const centres: Point[] = [
		...(fits ? [{ x, y }] : []),
		{ x, y: up },
		{ x, y: down },
		{ x: right, y },
		{ x: left, y },
		{ x: right, y: up },
		{ x: left, y: up },
		{ x: right, y: down },
		{ x: left, y: down }
	];
	return centres.map((at) =>
		inflateBox({ minX: at.x - width / 2, maxX: at.x + width / 2, minY: at.y - LINE_PX / 2, maxY: at.y + LINE_PX / 2 }, -0.5)
	);
}
