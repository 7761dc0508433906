import type { ConductorId, Diagram } from '#core/diagram';
import type { Box } from '#core/geometry';
import type { Paint, Primitive } from '#core/graphics';
import type { Joint, Stack } from '#core/studs';

/** A note on the drawing: which layer, which number in the list below it, how grave. */
export interface LayerMark {
	readonly layer: number;
	readonly number: number;
	readonly paint: Extract<Paint, 'error' | 'warning' | 'note'>;
}

export interface ElevationInput {
	readonly diagram: Diagram;
	readonly stack: Stack;
	/** Current and heat of each joint, in one case or each in its own worst; empty where they are not known. */
	readonly joints: readonly Joint[];
	readonly marks: readonly LayerMark[];
	/** Colour of a conductor's insulation. */
	readonly insulation: (conductor: ConductorId) => Paint;
}

/** The room there is, in sizes of its text: a narrow panel has about 26 across, a window 70, a sheet of paper more. */
export interface ElevationRoom {
	readonly widthEm: number;
	/** What is drawn is never higher than this; labels may be. */
	readonly heightEm: number;
	/** Least height of a row of the labels, so that a finger can hold it. */
	readonly rowEm?: number;
	/** Kept free at the right end of each row, for a grip. */
	readonly gripEm?: number;
}

/** One layer as drawn: where it is, and where its label is. Millimetres of the drawing. */
export interface DrawnLayer {
	readonly layer: number;
	readonly body: Box;
	readonly row: Box;
}

/** A stud from the side, to scale; y runs downward from the seat at 0. */
export interface Elevation {
	readonly primitives: readonly Primitive[];
	readonly box: Box;
	/** Size of its text in millimetres of the drawing. */
	readonly textMm: number;
	readonly layers: readonly DrawnLayer[];
	/** Boxes of everything written, in no order. */
	readonly words: readonly Box[];
	/** "Seen from the south of the drawing". */
	readonly seenFrom: string;
}
