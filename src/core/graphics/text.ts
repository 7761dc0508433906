/**
 * Width of text as the layout sees it, millimetres. Glyphs of common sans-serif faces advance by about half their
 * size on average; 0.56 (0.6 in bold) is on the wide side, so that boxes made from it are never too narrow by much.
 * Nothing is ever placed by measured text: a drawing is the same whatever font the reader has.
 */
export const textWidthMm = (text: string, sizeMm: number, bold = false): number => [...text].length * sizeMm * (bold ? 0.6 : 0.56);

/** From the middle of a line of text to its baseline, as a share of its size. */
export const BASELINE_SHIFT = 0.35;
