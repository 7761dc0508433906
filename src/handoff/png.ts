/** A picture of the drawing in dots. */
import type { Scene } from '#core/drawing';
import { boxHeight, boxWidth } from '#core/geometry';
import { drawingSvg, pictureBox } from './drawing-svg.ts';

/** Dots for one millimetre of the drawing at scale 1. */
const PX_PER_MM = 1;
export const PNG_SCALES = [1, 2, 3, 4] as const;
export type PngScale = (typeof PNG_SCALES)[number];

/** What browsers draw on: at most this many dots along a side and in all. */
const LONGEST_PX = 16_384;
const MOST_PX = 120e6;

export interface PictureSize {
	readonly widthPx: number;
	readonly heightPx: number;
	/** Why it cannot be made; null where it can. */
	readonly tooLarge: string | null;
}

/** Null where there is nothing on the drawing. */
export function pictureSize(scene: Scene, scale: PngScale): PictureSize | null {
	const box = pictureBox(scene);
	if (!box) return null;
	const widthPx = Math.ceil(boxWidth(box) * PX_PER_MM * scale);
	const heightPx = Math.ceil(boxHeight(box) * PX_PER_MM * scale);
	const isTooLarge = Math.max(widthPx, heightPx) > LONGEST_PX || widthPx * heightPx > MOST_PX;
	return {
		widthPx,
		heightPx,
		tooLarge: isTooLarge
			? `${widthPx} × ${heightPx} dots are more than browsers can draw (${LONGEST_PX} along a side, ${MOST_PX / 1e6} million in all).`
			: null
	};
}

/** Throws, with a reason, where the browser has not enough memory for it. */
export async function drawingPng(scene: Scene, title: string, scale: PngScale, document: Document = window.document): Promise<Blob | null> {
	const size = pictureSize(scene, scale);
	const svg = drawingSvg(scene, title);
	if (!size || svg === null) return null;
	if (size.tooLarge !== null) throw new Error(size.tooLarge);
	const { widthPx, heightPx } = size;
	const url = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
	try {
		const image = new Image();
		image.width = widthPx;
		image.height = heightPx;
		image.src = url;
		await image.decode();
		const canvas = document.createElement('canvas');
		canvas.width = widthPx;
		canvas.height = heightPx;
		const context = canvas.getContext('2d');
		if (!context) throw new Error('The browser gives no room to draw in.');
		context.drawImage(image, 0, 0, widthPx, heightPx);
		const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
		// What browsers answer when the picture does not fit into memory.
		if (!blob) throw new Error(`The browser has not enough memory for ${widthPx} × ${heightPx} dots.`);
		return blob;
	} finally {
		URL.revokeObjectURL(url);
	}
}
