/** The rubber band of a conductor being drawn: orthogonal, leaving each stud by its side. The router decides the rest. */
import { outward, simplifyOrthogonal, type Point, type Side } from '#core/geometry';

const STUB_MM = 15;

export function elbow(from: Point, side: Side, to: Point, toSide: Side | null): Point[] {
	const out = along(from, side);
	const into = toSide === null ? to : along(to, toSide);
	const sideways = side === 'east' || side === 'west';
	const forward = sideways ? (into.x - out.x) * outward(side).x >= 0 : (into.y - out.y) * outward(side).y >= 0;
	// Going back past its own stud, it first steps aside.
	const turnsFirst = sideways !== forward;
	const corner = turnsFirst ? { x: out.x, y: into.y } : { x: into.x, y: out.y };
	return simplifyOrthogonal([from, out, corner, into, to]);
}

const along = (at: Point, side: Side): Point => ({ x: at.x + outward(side).x * STUB_MM, y: at.y + outward(side).y * STUB_MM });
