import { PALETTES, svgElements } from '#core/graphics';
import type { Page } from './page.ts';

/** A sheet as an SVG element, for print. @param font CSS family, quoted where it needs to be */
export function pageSvg({ size, window, primitives }: Page, font: string): string {
	const palette = PALETTES.paper;
	const { widthMm, heightMm } = size;
	const inWindow = window
		? `<svg x="${window.box.minX}" y="${window.box.minY}" width="${window.box.maxX - window.box.minX}" height="${window.box.maxY - window.box.minY}" viewBox="${window.box.minX} ${window.box.minY} ${window.box.maxX - window.box.minX} ${window.box.maxY - window.box.minY}" overflow="hidden">${svgElements(window.primitives, palette)}</svg>`
		: '';
	return `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}" font-family="${font}">${inWindow}${svgElements(primitives, palette)}</svg>`;
}
