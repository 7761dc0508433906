/** Writing a note: a click on empty paper sets it there, a drag from a part or conductor leads it to that. */
import { parseItemKey } from '#core/diagram';
import { thingAt } from '../pick.ts';
import type { Press } from '../pointer.ts';
import { toDrawing } from '../viewport.ts';
import type { CanvasTool, Desk, Drag } from './tool.ts';

export function createNoteTool(desk: Desk): CanvasTool {
	/** The part or conductor under the pointer; of a stud, its part. */
	const targetOf = (press: Press) => {
		const thing = thingAt(desk, press.at, press.device);
		if (thing?.kind === 'stud') return thing.stud.item;
		return thing?.kind === 'part' || thing?.kind === 'conductor' ? thing.key : null;
	};
	const clear = (): void => desk.lay({ hover: null, band: null });
	const write = (press: Press, from: Press): void => {
		clear();
		const target = targetOf(from);
		desk.host.writeNote?.(toDrawing(desk.view, press.at), target && parseItemKey(target));
	};
	return {
		hover(press) {
			desk.cursor('crosshair');
			desk.lay({ hover: targetOf(press) });
		},
		tap: (press) => write(press, press),
		drag(from): Drag {
			const start = toDrawing(desk.view, from.at);
			return {
				move: (press) => desk.lay({ band: { points: [start, toDrawing(desk.view, press.at)], lands: true } }),
				end: (press) => write(press, from),
				cancel: clear
			};
		},
		escape: () => desk.host.setTool({ kind: 'select' }),
		leave: clear
	};
}
