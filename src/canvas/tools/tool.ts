/** A tool says what pointing at the drawing means. Tools know neither Konva nor the DOM, so they run in Node. */
import type { Command } from '#core/diagram';
import type { Aids, CanvasHost, CanvasModel } from '../host.ts';
import type { Overlay } from '../overlay.ts';
import type { Pickable } from '../pick.ts';
import type { Press } from '../pointer.ts';

export type Cursor =
	| 'nwse-resize'
	| 'nesw-resize'
	| 'ew-resize'
	| 'ns-resize'
	| 'default'
	| 'pointer'
	| 'grab'
	| 'grabbing'
	| 'crosshair'
	| 'move'
	| 'copy'
	| 'not-allowed';

/** What a tool may look at and do. */
export interface Desk extends Pickable {
	readonly model: CanvasModel;
	readonly host: CanvasHost;
	readonly overlay: Overlay;
	readonly aids: Aids;
	/** Changes some of the overlay. */
	lay(overlay: Partial<Overlay>): void;
	/** Draws what a command would do, without doing it. Returns the reason when it would be refused. */
	preview(command: Command | null): string | null;
	cursor(cursor: Cursor): void;
}

/** One drag from threshold to release. `cancel` leaves everything as it was; `end` runs at most one command. */
export interface Drag {
	move(press: Press): void;
	end(press: Press): void;
	cancel(): void;
}

export interface CanvasTool {
	hover(press: Press): void;
	tap(press: Press, count: number): void;
	/** Null when dragging from here moves the view. */
	drag(from: Press): Drag | null;
	/** Escape without a drag. */
	escape(): void;
	/** The pointer left, or another tool takes over: nothing of this one may stay on the screen. */
	leave(): void;
}
