import type { ItemKey } from '#core/diagram';
import type { Box, Point } from '#core/geometry';
import type { Primitive } from '#core/graphics';
import type { PartDescription } from '#core/parts';

/** Another way to draw parts: as symbols, with their terminals where the outline has them. */
export interface PartSymbols {
	/** Around (0, 0), before rotation, terminals included. */
	symbolOf(part: PartDescription): readonly Primitive[];
	/** Where designation and ratings go on it, before rotation; null where they go beside the body. */
	wordsOf(part: PartDescription): Box | null;
}

/** Where a stud or clamp is on the drawing. */
export interface DrawnTerminal {
	/** "stud:D1.L" */
	readonly key: ItemKey;
	readonly at: Point;
	/** Radius of the drawn stud or clamp. */
	readonly radiusMm: number;
}

export interface DrawnItem {
	/** "part:…", "conductor:…", "area:…", "note:…" or "underlay:…" */
	readonly key: ItemKey;
	/** Everything drawn, strokes and text included. */
	readonly box: Box;
	/** In diagram coordinates, already placed and turned. Painted in order. */
	readonly primitives: readonly Primitive[];
	/** Text that may be left out when zoomed far out. */
	readonly labels: readonly Primitive[];
	/** A part's body, for picking; null for conductors. */
	readonly body: Box | null;
	/** A conductor's centre line; null for parts. */
	readonly route: readonly Point[] | null;
	/** A conductor's drawn width. */
	readonly widthMm: number;
	readonly terminals: readonly DrawnTerminal[];
	/** The rectangle of an area, a note or a picture; none for parts and conductors. */
	readonly frame?: Box;
}

/**
 * The whole drawing: what canvas, SVG and PDF paint. Items keep their identity from one scene to the next while
 * nothing about them changed.
 */
export interface Scene {
	readonly items: ReadonlyMap<ItemKey, DrawnItem>;
	/** Back to front: pictures and areas below all, notes above; conductors lie over parts' bodies, mounted blocks over their hosts. */
	readonly order: readonly ItemKey[];
	readonly bounds: Box | null;
}
