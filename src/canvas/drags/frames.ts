/** Moving areas, notes and pictures, with the parts that are selected beside them. */
import { idsByKind, moveItems, type ItemKey } from '#core/diagram';
import type { Press } from '../pointer.ts';
import { snapMoved } from '../snapping.ts';
import type { Desk, Drag } from '../tools/tool.ts';
import { toDrawing } from '../viewport.ts';
import { dragCommand } from './command.ts';

/** @param lead what was taken hold of: its corner is what falls on the grid */
export function dragFrames(desk: Desk, lead: ItemKey, keys: readonly ItemKey[], from: Press): Drag {
	const start = toDrawing(desk.view, from.at);
	const frame = desk.index.scene.items.get(lead)!.frame!;
	const ids = idsByKind(keys);
	return dragCommand(
		desk,
		(pointer, press) => {
			const { by } = snapMoved(desk, {
				body: frame,
				point: { x: frame.minX, y: frame.minY },
				by: { x: pointer.x - start.x, y: pointer.y - start.y },
				without: new Set(),
				press,
				lines: false
			});
			if (by.x === 0 && by.y === 0) return { command: null };
			// What sits on a stud goes where that goes.
			const parts = ids.parts.filter((id) => !Object.hasOwn(desk.model.diagram.mounts, id));
			return { command: moveItems({ ...ids, parts }, by) };
		},
		'grabbing'
	);
}
