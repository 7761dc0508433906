/**
 * What differs between two states, drawn over the later one. Each sort has a sign and a line of its own, so that they
 * are told apart without colour: a plus and a solid line for what is new, a triangle and long dashes for what is
 * other, an arrow and dots for what only moved, a minus and a crossed-out ghost for what is gone.
 */
import type { ItemKey } from '#core/diagram';
import { inflateBox, pointAtFraction, type Box, type Point } from '#core/geometry';
import { boxRect, circle, line, polygon, polyline, type Paint, type Primitive } from '#core/graphics';
import type { DrawnItem, Scene } from './types.ts';

export type ChangeSign = 'added' | 'changed' | 'moved' | 'removed';

/** Plain data: it crosses from the worker. */
export interface ChangeMarks {
	/** What is there now, by "part:…", "conductor:…" or "stud:…". */
	readonly marks: Readonly<Record<ItemKey, Exclude<ChangeSign, 'removed'>>>;
	/** As it was drawn before: what was removed, and what moved from there. */
	readonly ghosts: readonly { readonly item: DrawnItem; readonly sign: 'removed' | 'moved' }[];
}

const PAINTS: Readonly<Record<ChangeSign, Paint>> = { added: 'ok', changed: 'warning', moved: 'note', removed: 'error' };
/** Dashes as multiples of the sign's size. */
const DASHES: Readonly<Record<ChangeSign, readonly number[]>> = { added: [], changed: [1.6, 0.7], moved: [0.3, 0.6], removed: [0.8, 0.5] };
const GHOST = 0.35;

/** @param sizeMm radius of a sign; lines and distances follow it */
export function changeMarks(scene: Scene, { marks, ghosts }: ChangeMarks, sizeMm: number): readonly Primitive[] {
	const drawn = ghosts.flatMap(({ item, sign }) => ghostOf(item, sign, sizeMm));
	const shown = Object.entries(marks).flatMap(([key, sign]) => markOf(scene, key as ItemKey, sign, sizeMm));
	// Signs last: nothing may lie over them.
	return [...drawn, ...shown].sort((a, b) => Number(a.isSign) - Number(b.isSign)).map(({ primitive }) => primitive);
}

interface Piece {
	readonly primitive: Primitive;
	readonly isSign: boolean;
}
const under = (...primitives: readonly Primitive[]): Piece[] => primitives.map((primitive) => ({ primitive, isSign: false }));

function ghostOf(item: DrawnItem, sign: 'removed' | 'moved', sizeMm: number): Piece[] {
	const faded = item.primitives.map((primitive): Primitive => ({ ...primitive, opacity: (primitive.opacity ?? 1) * GHOST }));
	const place = item.body ?? item.frame;
	const at = item.route ? pointAtFraction(item.route, 0.5) : place && centreOf(place);
	// The sign of what moved stands where it is now.
	return [...under(...faded, ...outlineOf(item, sign, sizeMm)), ...(sign === 'removed' && at ? signAt(at, sign, sizeMm) : [])];
}

function markOf(scene: Scene, key: ItemKey, sign: Exclude<ChangeSign, 'removed'>, sizeMm: number): Piece[] {
	const item = scene.items.get(key);
	if (item) {
		const at = item.route ? pointAtFraction(item.route, 0.5) : item.body && { x: item.body.minX, y: item.body.minY };
		return [...under(...outlineOf(item, sign, sizeMm)), ...(at ? signAt(at, sign, sizeMm) : [])];
	}
	const stud = studOf(scene, key);
	if (!stud) return [];
	const radius = stud.radiusMm + sizeMm / 2;
	const ring = circle(stud.at.x, stud.at.y, radius, styleOf(sign, sizeMm));
	return [...under(ring), ...signAt({ x: stud.at.x - radius - sizeMm, y: stud.at.y }, sign, sizeMm)];
}

function studOf(scene: Scene, key: ItemKey): { readonly at: Point; readonly radiusMm: number } | null {
	for (const { terminals } of scene.items.values()) for (const terminal of terminals) if (terminal.key === key) return terminal;
	return null;
}

function outlineOf({ route, body, widthMm }: DrawnItem, sign: ChangeSign, sizeMm: number): Primitive[] {
	if (!route && !body) return [];
	if (!route) return [boxRect(inflateBox(body!, sizeMm / 2), { ...styleOf(sign, sizeMm), r: sizeMm / 2 })];
	const band = polyline(route, { stroke: PAINTS[sign], width: widthMm + 1.2 * sizeMm, opacity: 0.3, round: widthMm });
	return [band, polyline(route, { ...styleOf(sign, sizeMm), width: sizeMm / 5, round: widthMm })];
}

const styleOf = (sign: ChangeSign, sizeMm: number) => ({
	stroke: PAINTS[sign],
	width: sizeMm / 3.5,
	dash: DASHES[sign].map((part) => part * sizeMm),
	cap: sign === 'moved' ? ('round' as const) : ('butt' as const)
});

/** A dark disc with the sign in the ground's colour. */
function signAt({ x, y }: Point, sign: ChangeSign, r: number): Piece[] {
	const style = { stroke: 'paper' as const, width: r / 4, cap: 'round' as const };
	const half = r / 2;
	const level = line(x - half, y, x + half, y, style);
	const shapes: Readonly<Record<ChangeSign, readonly Primitive[]>> = {
		added: [level, line(x, y - half, x, y + half, style)],
		removed: [level],
		changed: [
			polygon(
				[
					{ x, y: y - half },
					{ x: x + half, y: y + half * 0.75 },
					{ x: x - half, y: y + half * 0.75 }
				],
				style
			)
		],
		moved: [
			level,
			polyline(
				[
					{ x: x + half * 0.2, y: y - half * 0.7 },
					{ x: x + half, y },
					{ x: x + half * 0.2, y: y + half * 0.7 }
				],
				style
			)
		]
	};
	const disc = circle(x, y, r, { fill: 'ink', stroke: PAINTS[sign], width: r / 5 });
	return [disc, ...shapes[sign]].map((primitive) => ({ primitive, isSign: true }));
}

const centreOf = ({ minX, minY, maxX, maxY }: Box): Point => ({ x: (minX + maxX) / 2, y: (minY + maxY) / 2 });

/** The scene with something more drawn over it, for sheets and pictures. */
export function withDrawnOver(scene: Scene, primitives: readonly Primitive[], box: Box): Scene {
	const key: ItemKey = 'part:';
	const over: DrawnItem = { key, box, primitives, labels: [], body: null, route: null, widthMm: 0, terminals: [] };
	return { items: new Map([...scene.items, [key, over]]), order: [...scene.order, key], bounds: box };
}
