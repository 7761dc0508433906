/** Areas, notes and pictures under the pointer: rectangles with an inside that belongs to others. */
import { parseItemKey, type ItemKey } from '#core/diagram';
import type { DrawnItem } from '#core/drawing';
import { boundsOf } from '#core/graphics';
import { boxContainsPoint, inflateBox, type Box, type Point } from '#core/geometry';
import { HANDLE_PX, PICK_PX } from './theme.ts';
import type { Pickable } from './pick.ts';
import type { Device } from './pointer.ts';
import { toDrawing, toScreen } from './viewport.ts';

/** An edge or a corner that can be taken hold of: −1 is the left or upper one, 1 the right or lower one. */
export interface Grip {
	readonly x: -1 | 0 | 1;
	readonly y: -1 | 0 | 1;
}

const CORNERS_AND_EDGES: readonly Grip[] = ([-1, 0, 1] as const).flatMap((x) =>
	([-1, 0, 1] as const).flatMap((y): Grip[] => (x === 0 && y === 0 ? [] : [{ x, y }]))
);

/** The note here: it lies over everything. */
export const noteAt = (on: Pickable, screen: Point): ItemKey | null =>
	frameUnder(on, screen, 0, 'note', ({ frame }, at) => boxContainsPoint(frame!, at));

/** The area or picture whose edge or name is here; what is inside belongs to the parts. */
export function frameAt(on: Pickable, screen: Point, device: Device): ItemKey | null {
	const reach = PICK_PX[device] / on.view.zoom;
	const isOn = ({ frame, labels }: DrawnItem, at: Point): boolean =>
		onEdge(frame!, at, reach) || (labels.length > 0 && boxContainsPoint(boundsOf(labels), at));
	return frameUnder(on, screen, reach, 'area', isOn) ?? frameUnder(on, screen, reach, 'underlay', isOn);
}

const onEdge = (frame: Box, at: Point, reach: number): boolean =>
	boxContainsPoint(inflateBox(frame, reach), at) && !boxContainsPoint(inflateBox(frame, -reach), at);

function frameUnder(
	on: Pickable,
	screen: Point,
	reach: number,
	kind: string,
	isOn: (item: DrawnItem, at: Point) => boolean
): ItemKey | null {
	const { index, view } = on;
	const at = toDrawing(view, screen);
	let top: ItemKey | null = null;
	for (const key of index.items.search({ minX: at.x - reach, minY: at.y - reach, maxX: at.x + reach, maxY: at.y + reach })) {
		const item = index.scene.items.get(key)!;
		if (!item.frame || parseItemKey(key).kind !== kind || !isOn(item, at)) continue;
		// A picture that is locked is out of the way of what is drawn over it.
		if (kind === 'underlay' && on.isLocked?.(key)) continue;
		if (top === null || index.rank(key) > index.rank(top)) top = key;
	}
	return top;
}

/** The grips of the one area or note that is selected, on the screen. */
export function gripsOf(on: Pickable): { key: ItemKey; grip: Grip; at: Point }[] {
	const { index, view, selection } = on;
	if (selection.size !== 1) return [];
	const [key] = selection;
	const frame = key && index.scene.items.get(key)?.frame;
	if (!key || !frame || on.isLocked?.(key)) return [];
	const { kind } = parseItemKey(key);
	const grips = kind === 'area' ? CORNERS_AND_EDGES : kind === 'note' ? [{ x: 1, y: 0 } as const] : [];
	const place = (low: number, high: number, side: -1 | 0 | 1): number => (side === 0 ? (low + high) / 2 : side < 0 ? low : high);
	return grips.map((grip) => ({
		key,
		grip,
		at: toScreen(view, { x: place(frame.minX, frame.maxX, grip.x), y: place(frame.minY, frame.maxY, grip.y) })
	}));
}

export function gripAt(on: Pickable, screen: Point, device: Device): { readonly key: ItemKey; readonly grip: Grip } | null {
	const reach = HANDLE_PX + (device === 'touch' ? 12 : 3);
	return gripsOf(on).find(({ at }) => Math.hypot(at.x - screen.x, at.y - screen.y) <= reach) ?? null;
}
