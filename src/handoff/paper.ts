/** Sheets of paper, millimetres: ISO 216 and ANSI/ASME Y14.1. */
export const PAPERS = {
	a4: { name: 'A4', widthMm: 210, heightMm: 297 },
	a3: { name: 'A3', widthMm: 297, heightMm: 420 },
	letter: { name: 'Letter', widthMm: 215.9, heightMm: 279.4 },
	tabloid: { name: 'Tabloid', widthMm: 279.4, heightMm: 431.8 }
} as const;
export type PaperId = keyof typeof PAPERS;
export const PAPER_IDS = Object.keys(PAPERS) as PaperId[];
export type Orientation = 'portrait' | 'landscape';

export interface Size {
	readonly widthMm: number;
	readonly heightMm: number;
}

export function sheetSize(paper: PaperId, orientation: Orientation): Size {
	const { widthMm, heightMm } = PAPERS[paper];
	return orientation === 'portrait' ? { widthMm, heightMm } : { widthMm: heightMm, heightMm: widthMm };
}
