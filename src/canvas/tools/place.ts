/**
 * Placing a part: its outline follows the pointer, a click sets it down, Escape leaves. A fuse block held over a stud
 * is mounted there, just as when it is dragged there later.
 */
import { addPart, compose, freshId, mountBlock, parseItemKey, terminalRef, type Part, type TerminalRef } from '#core/diagram';
import { snapPoint, type Point } from '#core/geometry';
import { ghostOf, type Ghost } from '../parts.ts';
import type { Press } from '../pointer.ts';
import type { StudPlace } from '../scene-index.ts';
import { mountsText, seatFor } from '../seat.ts';
import { GRID_MM } from '../theme.ts';
import { toDrawing } from '../viewport.ts';
import type { CanvasTool, Desk } from './tool.ts';

/** A part that is not on the drawing yet. */
export interface Placed {
	readonly kind: string;
	readonly params?: Part['params'] | undefined;
}

export interface PartPlacer {
	/** Shows what a click here would do. */
	show(placed: Placed, press: Press): void;
	place(placed: Placed, press: Press): void;
	hide(): void;
}

export function createPartPlacer(desk: Desk): PartPlacer {
	let known: (Placed & { readonly ghost: Ghost | null }) | null = null;
	const ghostFor = ({ kind, params }: Placed): Ghost | null => {
		if (known?.kind !== kind || known.params !== params) known = { kind, params, ghost: ghostOf(kind, params) };
		return known.ghost;
	};
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
		show(placed, press) {
			const ghost = ghostFor(placed);
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
		place(placed, press) {
			const { kind, params } = placed;
			const ghost = ghostFor(placed);
			const seat = ghost && seatUnder(ghost, press);
			hide();
			if (seat) desk.host.placePart(kind, placeOf(press), refOf(seat), params);
			else if (ghost) desk.host.placePart(kind, placeOf(press), undefined, params);
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
	const inHand = (): Placed | null => {
		const { tool } = desk.model;
		return tool.kind === 'place' ? { kind: tool.partKind, params: tool.params } : null;
	};

	return {
		hover(press) {
			const placed = inHand();
			desk.cursor('copy');
			if (placed === null) placer.hide();
			else placer.show(placed, press);
		},

		tap(press) {
			const placed = inHand();
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
