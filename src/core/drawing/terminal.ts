/** Studs and clamps, seen from above at full size. */
import { outward, type Point, type Side } from '#core/geometry';
import { block, circle, line, nutFromAbove, type Paint, type Primitive } from '#core/graphics';
import type { Role, Terminal } from '#core/parts';
import { thread as threadOf } from '#core/tables';

const ROLE_PAINT: Readonly<Record<Role, Paint>> = { positive: 'positive', negative: 'negative', chassis: 'chassis', either: 'case-edge' };

const CLAMP_MM = 9;
const BADGE_MM = 3.2;

/** Radius of the seat around the nut, or of a clamp; millimetres. */
export function terminalRadiusMm({ thread }: Pick<Terminal, 'thread'>): number {
	if (thread === null) return CLAMP_MM / 2;
	const { washerDiameterMm, nutAcrossFlatsMm } = threadOf(thread);
	return Math.max(washerDiameterMm / 2, nutAcrossFlatsMm / Math.sqrt(3)) + 1.6;
}

/** Radius of the nut's corners; what lies within it is hidden by the nut. */
export const nutRadiusMm = ({ thread }: Pick<Terminal, 'thread'>): number =>
	thread === null ? 0 : threadOf(thread).nutAcrossFlatsMm / Math.sqrt(3);

/** Nut and thread end, at a point of the drawing. */
export function nut(at: Point, { thread }: Pick<Terminal, 'thread'>): Primitive[] {
	if (thread === null) return [];
	const { nutAcrossFlatsMm, majorMm } = threadOf(thread);
	return nutFromAbove(at, nutAcrossFlatsMm, majorMm);
}

/** Plus or minus in a disc, so that poles can be told apart without colour. */
function badge({ x, y }: Point, role: Role, radius = BADGE_MM): Primitive[] {
	if (role !== 'positive' && role !== 'negative') return [];
	const arm = radius * 0.58;
	const stroke = { stroke: 'case', width: radius * 0.28 } as const;
	return [
		circle(x, y, radius, { fill: ROLE_PAINT[role], stroke: 'case', width: 0.5 }),
		line(x - arm, y, x + arm, y, stroke),
		...(role === 'positive' ? [line(x, y - arm, x, y + arm, stroke)] : [])
	];
}

/** A terminal at its place on the drawing; `side` is where conductors leave it. */
export function drawTerminal(terminal: Terminal, at: Point, side: Side): Primitive[] {
	const radius = terminalRadiusMm(terminal);
	const paint = ROLE_PAINT[terminal.role];
	const away = outward(side);
	// Behind the stud and a little aside, clear of lug and cable.
	const corner = { x: at.x - away.x * radius * 0.8 - away.y * radius * 0.8, y: at.y - away.y * radius * 0.8 - away.x * radius * 0.8 };
	// A block's plate has a hole, drawn with its outline; the stud is its host's.
	if (terminal.mountingPlate) return badge(corner, terminal.role);
	if (terminal.kind === 'clamp') {
		return [
			block(at.x, at.y, CLAMP_MM, CLAMP_MM, { fill: 'metal', stroke: paint, width: 0.8, r: 1 }),
			circle(at.x, at.y, 2.6, { fill: 'case-raised', stroke: 'metal-dark', width: 0.4 }),
			line(at.x - 1.6, at.y - 1.6, at.x + 1.6, at.y + 1.6, { stroke: 'metal-dark', width: 0.7 }),
			...badge(corner, terminal.role, BADGE_MM * 0.7)
		];
	}
	return [circle(at.x, at.y, radius, { stroke: paint, width: 1.2 }), ...nut(at, terminal), ...badge(corner, terminal.role)];
}
