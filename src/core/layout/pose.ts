import type { Diagram, Part, PartId, TerminalRef } from '#core/diagram';
import {
	addTurns,
	outward,
	rotateBox,
	rotatePoint,
	rotateSide,
	translateBox,
	type Box,
	type Point,
	type QuarterTurn,
	type Side
} from '#core/geometry';
import { describe, type Terminal } from '#core/parts';

/** Where a part is and how far it is turned. */
export interface Pose {
	/** Centre, diagram coordinates. */
	readonly at: Point;
	/** Degrees clockwise. */
	readonly turn: QuarterTurn;
}

/** From a part's own coordinates to the diagram's. */
export function place(point: Point, { at, turn }: Pose): Point {
	const turned = rotatePoint(point, turn);
	return { x: at.x + turned.x, y: at.y + turned.y };
}

export const placeBox = (box: Box, { at, turn }: Pose): Box => translateBox(rotateBox(box, turn), at);

const ownPose = ({ at, rotation }: Part): Pose => ({ at, turn: rotation });

/** A chain of blocks on blocks longer than this is a mistake in the file, most likely a ring. */
const DEEPEST_MOUNT = 8;

/** A block that is drawn downward from its plate is turned this far to point away from the host, by the stud's side. */
const TURN_OUTWARD: Readonly<Record<Side, QuarterTurn>> = { south: 0, west: 90, north: 180, east: 270 };

/**
 * Pose of a part. A block mounted on a stud lies with its plate's hole on that stud and points the way conductors
 * leave it; its own rotation is added to that, and its own `at` is not looked at. Where its host is missing, or
 * blocks are mounted in a ring, it stays where it was put. Undefined for an id that is not in the diagram.
 */
export function poseOf(diagram: Diagram, id: PartId): Pose | undefined {
	return poseAtDepth(diagram, id, 0);
}

function poseAtDepth(diagram: Diagram, id: PartId, depth: number): Pose | undefined {
	const part = own(diagram.parts, id);
	if (!part) return undefined;
	const mounted = depth < DEEPEST_MOUNT ? mountedPose(diagram, id, part, depth) : undefined;
	return mounted ?? ownPose(part);
}

function mountedPose(diagram: Diagram, id: PartId, part: Part, depth: number): Pose | undefined {
	const host = own(diagram.mounts, id);
	if (!host || isRing(diagram, id)) return undefined;
	const hostPart = own(diagram.parts, host.part);
	const stud = hostPart && describe(hostPart).terminal(host.terminal);
	const plate = describe(part).terminals.find(({ mountingPlate }) => mountingPlate);
	const hostPose = stud && plate && poseAtDepth(diagram, host.part, depth + 1);
	if (!hostPose) return undefined;
	const turn = addTurns(addTurns(hostPose.turn, TURN_OUTWARD[stud.side]), part.rotation);
	const seat = place(stud.at, hostPose);
	const hole = rotatePoint(plate.at, turn);
	return { at: { x: seat.x - hole.x, y: seat.y - hole.y }, turn };
}

function isRing({ mounts }: Diagram, start: PartId): boolean {
	let id = own(mounts, start)?.part;
	for (let step = 0; id !== undefined && step <= DEEPEST_MOUNT; step++) {
		if (id === start) return true;
		id = own(mounts, id)?.part;
	}
	return id !== undefined;
}

const own = <Value>(record: Readonly<Record<string, Value>>, key: string): Value | undefined =>
	Object.hasOwn(record, key) ? record[key] : undefined;

/** A terminal where it is on the drawing. */
export interface PlacedTerminal {
	readonly terminal: Terminal;
	readonly at: Point;
	/** Side a conductor leaves by, after the part's turn. */
	readonly side: Side;
	/** All sides it may leave by, `side` first. */
	readonly sides: readonly Side[];
}

/** Undefined where the part, its kind or the terminal does not exist. */
export function placedTerminal(diagram: Diagram, { part: id, terminal: name }: TerminalRef): PlacedTerminal | undefined {
	const part = own(diagram.parts, id);
	const terminal = part && describe(part).terminal(name);
	const pose = terminal && poseOf(diagram, id);
	if (!pose) return undefined;
	const sides = [terminal.side, ...(terminal.otherSides ?? [])].map((side) => rotateSide(side, pose.turn));
	return { terminal, at: place(terminal.at, pose), side: sides[0]!, sides };
}

/** The side by which a conductor leaves for a point: of those it may leave by, the one that faces it. */
export function sideToward({ at, sides }: Pick<PlacedTerminal, 'at' | 'sides'>, point: Point): Side {
	const facing = (side: Side) => outward(side).x * (point.x - at.x) + outward(side).y * (point.y - at.y);
	return sides.reduce((best, side) => (facing(side) > facing(best) ? side : best));
}

export const terminalPoint = (diagram: Diagram, ref: TerminalRef): Point | undefined => placedTerminal(diagram, ref)?.at;

/** A part's body on the drawing. Undefined for an id that is not in the diagram. */
export function partBox(diagram: Diagram, id: PartId): Box | undefined {
	const pose = poseOf(diagram, id);
	return pose && placeBox(describe(diagram.parts[id]!).box, pose);
}
