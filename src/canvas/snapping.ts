/**
 * Where what is moved comes to lie: in line with its neighbours, on the grid where none is near, or exactly where the
 * hand is while Alt is held.
 */
import { itemKey, studKey, type PartId, type TerminalRef } from '#core/diagram';
import {
	alignmentOf,
	boxesIntersect,
	guidesOf,
	inflateBox,
	snap,
	translateBox,
	type Box,
	type Guide,
	type Point,
	type Tie
} from '#core/geometry';
import type { Press } from './pointer.ts';
import { GRID_MM, GUIDE_PX } from './theme.ts';
import type { Desk } from './tools/tool.ts';

/** Farther away than this nobody looks for what is in line. */
const NEIGHBOUR_MM = 700;
/** A line is never farther than this, however far out one looks. */
const REACH_MM = 30;

export interface Moving {
	/** Around all that is moved, where it was. */
	readonly body: Box;
	/** The point of it that falls on the grid. */
	readonly point: Point;
	readonly by: Point;
	/** Parts that go along, and are no neighbours. */
	readonly without: ReadonlySet<PartId>;
	/** Studs that go along, and those of other parts they are wired to. */
	readonly ties?: readonly Tie[];
	readonly press: Press;
	/** False where only the grid counts. */
	readonly lines: boolean;
}

export interface Snapped {
	readonly by: Point;
	readonly guides: readonly Guide[];
}

/** 0 while there is no grid. */
export const pitchOf = ({ aids }: Pick<Desk, 'aids'>): number => (aids.grid ? GRID_MM : 0);

export function snapMoved(desk: Desk, { body, point, by, without, ties = [], press, lines }: Moving): Snapped {
	if (press.keys.alt) return { by, guides: [] };
	const onGrid = { x: snap(point.x + by.x, pitchOf(desk)) - point.x, y: snap(point.y + by.y, pitchOf(desk)) - point.y };
	if (!lines || !desk.aids.guides) return { by: onGrid, guides: [] };
	const held = translateBox(body, by);
	const others = neighbours(desk, held, without);
	const tied = (shift: Point) => ties.map(({ own, other }) => ({ own: { x: own.x + shift.x, y: own.y + shift.y }, other }));
	const line = alignmentOf(held, { others, ties: tied(by) }, Math.min(REACH_MM, GUIDE_PX / desk.view.zoom));
	const fit = { x: line.x === null ? onGrid.x : by.x + line.x, y: line.y === null ? onGrid.y : by.y + line.y };
	return { by: fit, guides: guidesOf(translateBox(body, fit), { others, ties: tied(fit) }, { x: line.x !== null, y: line.y !== null }) };
}

/** The ends of conductors that run from what is moved to what stays. */
export function tiesOf({ index, model: { diagram } }: Desk, moved: ReadonlySet<PartId>): Tie[] {
	const at = (ref: TerminalRef): Point | null => index.stud(itemKey('stud', studKey(ref)))?.at ?? null;
	return Object.values(diagram.conductors).flatMap(({ from, to }): Tie[] => {
		if (moved.has(from.part) === moved.has(to.part)) return [];
		const [own, other] = moved.has(from.part) ? [at(from), at(to)] : [at(to), at(from)];
		return own && other ? [{ own, other }] : [];
	});
}

/** Bodies of the other parts around. What is lain over is no neighbour: a block over its stud, a part over an area. */
function neighbours({ index, model }: Desk, held: Box, without: ReadonlySet<PartId>): Box[] {
	const own = new Set([...without].map((id) => itemKey('part', id)));
	return index.items.search(inflateBox(held, NEIGHBOUR_MM)).flatMap((key) => {
		const { body } = index.scene.items.get(key)!;
		if (!body || own.has(key) || Object.hasOwn(model.diagram.mounts, key.slice(key.indexOf(':') + 1))) return [];
		return boxesIntersect(body, held) ? [] : [body];
	});
}
