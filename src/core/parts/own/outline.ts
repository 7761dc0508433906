/** The body of a part somebody made, and where on it there is room for its name. */
import { boxHeight, boxWidth, inflateBox, type Box } from '#core/geometry';
import { boxRect, type Primitive } from '#core/graphics';
import { body, centredBox } from '../sketch.ts';
import type { OwnParams } from './params.ts';
import { ownTerminals } from './terminals.ts';

export const ownBox = ({ widthMm, heightMm }: OwnParams): Box => centredBox(widthMm, heightMm);

const radiusOf = ({ shape, widthMm, heightMm }: OwnParams): number => {
	const least = Math.min(widthMm, heightMm);
	return shape === 'square' ? 0.5 : shape === 'round' ? least / 2 : Math.min(8, least / 6);
};

export function ownOutline(part: OwnParams): Primitive[] {
	const box = ownBox(part);
	const plate = ownNameplate(part);
	return [
		body(box, radiusOf(part)),
		...(plate && part.shape !== 'round' ? [boxRect(plate, { stroke: 'case-edge', width: 0.35, r: 4, opacity: 0.7 })] : [])
	];
}

/** Around a stud: its nut, and its name beside it. */
const STUD_MM = 13;
const NAMED_MM = 20;
const EDGE_MM = 4;
/** Less than this and words would not be read. */
const LEAST = { width: 36, height: 18 };

/** The largest strip across or along the body that no stud lies in; null where none is large enough. */
export function ownNameplate(part: OwnParams): Box | null {
	const inner = inflateBox(ownBox(part), -EDGE_MM);
	const terminals = ownTerminals(part);
	const used = terminals.map(({ at, print }) => ({
		minX: Math.min(at.x - STUD_MM, (print?.at.x ?? at.x) - NAMED_MM / 2),
		maxX: Math.max(at.x + STUD_MM, (print?.at.x ?? at.x) + NAMED_MM / 2),
		minY: Math.min(at.y - STUD_MM, (print?.at.y ?? at.y) - 5),
		maxY: Math.max(at.y + STUD_MM, (print?.at.y ?? at.y) + 5)
	}));
	const across = gaps(
		used.map(({ minY, maxY }) => [minY, maxY] as const),
		inner.minY,
		inner.maxY
	).map(([minY, maxY]) => ({ ...inner, minY, maxY }));
	const along = gaps(
		used.map(({ minX, maxX }) => [minX, maxX] as const),
		inner.minX,
		inner.maxX
	).map(([minX, maxX]) => ({ ...inner, minX, maxX }));
	const fits = [...across, ...along].filter((gap) => boxWidth(gap) >= LEAST.width && boxHeight(gap) >= LEAST.height);
	return fits.toSorted((a, b) => boxWidth(b) * boxHeight(b) - boxWidth(a) * boxHeight(a))[0] ?? null;
}

type Interval = readonly [from: number, to: number];

/** What the intervals leave free between two limits. */
function gaps(used: readonly Interval[], from: number, to: number): Interval[] {
	const free: Interval[] = [];
	let at = from;
	for (const [start, end] of used.toSorted((a, b) => a[0] - b[0])) {
		if (start > at) free.push([at, Math.min(start, to)]);
		at = Math.max(at, end);
	}
	if (to > at) free.push([at, to]);
	return free;
}
