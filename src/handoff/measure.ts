import type { Fonts } from './fonts.ts';
import type { Measure } from './page.ts';
import { sheetSize } from './paper.ts';
import { measureWith, newDocument } from './pdf-document.ts';

/** Widths of texts in the packet's font. */
export const measureBy = (fonts: Fonts): Measure => measureWith(newDocument(sheetSize('a4', 'portrait'), fonts));
