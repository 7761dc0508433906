/** What is drawn over everything while pointing: plain data, written by tools, painted by paint/overlay.ts. */
import type { ItemKey, TerminalRef } from '#core/diagram';
import type { Box, Guide, Point } from '#core/geometry';
import type { Primitive } from '#core/graphics';

export interface Overlay {
	/** The stud, conductor or part under the pointer. */
	readonly hover: ItemKey | null;
	/** A few words beside a place on the drawing. */
	readonly tag: { readonly at: Point; readonly text: string; readonly tone: 'plain' | 'good' | 'bad' } | null;
	/** Rubber band of a selection by box, in drawing coordinates. */
	readonly box: Box | null;
	/** Rubber band of a conductor being drawn. */
	readonly band: { readonly points: readonly Point[]; readonly lands: boolean } | null;
	/** Set while a stud is being looked for: the studs that would do are ringed. */
	readonly seeks: { readonly what: 'lug' | 'block'; readonly except: TerminalRef | null } | null;
	/** The stud that would be taken if the pointer were released now. */
	readonly target: ItemKey | null;
	/** Lines and distances that hold for what is being moved. */
	readonly guides: readonly Guide[] | null;
	/** A part about to be placed, drawn around (0, 0). */
	readonly ghost: { readonly at: Point; readonly primitives: readonly Primitive[] } | null;
}

export const NOTHING: Overlay = { hover: null, tag: null, box: null, band: null, seeks: null, target: null, guides: null, ghost: null };
