/** Routes through bends set by hand: every bend stays on the route, corners are added where needed. */
import {
	boxOfPoints,
	inflateBox,
	isHorizontal,
	outward,
	samePoint,
	segmentIntersectsBox,
	simplifyOrthogonal,
	type Point
} from '#core/geometry';
import type { Stub, FindBoxes } from './stub.ts';

/** From `from.at` to `to.at` through all bends. A bend in the middle of a straight stretch lies on the route without being a point of it. */
export function throughBends(from: Stub, bends: readonly Point[], to: Stub, find: FindBoxes): Point[] {
	const start = aheadOf(from, bends[0]!) ? [from.at] : [from.at, from.exit];
	const end = aheadOf(to, bends.at(-1)!) ? [to.at] : [to.exit, to.at];
	const stops = [...start, ...bends, ...end];

	const points: Point[] = [stops[0]!];
	for (const stop of stops.slice(1)) {
		const last = points.at(-1)!;
		if (samePoint(last, stop)) continue;
		if (last.x !== stop.x && last.y !== stop.y) points.push(cornerBetween(points.at(-2), last, stop, find));
		points.push(stop);
	}
	return simplifyOrthogonal(points);
}

/** True when the point lies straight out from the terminal, so that the conductor can run to it directly. */
function aheadOf({ at, side }: Stub, point: Point): boolean {
	const { x, y } = outward(side);
	const onLine = isHorizontal(side) ? point.y === at.y : point.x === at.x;
	return onLine && (point.x - at.x) * x + (point.y - at.y) * y > 0;
}

/** Of the two corners, the one that cuts fewer bodies; then the one that goes on in the direction of travel. */
function cornerBetween(before: Point | undefined, a: Point, b: Point, find: FindBoxes): Point {
	const acrossFirst = { x: b.x, y: a.y };
	const downFirst = { x: a.x, y: b.y };
	const price = (corner: Point): number => {
		const cuts = cutsOf(a, corner, find) + cutsOf(corner, b, find);
		const turnsBack = before && (a.x - before.x) * (corner.x - a.x) + (a.y - before.y) * (corner.y - a.y) < 0 ? 2 : 0;
		const goesOn = before && (a.x - before.x) * (corner.x - a.x) + (a.y - before.y) * (corner.y - a.y) > 0 ? 0 : 1;
		return cuts * 4 + turnsBack + goesOn;
	};
	return price(downFirst) < price(acrossFirst) ? downFirst : acrossFirst;
}

export function cutsOf(a: Point, b: Point, find: FindBoxes): number {
	let cuts = 0;
	for (const box of find(boxOfPoints([a, b]))) if (segmentIntersectsBox(a, b, inflateBox(box, -0.01))) cuts++;
	return cuts;
}
