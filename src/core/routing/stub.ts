/**
 * The first stretch of a conductor: from its terminal, which lies in or at the edge of a part's body, straight out
 * by the given side until it is clear of that body.
 */
import { boxContainsPoint, boxesIntersect, inflateBox, isHorizontal, outward, type Box, type Point, type Side } from '#core/geometry';
import { BODY_GAP_MM, CLEARANCE_MM } from './settings.ts';

export interface Stub {
	readonly at: Point;
	readonly side: Side;
	/** First point where the conductor may turn, if it has to. */
	readonly clear: Point;
	/** First point where it likes to turn: at the clearance from the body, or in the middle of a narrow gap. */
	readonly exit: Point;
}

/** Answers which obstacles meet a box, touching included. */
export type FindBoxes = (window: Box) => readonly Box[];

/** A terminal this close to a body counts as belonging to it. */
const BELONGS_MM = 0.5;

export function stubOf(end: { readonly at: Point; readonly side: Side }, widthMm: number, find: FindBoxes): Stub {
	const { at, side } = end;
	const edge = reachOf(at, side, find);
	const gap = roomBeyond(at, side, edge, find);
	const away = (distance: number): Point => ({ x: at.x + step.x * distance, y: at.y + step.y * distance });
	const step = outward(side);
	const exit = Math.min(CLEARANCE_MM, gap / 2);
	return { at, side, clear: away(edge + Math.min(exit, widthMm / 2 + BODY_GAP_MM)), exit: away(edge + exit) };
}

/**
 * Distance from the terminal to the far edge of the bodies it lies in. Bodies that overlap those (a fuse block
 * mounted on a bus) and lie in the way are passed too.
 */
function reachOf(at: Point, side: Side, find: FindBoxes): number {
	const own = new Set(find(inflateBox({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y }, BELONGS_MM)));
	let reach = 0;
	for (const box of own) reach = Math.max(reach, edgeBeyond(at, side, box));
	for (let grown = true; grown;) {
		grown = false;
		const step = outward(side);
		const tip = { x: at.x + step.x * reach, y: at.y + step.y * reach };
		for (const box of find({ minX: tip.x, minY: tip.y, maxX: tip.x, maxY: tip.y })) {
			if (own.has(box) || !boxContainsPoint(inflateBox(box, -BELONGS_MM), tip)) continue;
			if (![...own].some((other) => boxesIntersect(box, inflateBox(other, -BELONGS_MM)))) continue;
			own.add(box);
			reach = Math.max(reach, edgeBeyond(at, side, box));
			grown = true;
		}
	}
	return reach;
}

/** Distance from the point, going out by the side, to the box's far edge; negative when it lies behind. */
function edgeBeyond(at: Point, side: Side, box: Box): number {
	switch (side) {
		case 'north':
			return at.y - box.minY;
		case 'east':
			return box.maxX - at.x;
		case 'south':
			return box.maxY - at.y;
		case 'west':
			return at.x - box.minX;
	}
}

/** Distance to the box's near edge; negative when the point is past it. */
function edgeAhead(at: Point, side: Side, box: Box): number {
	switch (side) {
		case 'north':
			return at.y - box.maxY;
		case 'east':
			return box.minX - at.x;
		case 'south':
			return box.minY - at.y;
		case 'west':
			return at.x - box.maxX;
	}
}

/** Free distance beyond the reach before the next body, at most twice the clearance. */
function roomBeyond(at: Point, side: Side, reach: number, find: FindBoxes): number {
	const step = outward(side);
	const tip = { x: at.x + step.x * reach, y: at.y + step.y * reach };
	const far = { x: tip.x + step.x * 2 * CLEARANCE_MM, y: tip.y + step.y * 2 * CLEARANCE_MM };
	let room = 2 * CLEARANCE_MM;
	const window = {
		minX: Math.min(tip.x, far.x),
		minY: Math.min(tip.y, far.y),
		maxX: Math.max(tip.x, far.x),
		maxY: Math.max(tip.y, far.y)
	};
	for (const box of find(window)) {
		const aside = isHorizontal(side) ? at.y <= box.minY || at.y >= box.maxY : at.x <= box.minX || at.x >= box.maxX;
		if (aside) continue;
		const distance = edgeAhead(tip, side, box);
		if (distance >= 0) room = Math.min(room, distance);
	}
	return room;
}
