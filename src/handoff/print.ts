/** The same sheets by the browser's own print dialog, from a frame of their own: no window that could be blocked. */
import { FONT_FAMILY, FONT_FILES } from './fonts.ts';
import type { Page } from './page.ts';
import { pageSvg } from './page-svg.ts';

/** Sizes of paper and the typeface. As a sheet of rules, since the page's policy lets no style in that is written in markup. */
export function printRules(pages: readonly Page[], base: string): string {
	const sizes = new Map(pages.map(({ size }) => [sizeName(size), size]));
	const face = (file: string, weight: string): string =>
		`@font-face { font-family: '${FONT_FAMILY}'; font-weight: ${weight}; src: url('${new URL(file, base).href}') format('truetype'); }`;
	return [
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
	].join('\n');
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
	document.body.append(frame);
	await loaded;
	const page = frame.contentWindow as (Window & typeof globalThis) | null;
	if (!page) throw new Error('the browser gave no frame to print from');
	fill(page, pages, title, document.baseURI);
	await Promise.all(['', 'bold '].map((weight) => page.document.fonts.load(`${weight}10px '${FONT_FAMILY}'`)));
	page.focus();
	page.print();
}

/** One block for each sheet, each on paper of its own size. */
function fill(page: Window & typeof globalThis, pages: readonly Page[], title: string, base: string): void {
	const { document } = page;
	document.documentElement.lang = 'en';
	document.title = title;
	const rules = new page.CSSStyleSheet();
	rules.replaceSync(printRules(pages, base));
	document.adoptedStyleSheets = [rules];
	const parser = new DOMParser();
	for (const sheet of pages) {
		const block = document.createElement('div');
		block.className = `sheet ${sizeName(sheet.size)}`;
		const drawn = parser.parseFromString(ownMarkup(pageSvg(sheet, `'${FONT_FAMILY}', sans-serif`)), 'image/svg+xml');
		block.append(document.importNode(drawn.documentElement, true));
		document.body.append(block);
	}
}

interface MarkupPolicy {
	createHTML(markup: string): string;
}

let policy: MarkupPolicy | undefined;

/** Sheets are written by our own writer, which escapes every text: this policy is for nothing else. */
function ownMarkup(markup: string): string {
	const { trustedTypes } = window as { trustedTypes?: { createPolicy(name: string, rules: MarkupPolicy): MarkupPolicy } };
	policy ??= trustedTypes?.createPolicy('wireworthy-sheets', { createHTML: (text) => text });
	return policy?.createHTML(markup) ?? markup;
}
