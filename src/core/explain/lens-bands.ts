/**
 * How a lens shows five steps. They differ in lightness by even steps, in width and in pattern, so that the legend
 * works in greyscale and on a plain printer: of two neighbours one is clearly darker, wider and drawn otherwise.
 */
export type BandIndex = 0 | 1 | 2 | 3 | 4;

export interface BandLook {
	/** On light paper the greater band is darker, on dark paper lighter: it always stands out more. */
	readonly colour: { readonly light: string; readonly dark: string };
	/** Times the conductor's ordinary width on the drawing. */
	readonly widthFactor: number;
	/** Lengths of stroke and gap, millimetres on the drawing; empty for an unbroken line. */
	readonly dashMm: readonly number[];
	/** A mark for tables and labels without colour. */
	readonly tag: string;
}

export const BAND_LOOKS: readonly [BandLook, BandLook, BandLook, BandLook, BandLook] = [
	{ colour: { light: '#78c1bf', dark: '#004f66' }, widthFactor: 0.8, dashMm: [], tag: '·' },
	{ colour: { light: '#679c75', dark: '#1b716c' }, widthFactor: 1, dashMm: [24, 4], tag: '–' },
	{ colour: { light: '#826d24', dark: '#698e50' }, widthFactor: 1.3, dashMm: [14, 4], tag: '=' },
	{ colour: { light: '#813d12', dark: '#c6a357' }, widthFactor: 1.7, dashMm: [7, 4], tag: '≡' },
	{ colour: { light: '#63111b', dark: '#efccac' }, widthFactor: 2.2, dashMm: [], tag: '■' }
];
