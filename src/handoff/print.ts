/** The same sheets by the browser's own print dialog, from a frame of their own: no window that could be blocked. */
import { escapeXml } from '#core/graphics';
import { FONT_FAMILY, FONT_FILES } from './fonts.ts';
import type { Page } from './page.ts';
import { pageSvg } from './page-svg.ts';

/** A whole HTML document, one block for each sheet, each on paper of its own size. */
export function printDocument(pages: readonly Page[], title: string, base: string): string {
	const sizes = new Map(pages.map(({ size }) => [sizeName(size), size]));
	const face = (file: string, weight: string): string =>
		`@font-face { font-family: '${FONT_FAMILY}'; font-weight: ${weight}; src: url('${new URL(file, base).href}') format('truetype'); }`;
	const styles = [
		face(FONT_FILES.regular, 'normal'),
		face(FONT_FILES.bold, 'bold'),
		'html, body { margin: 0; }',
		'.sheet { break-after: page; overflow: hidden; }',
		'.sheet:last-child { break-after: auto; }',
		'.sheet > svg { display: block; }',
		...[...sizes].flatMap(([name, { widthMm, heightMm }]) => [
			`@page ${name} { size: ${widthMm}mm ${heightMm}mm; margin: 0; }`,
			`.${name} { page: ${name}; width: ${widthMm}mm; height: ${heightMm}mm; }`
		])
	];
	const sheets = pages.map((page) => `<div class="sheet ${sizeName(page.size)}">${pageSvg(page, `'${FONT_FAMILY}', sans-serif`)}</div>`);
	return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${escapeXml(title)}</title><style>${styles.join('\n')}</style></head><body>${sheets.join('\n')}</body></html>`;
}

/** Dots and dashes have no place in the name of a page. */
const sizeName = ({ widthMm, heightMm }: Page['size']): string => `s${Math.round(widthMm * 10)}x${Math.round(heightMm * 10)}`;

const FRAME_ID = 'print-frame';

/** Opens the print dialog; returns once the browser has been asked. Throws where it has none. */
export async function printPages(pages: readonly Page[], title: string, document: Document = window.document): Promise<void> {
	document.getElementById(FRAME_ID)?.remove();
	const frame = document.createElement('iframe');
	frame.id = FRAME_ID;
	frame.title = title;
	frame.setAttribute('aria-hidden', 'true');
	frame.tabIndex = -1;
	frame.style.cssText = 'position:fixed;width:0;height:0;border:0;visibility:hidden';
	const loaded = new Promise<void>((resolve) => frame.addEventListener('load', () => resolve(), { once: true }));
	frame.srcdoc = printDocument(pages, title, document.baseURI);
	document.body.append(frame);
	await loaded;
	const page = frame.contentWindow;
	if (!page) throw new Error('the browser gave no frame to print from');
	await page.document.fonts.ready;
	page.focus();
	page.print();
}
