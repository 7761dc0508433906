/** Placing a part: its outline follows the pointer, a click sets it down, Escape leaves. */
import { snapPoint } from '#core/geometry';
import type { Primitive } from '#core/graphics';
import type { Press } from '../pointer.ts';
import { ghostOf } from '../parts.ts';
import { GRID_MM } from '../theme.ts';
import { toDrawing } from '../viewport.ts';
import type { CanvasTool, Desk } from './tool.ts';

export function createPlaceTool(desk: Desk): CanvasTool {
	let drawn: { readonly kind: string; readonly primitives: readonly Primitive[] | null } | null = null;
	const ghost = (kind: string) => (drawn?.kind === kind ? drawn : (drawn = { kind, primitives: ghostOf(kind) })).primitives;
	const kind = () => (desk.model.tool.kind === 'place' ? desk.model.tool.partKind : null);
	const place = (press: Press) => snapPoint(toDrawing(desk.view, press.at), GRID_MM);

	return {
		hover(press) {
			const placed = kind();
			const primitives = placed === null ? null : ghost(placed);
			desk.cursor('copy');
			desk.lay({ ghost: primitives && { at: place(press), primitives }, hover: null, tag: null });
		},

		tap(press) {
			const placed = kind();
			desk.lay({ ghost: null });
			if (placed !== null) desk.host.placePart(placed, place(press));
		},

		// Somebody who presses and drags means the place where they let go; a finger pans with two.
		drag() {
			return {
				move: (press) => this.hover(press),
				end: (press) => this.tap(press, 1),
				cancel: () => desk.lay({ ghost: null })
			};
		},

		escape: () => desk.host.setTool({ kind: 'select' }),
		leave: () => desk.lay({ ghost: null })
	};
}
