/** A drag that previews one command and runs it at the end. */
import type { Command } from '#core/diagram';
import type { Point } from '#core/geometry';
import type { Overlay } from '../overlay.ts';
import type { Press } from '../pointer.ts';
import type { Cursor, Desk, Drag } from '../tools/tool.ts';
import { toDrawing } from '../viewport.ts';

interface Previewed {
	/** Null where nothing would change. */
	readonly command: Command | null;
	/** Said beside the pointer while it is not refused. */
	readonly says?: string;
}

/** @param at what the drag would do with the pointer there */
export function dragCommand(desk: Desk, at: (pointer: Point, press: Press) => Previewed, cursor?: Cursor): Drag {
	let command: Command | null = null;
	const leave = (): void => {
		desk.preview(null);
		desk.lay({ tag: null });
	};
	if (cursor) desk.cursor(cursor);
	return {
		move(press) {
			const pointer = toDrawing(desk.view, press.at);
			const previewed = at(pointer, press);
			const refused = desk.preview(previewed.command);
			command = refused === null ? previewed.command : null;
			const text = refused ?? previewed.says;
			const tag: Overlay['tag'] = text === undefined ? null : { at: pointer, text, tone: refused === null ? 'plain' : 'bad' };
			desk.lay({ hover: null, tag });
		},
		end() {
			if (command) desk.host.run(command);
			leave();
		},
		cancel: leave
	};
}
