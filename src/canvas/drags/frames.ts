/** Moving areas, notes and pictures, with the parts that are selected beside them. */
import { compose, moveFrames, moveParts, parseItemKey, type Command, type Diagram, type ItemKey } from '#core/diagram';
import type { Point } from '#core/geometry';
import type { Press } from '../pointer.ts';
import { snapMoved } from '../snapping.ts';
import type { Desk, Drag } from '../tools/tool.ts';
import { toDrawing } from '../viewport.ts';

/** @param lead what was taken hold of: its corner is what falls on the grid */
export function dragFrames(desk: Desk, lead: ItemKey, keys: readonly ItemKey[], from: Press): Drag {
	const start = toDrawing(desk.view, from.at);
	const frame = desk.index.scene.items.get(lead)!.frame!;
	let command: Command | null = null;
	const leave = (): void => {
		desk.preview(null);
		desk.lay({ tag: null, guides: null });
	};
	desk.cursor('grabbing');
	return {
		move(press) {
			const pointer = toDrawing(desk.view, press.at);
			const { by } = snapMoved(desk, {
				body: frame,
				point: { x: frame.minX, y: frame.minY },
				by: { x: pointer.x - start.x, y: pointer.y - start.y },
				without: new Set(),
				press,
				lines: false
			});
			command = by.x === 0 && by.y === 0 ? null : movedAll(desk.model.diagram, keys, by);
			const refused = desk.preview(command);
			if (refused !== null) command = null;
			desk.lay({ hover: null, tag: refused === null ? null : { at: pointer, text: refused, tone: 'bad' } });
		},
		end() {
			if (command) desk.host.run(command);
			leave();
		},
		cancel: leave
	};
}

/** Null where none of these can be moved by itself. */
export function movedAll({ mounts }: Pick<Diagram, 'mounts'>, keys: readonly ItemKey[], by: Point): Command | null {
	const parts = idsOf(keys, 'part').filter((id) => !Object.hasOwn(mounts, id));
	const commands = [...(parts.length > 0 ? [moveParts({ parts, by })] : []), ...movedFrames(keys, by)];
	return commands.length > 1 ? compose(commands[0]!.label, commands) : (commands[0] ?? null);
}

/** One command, or none where there are no frames among them. */
export function movedFrames(keys: readonly ItemKey[], by: Point): Command[] {
	const frames = { areas: idsOf(keys, 'area'), notes: idsOf(keys, 'note'), underlays: idsOf(keys, 'underlay') };
	return frames.areas.length + frames.notes.length + frames.underlays.length > 0 ? [moveFrames({ ...frames, by })] : [];
}

const idsOf = (keys: readonly ItemKey[], wanted: string): string[] =>
	keys.flatMap((key) => {
		const { kind, id } = parseItemKey(key);
		return kind === wanted ? [id] : [];
	});
