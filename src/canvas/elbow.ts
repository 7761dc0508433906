/** The rubber band of a conductor whose other end is in the air: orthogonal, leaving its stud by its side. */
import { outward, simplifyOrthogonal, type Point, type Side } from '#core/geometry';

const STUB_MM = 15;

export function elbow(from: Point, side: Side, to: Point): Point[] {
	const away = outward(side);
	const out = { x: from.x + away.x * STUB_MM, y: from.y + away.y * STUB_MM };
	const forward = (to.x - out.x) * away.x + (to.y - out.y) * away.y >= 0;
	// Going back past its own stud, it first steps aside.
	const levelFirst = (away.x !== 0) === forward;
	return simplifyOrthogonal([from, out, levelFirst ? { x: to.x, y: out.y } : { x: out.x, y: to.y }, to]);
}
