/** Selecting by a box around things: what lies wholly inside is selected, with shift added to what was. */
import { parseItemKey, withGroups, type ItemKey } from '#core/diagram';
import { boxContainsBox, boxOfPoints, type Box } from '#core/geometry';
import type { Press } from '../pointer.ts';
import type { SceneIndex } from '../scene-index.ts';
import type { Desk, Drag } from '../tools/tool.ts';
import { toDrawing } from '../viewport.ts';

export function dragBox(desk: Desk, from: Press): Drag {
	const start = toDrawing(desk.view, from.at);
	const boxTo = (press: Press): Box => boxOfPoints([start, toDrawing(desk.view, press.at)]);

	desk.cursor('crosshair');
	return {
		move: (press) => desk.lay({ box: boxTo(press), hover: null }),
		end(press) {
			const inside = withGroups(
				desk.model.diagram,
				itemsInside(desk.index, boxTo(press), (key) => parseItemKey(key).kind === 'underlay' && (desk.isLocked?.(key) ?? false))
			);
			desk.lay({ box: null });
			desk.host.select(from.keys.shift ? [...new Set([...desk.selection, ...inside])] : inside);
		},
		cancel: () => desk.lay({ box: null })
	};
}

/** Parts, conductors and frames wholly inside, back to front. A part counts by its body: its name may stick out. */
export function itemsInside(index: SceneIndex, box: Box, isLeftOut: (key: ItemKey) => boolean = () => false): ItemKey[] {
	return index.items
		.search(box)
		.filter((key) => {
			const item = index.scene.items.get(key)!;
			return !isLeftOut(key) && boxContainsBox(box, item.body ?? item.frame ?? (item.route ? boxOfPoints(item.route) : item.box));
		})
		.sort((a, b) => index.rank(a) - index.rank(b));
}
