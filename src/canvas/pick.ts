/** What lies under the pointer. The nearest conductor wins, not the topmost; a finger may miss by more than a mouse. */
import { parseItemKey, type ConductorEnd, type ConductorId, type ItemKey } from '#core/diagram';
import { boxContainsPoint, distance, nearestOnPolyline, polylineLength, pointAtFraction, type Point } from '#core/geometry';
import { frameAt, gripAt, noteAt, type Grip } from './frames.ts';
import { markAt, type Mark } from './marks.ts';
import { remarkAt, type RemarkMark } from './remark-marks.ts';
import type { Device } from './pointer.ts';
import type { SceneIndex, StudPlace } from './scene-index.ts';
import { HANDLE_PX, PICK_PX, STUD_PICK_MIN_PX } from './theme.ts';
import { toDrawing, toScreen, type View } from './viewport.ts';

export type Target =
	| { readonly kind: 'mark'; readonly mark: Mark }
	| { readonly kind: 'remark'; readonly key: ItemKey }
	| { readonly kind: 'handle'; readonly conductor: ConductorId; readonly end: ConductorEnd }
	| { readonly kind: 'stud'; readonly key: ItemKey; readonly stud: StudPlace }
	| { readonly kind: 'conductor'; readonly key: ItemKey; readonly at: Point; readonly segment: number }
	| { readonly kind: 'part'; readonly key: ItemKey }
	| { readonly kind: 'frame'; readonly key: ItemKey }
	| { readonly kind: 'grip'; readonly key: ItemKey; readonly grip: Grip };

export interface Pickable {
	readonly index: SceneIndex;
	readonly view: View;
	readonly marks: readonly Mark[];
	readonly remarks?: readonly RemarkMark[];
	readonly selection: ReadonlySet<ItemKey>;
	/** None, when left out. */
	isLocked?(key: ItemKey): boolean;
}

/** Null over nothing. */
export function pick(on: Pickable, screen: Point, device: Device): Target | null {
	const mark = markAt(on.marks, screen, device === 'touch' ? 8 : 2);
	if (mark) return { kind: 'mark', mark };
	const remark = remarkAt(on.remarks ?? [], screen, device === 'touch' ? 8 : 2);
	if (remark) return { kind: 'remark', key: remark.key };
	const grip = gripAt(on, screen, device);
	if (grip) return { kind: 'grip', ...grip };
	return handleAt(on, screen, device) ?? thingAt(on, screen, device);
}

/** As `pick`, without marks and handles: what a drag takes hold of. */
export function thingAt(on: Pickable, screen: Point, device: Device): Target | null {
	const note = noteAt(on, screen);
	if (note) return { kind: 'frame', key: note };
	const stud = studAt(on, screen, device, STUD_PICK_MIN_PX[device]);
	if (stud) return { kind: 'stud', key: stud.key, stud };
	const at = toDrawing(on.view, screen);
	const part = partAt(on.index, at);
	const radius = PICK_PX[device] / on.view.zoom;
	const conductor = conductorAt(on.index, at, part ? radius / 2 : radius);
	// A part lying over a conductor (a mounted block) hides it.
	if (conductor && (!part || on.index.rank(part) < on.index.rank(conductor.key))) return { kind: 'conductor', ...conductor };
	if (part) return { kind: 'part', key: part };
	const frame = frameAt(on, screen, device);
	return frame && { kind: 'frame', key: frame };
}

/** The nearest stud within reach. Studs drawn smaller than `minPx` are skipped: at that zoom one means the part. */
export function studAt(
	on: Pickable,
	screen: Point,
	device: Device,
	minPx = 0,
	accepts: (stud: StudPlace) => boolean = () => true
): StudPlace | null {
	const { index, view } = on;
	const at = toDrawing(view, screen);
	const reach = PICK_PX[device] / view.zoom;
	let best: StudPlace | null = null;
	let bestAway = Infinity;
	const widest = reach + 20;
	for (const key of index.studs.search({ minX: at.x - widest, minY: at.y - widest, maxX: at.x + widest, maxY: at.y + widest })) {
		const stud = index.stud(key)!;
		if (stud.radiusMm * view.zoom < minPx) continue;
		const away = distance(stud.at, at);
		// Of a stack of a block's plate over its host's stud, the upper one is meant.
		const nearer = away < bestAway - 1e-6 || (away < bestAway + 1e-6 && best !== null && index.rank(stud.item) > index.rank(best.item));
		if (away <= Math.max(stud.radiusMm, Math.min(reach, stud.radiusMm + 0.6 * reach)) && nearer && accepts(stud)) {
			best = stud;
			bestAway = away;
		}
	}
	return best;
}

/** Whether a part is drawn so small that one of its studs cannot be aimed at. */
export const isFarOut = ({ index, view }: Pickable, part: ItemKey, device: Device): boolean =>
	(index.scene.items.get(part)?.terminals ?? []).some(({ radiusMm }) => radiusMm * view.zoom < STUD_PICK_MIN_PX[device]);

/** The topmost part whose body holds the point. */
export function partAt(index: SceneIndex, at: Point): ItemKey | null {
	let top: ItemKey | null = null;
	for (const key of index.items.search({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y })) {
		const { body } = index.scene.items.get(key)!;
		if (body && boxContainsPoint(body, at) && (top === null || index.rank(key) > index.rank(top))) top = key;
	}
	return top;
}

function conductorAt(index: SceneIndex, at: Point, radiusMm: number): { key: ItemKey; at: Point; segment: number } | null {
	const nearest = index.items.nearest(at, radiusMm, (key) => {
		const item = index.scene.items.get(key)!;
		return item.route ? nearestOnPolyline(at, item.route).distance - item.widthMm / 2 : Infinity;
	});
	if (!nearest) return null;
	const { at: on, segment } = nearestOnPolyline(at, index.scene.items.get(nearest.key)!.route!);
	return { key: nearest.key, at: on, segment };
}

/** The handles at the ends of a selected conductor, a little way along it so that the stud stays free. */
export function handlesOf(on: Pickable): { conductor: ConductorId; end: ConductorEnd; at: Point }[] {
	if (on.selection.size !== 1) return [];
	const [key] = on.selection;
	const route = key && on.index.scene.items.get(key)?.route;
	if (!route || route.length < 2) return [];
	const length = polylineLength(route);
	const share = Math.min(0.3, (18 / on.view.zoom + 6) / length);
	const { id } = parseItemKey(key);
	return [
		{ conductor: id, end: 'from', at: toScreen(on.view, pointAtFraction(route, share)) },
		{ conductor: id, end: 'to', at: toScreen(on.view, pointAtFraction(route, 1 - share)) }
	];
}

function handleAt(on: Pickable, screen: Point, device: Device): Target | null {
	const reach = HANDLE_PX + (device === 'touch' ? 12 : 3);
	for (const { conductor, end, at } of handlesOf(on)) if (distance(at, screen) <= reach) return { kind: 'handle', conductor, end };
	return null;
}
