/** A PDF as another program sees it: poppler’s tools, which tests/run.mjs installs where they are missing. */
import { execFileSync } from 'node:child_process';

const tool = (name: string, args: readonly string[], bytes: Uint8Array): string =>
	execFileSync(name, [...args], { input: bytes, encoding: 'utf8', maxBuffer: 64e6, stdio: ['pipe', 'pipe', 'pipe'] });

export const pdfText = (bytes: Uint8Array): string => tool('pdftotext', ['-layout', '-', '-'], bytes);

/** Texts of its pages, one by one. */
export const pdfPageTexts = (bytes: Uint8Array): string[] => pdfText(bytes).split('\f').slice(0, -1);

export const pdfPages = (bytes: Uint8Array): number => pdfPageTexts(bytes).length;

/** Lines "name  type  encoding  emb sub uni" of its fonts. */
export const pdfFonts = (bytes: Uint8Array): string[] => tool('pdffonts', ['-'], bytes).trim().split('\n').slice(2);

/** Sizes of its pages in points. */
export const pdfSizes = (bytes: Uint8Array): [width: number, height: number][] =>
	[...tool('pdfinfo', ['-f', '1', '-l', '9999', '-'], bytes).matchAll(/Page\s+\d+ size:\s+([\d.]+) x ([\d.]+)/g)].map(([, w, h]) => [
		Number(w),
		Number(h)
	]);
