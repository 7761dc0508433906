/** Where remarks are marked on the screen: a small sheet of paper on the side where no finding's mark stands. */
import type { ItemKey } from '#core/diagram';
import { pointAtFraction, type Point } from '#core/geometry';
import type { SceneIndex } from './scene-index.ts';
import { toScreen, type View } from './viewport.ts';

export interface RemarkMark {
	/** Centre, on the screen. */
	readonly at: Point;
	readonly radiusPx: number;
	/** What a click selects. */
	readonly key: ItemKey;
	readonly count: number;
}

/** Share of a conductor's way: findings are marked at its middle. */
const ALONG = 0.35;
const BESIDE_STUD_PX = { x: -13, y: 13 };

/** Neighbours that would cover one another run together into one mark. Things no longer on the drawing have none. */
export function placeRemarks(remarks: ReadonlyMap<ItemKey, number>, index: SceneIndex, view: View, radiusPx: number): RemarkMark[] {
	const marks: { at: Point; radiusPx: number; key: ItemKey; count: number }[] = [];
	for (const [key, count] of remarks) {
		const at = placeOf(key, index, view);
		if (!at) continue;
		const near = marks.find((mark) => Math.hypot(mark.at.x - at.x, mark.at.y - at.y) < 2 * radiusPx);
		if (near) near.count += count;
		else marks.push({ at, radiusPx, key, count });
	}
	return marks;
}

export const remarkAt = (marks: readonly RemarkMark[], screen: Point, slackPx: number): RemarkMark | null =>
	marks.findLast(({ at, radiusPx }) => Math.max(Math.abs(at.x - screen.x), Math.abs(at.y - screen.y)) <= radiusPx + slackPx) ?? null;

function placeOf(key: ItemKey, index: SceneIndex, view: View): Point | null {
	const stud = index.stud(key);
	if (stud) {
		const at = toScreen(view, stud.at);
		return { x: at.x + BESIDE_STUD_PX.x, y: at.y + BESIDE_STUD_PX.y };
	}
	const item = index.scene.items.get(key);
	if (item?.route) return toScreen(view, pointAtFraction(item.route, ALONG));
	return item?.body ? toScreen(view, { x: item.body.minX, y: item.body.minY }) : null;
}
