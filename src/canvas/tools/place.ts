/**
 * Placing a part: its outline follows the pointer, a click sets it down, Escape leaves. A fuse block held over a stud
 * is mounted there, just as when it is dragged there later.
 */
import { addPart, compose, freshId, mountBlock, parseItemKey, terminalRef, type TerminalRef } from '#core/diagram';
import { snapPoint, type Point } from '#core/geometry';
import { ghostOf, type Ghost } from '../parts.ts';
import type { Press } from '../pointer.ts';
import type { StudPlace } from '../scene-index.ts';
import { mountsText, seatFor } from '../seat.ts';
import { GRID_MM } from '../theme.ts';
import { toDrawing } from '../viewport.ts';
import type { CanvasTool, Desk } from './tool.ts';

export interface PartPlacer {
	/** Shows what a click here would do. */
	show(kind: string, press: Press): void;
	place(kind: string, press: Press): void;
	hide(): void;
}

export function createPartPlacer(desk: Desk): PartPlacer {
	let known: { readonly kind: string; readonly ghost: Ghost | null } | null = null;
	const ghostFor = (kind: string): Ghost | null => (known?.kind === kind ? known : (known = { kind, ghost: ghostOf(kind) })).ghost;
	const placeOf = (press: Press): Point => snapPoint(toDrawing(desk.view, press.at), GRID_MM);

	function seatUnder({ plate }: Ghost, press: Press): StudPlace | null {
		const at = placeOf(press);
		return plate && seatFor(desk, { x: at.x + plate.x, y: at.y + plate.y }, press, null);
	}

	function hide(): void {
		desk.preview(null);
		desk.lay({ ghost: null, seeks: null, target: null, tag: null });
	}

	return {
		hide,
		show(kind, press) {
			const ghost = ghostFor(kind);
			if (!ghost) return hide();
			const at = placeOf(press);
			const seat = seatUnder(ghost, press);
			const refused = desk.preview(seat && mountedGhost(desk, ghost, refOf(seat)));
			desk.lay({
				ghost: seat && refused === null ? null : { at, primitives: ghost.primitives },
				seeks: ghost.plate && { what: 'block', except: null },
				target: seat?.key ?? null,
				tag: seat && { at: seat.at, text: refused ?? mountsText(desk, seat), tone: refused === null ? 'good' : 'bad' },
				hover: null
			});
		},
		place(kind, press) {
			const ghost = ghostFor(kind);
			const seat = ghost && seatUnder(ghost, press);
			hide();
			if (seat) desk.host.placePart(kind, placeOf(press), refOf(seat));
			else if (ghost) desk.host.placePart(kind, placeOf(press));
		}
	};
}

const refOf = (stud: StudPlace): TerminalRef => terminalRef(parseItemKey(stud.key).id);

/** Never run: it only shows where the new block would lie. */
function mountedGhost(desk: Desk, { part }: Ghost, on: TerminalRef) {
	const id = freshId(desk.model.diagram.parts, 'new');
	return compose('mount a new fuse block', [addPart({ id, part }), mountBlock({ block: id, on })]);
}

export function createPlaceTool(desk: Desk): CanvasTool {
	const placer = createPartPlacer(desk);
	const kind = () => (desk.model.tool.kind === 'place' ? desk.model.tool.partKind : null);

	return {
		hover(press) {
			const placed = kind();
			desk.cursor('copy');
			if (placed === null) placer.hide();
			else placer.show(placed, press);
		},

		tap(press) {
			const placed = kind();
			if (placed !== null) placer.place(placed, press);
		},

		// Somebody who presses and drags means the place where they let go; a finger pans with two.
		drag() {
			return {
				move: (press) => this.hover(press),
				end: (press) => this.tap(press, 1),
				cancel: placer.hide
			};
		},

		escape: () => desk.host.setTool({ kind: 'select' }),
		leave: placer.hide
	};
}
