/** The way between two ends inside a part, and where on it the symbol sits. */
import { distance, pointBetween, type Point, type Side } from '#core/geometry';
import { placePrimitives, type Primitive } from '#core/graphics';
import { lead } from './ink.ts';

/** An end of a link: a terminal, with the side conductors leave by, or a point inside. */
export interface End {
	readonly at: Point;
	readonly side: Side | null;
}

export type Glyph = (size: number) => Primitive[];

/** A symbol takes this share of its leg at most, and no more than this. */
const SHARE = 0.86;
export const MOST_MM = 70;

export interface WayOptions {
	/** How far a way between two terminals of one side reaches into the part. */
	readonly depthMm: number;
	/** Greatest length of the symbol. */
	readonly mostMm: number;
	/** True where the symbol sits nearer to where the way begins. */
	readonly nearer: boolean;
}

export function along(glyph: Glyph, from: End, to: End, { depthMm, mostMm, nearer }: WayOptions): Primitive[] {
	const points = wayBetween(from, to, depthMm);
	const legs = points.slice(1).map((end, index) => [points[index]!, end] as const);
	const seat = legs.reduce((best, leg) => (distance(...leg) > distance(...best) + 0.5 ? leg : best));
	const [a, b] = points.length === 4 ? legs[1]! : seat;
	const size = Math.min(mostMm, distance(a, b) * SHARE);
	const middle = pointBetween(a, b, nearer ? 0.42 : 0.5);
	const turn = Math.abs(b.x - a.x) >= Math.abs(b.y - a.y) ? (b.x >= a.x ? 0 : 180) : b.y >= a.y ? 90 : 270;
	const toward = (p: Point, q: Point): Point => {
		const run = distance(p, q) || 1;
		return { x: middle.x + ((p.x - q.x) * size) / 2 / run, y: middle.y + ((p.y - q.y) * size) / 2 / run };
	};
	const index = points.indexOf(a);
	return [
		lead(...points.slice(0, index + 1), toward(a, b)),
		lead(toward(b, a), ...points.slice(index + 1)),
		...placePrimitives(glyph(size), middle, turn)
	];
}

const upright = (side: Side | null): boolean => side === 'north' || side === 'south';

/** Straight where it can be; around two corners between terminals of one side; else around one. */
function wayBetween({ at: a, side: sideA }: End, { at: b, side: sideB }: End, depthMm: number): Point[] {
	const inward: Record<Side, Point> = { north: { x: 0, y: 1 }, south: { x: 0, y: -1 }, west: { x: 1, y: 0 }, east: { x: -1, y: 0 } };
	if (sideA !== null && sideA === sideB) {
		const by = inward[sideA];
		const reach = (p: Point) =>
			upright(sideA) ? { x: p.x, y: rowOf(a.y, b.y, by.y) + by.y * depthMm } : { x: rowOf(a.x, b.x, by.x) + by.x * depthMm, y: p.y };
		return [a, reach(a), reach(b), b];
	}
	if (a.x === b.x || a.y === b.y) return [a, b];
	return upright(sideB ?? sideA) ? [a, { x: b.x, y: a.y }, b] : [a, { x: a.x, y: b.y }, b];
}

/** The innermost of the two. */
const rowOf = (a: number, b: number, inward: number): number => (inward > 0 ? Math.max(a, b) : Math.min(a, b));
