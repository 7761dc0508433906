/**
 * The drawing vocabulary. Parts and the drawing describe themselves with these; canvas, SVG and PDF each paint
 * them, so that what is printed is what was drawn. Lengths are millimetres.
 */
import type { Point } from '#core/geometry';
import type { Colour } from '#core/diagram';

/** A role, not a colour: a theme (light, dark, paper) gives each its colour. */
export type Paint =
	| 'ink' // text and symbols
	| 'muted' // secondary text
	| 'faint' // hairlines, grid
	| 'case' // body of a part
	| 'case-raised' // a raised area of a body
	| 'case-edge'
	| 'metal' // bars, plates, nuts
	| 'metal-dark' // thread and stud tops
	| 'fuse' // element window of a fuse
	| 'positive' // polarity tints on parts
	| 'negative'
	| 'chassis'
	| 'selection'
	| 'accent'
	| 'error'
	| 'warning'
	| 'note'
	| 'ok'
	| 'paper' // background
	| `conductor:${Exclude<Colour, 'auto'>}`;

export interface Style {
	readonly fill?: Paint;
	readonly stroke?: Paint;
	/** Stroke width in millimetres. */
	readonly width?: number;
	/** Dash pattern in millimetres. */
	readonly dash?: readonly number[];
	readonly cap?: 'butt' | 'round';
	readonly opacity?: number;
}

export type Primitive =
	| ({ readonly kind: 'rect'; readonly x: number; readonly y: number; readonly w: number; readonly h: number; readonly r?: number } & Style)
	| ({ readonly kind: 'circle'; readonly x: number; readonly y: number; readonly r: number } & Style)
	| ({ readonly kind: 'polyline'; readonly points: readonly Point[]; readonly closed?: boolean; readonly round?: number } & Style)
	| ({
			readonly kind: 'text';
			readonly x: number;
			readonly y: number;
			readonly text: string;
			/** Cap-to-descender size in millimetres. */
			readonly size: number;
			readonly align?: 'start' | 'middle' | 'end';
			readonly bold?: boolean;
			/** Text stays upright when its part turns. */
			readonly upright?: boolean;
			/** Painted behind the glyphs so that text stays legible over lines. */
			readonly halo?: Paint;
	  } & Pick<Style, 'fill' | 'opacity'>);
