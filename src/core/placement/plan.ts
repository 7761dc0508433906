import type { Sketch } from './sketch.ts';

/** A way to land circuits, not drawn yet. */
export interface Plan {
	readonly id: string;
	/** What goes where, in a sentence. */
	readonly title: string;
	readonly draw: (sketch: Sketch) => void;
}
