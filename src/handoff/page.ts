/** A printed sheet in the drawing's own vocabulary: PDF, print and tests paint the same. */
import type { Box } from '#core/geometry';
import type { Primitive } from '#core/graphics';
import type { Size } from './paper.ts';

export interface Page {
	readonly size: Size;
	readonly primitives: readonly Primitive[];
	/** Painted first, and only inside its box: a part of a drawing larger than the sheet. */
	readonly window?: { readonly box: Box; readonly primitives: readonly Primitive[] };
	/** Where a click leads, by page number from 1. */
	readonly links?: readonly { readonly box: Box; readonly page: number }[];
	/** For the list of contents beside the document; left out on further sheets of a section. */
	readonly bookmark?: string;
}

/** Width of a line of text, millimetres. */
export type Measure = (text: string, sizeMm: number, bold?: boolean) => number;
