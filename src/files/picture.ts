/**
 * Pictures from the user's device: whatever comes, what goes on is a raster picture of limited size that this program
 * painted itself. Drawings in SVG are painted as images, never put into the page; what else a file held (places where a
 * photograph was taken, say) is gone.
 */
import { PICTURE_PIXEL_LIMIT, PICTURE_TEXT_LIMIT, pictureSize, type PictureType } from '#core/diagram';
import { done, failed, messageOf, type Outcome } from './outcome.ts';
import { isSvg, readSvg } from './svg-gate.ts';

export interface Picture {
	/** A data URL, at most PICTURE_TEXT_LIMIT characters. */
	readonly data: string;
	readonly type: PictureType;
	readonly widthPx: number;
	readonly heightPx: number;
}

/** Bytes of a file. */
const FILE_LIMIT = 30_000_000;
/** Pixels of a file: the largest cameras. Unpacked they take four bytes each. */
const FILE_PIXEL_LIMIT = 60_000_000;
/** Longer side of what is made. */
const LONGEST_PX = 2_600;

/** What file choosers offer. */
export const PICTURE_TYPES = 'image/png,image/jpeg,image/webp,image/svg+xml';

const refused = (why: string, remedy: string): Outcome<never> => failed('The picture was not taken.', why, remedy);
const SMALLER = 'Make it smaller in a picture editor and choose it again.';

/** Reads PNG, JPEG, WebP or SVG; what it is, its first bytes say, not its name. Never throws. */
export async function readPicture(file: Blob): Promise<Outcome<Picture>> {
	if (file.size > FILE_LIMIT)
		return refused(`The file has ${Math.round(file.size / 1e6)} MB; at most ${FILE_LIMIT / 1e6} MB are read.`, SMALLER);
	try {
		const bytes = new Uint8Array(await file.arrayBuffer());
		const size = pictureSize(bytes);
		if (size) {
			const pixels = size.widthPx * size.heightPx;
			if (pixels > FILE_PIXEL_LIMIT)
				return refused(`It has ${Math.round(pixels / 1e6)} million pixels; at most ${FILE_PIXEL_LIMIT / 1e6} million are read.`, SMALLER);
			const bitmap = await createImageBitmap(new Blob([bytes], { type: size.type }));
			try {
				return await paint(bitmap, bitmap.width, bitmap.height, size.type !== 'image/jpeg');
			} finally {
				bitmap.close();
			}
		}
		const text = new TextDecoder().decode(bytes);
		if (!isSvg(text)) return refused('It is no PNG, JPEG, WebP or SVG file.', 'Save it as one of these and choose it again.');
		const svg = readSvg(text);
		if (!svg.ok) return refused(svg.why, 'Save the drawing as PNG and choose that.');
		return await paintSvg(text, svg.size.width / svg.size.height);
	} catch (error) {
		return refused(`The browser says: ${messageOf(error)}.`, 'It may be damaged. Save it again, as PNG, and choose it again.');
	}
}

async function paintSvg(text: string, ratio: number): Promise<Outcome<Picture>> {
	const [width, height] = ratio >= 1 ? [LONGEST_PX, LONGEST_PX / ratio] : [LONGEST_PX * ratio, LONGEST_PX];
	const image = new Image(Math.max(1, Math.round(width)), Math.max(1, Math.round(height)));
	// As data, not as an object of the page's: some browsers take what was painted from those for somebody else's.
	image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`;
	await image.decode();
	return paint(image, image.width, image.height, true);
}

/** Tries sharper ways first. `lines`: drawings keep their edges as PNG, photographs do not. */
async function paint(image: CanvasImageSource, width: number, height: number, lines: boolean): Promise<Outcome<Picture>> {
	let scale = Math.min(1, LONGEST_PX / Math.max(width, height), Math.sqrt(PICTURE_PIXEL_LIMIT / (width * height)));
	for (let round = 0; round < 6; round += 1, scale *= 0.7) {
		const [widthPx, heightPx] = [Math.max(1, Math.floor(width * scale)), Math.max(1, Math.floor(height * scale))];
		const canvas = document.createElement('canvas');
		[canvas.width, canvas.height] = [widthPx, heightPx];
		const context = canvas.getContext('2d');
		if (!context) break;
		context.imageSmoothingQuality = 'high';
		context.drawImage(image, 0, 0, widthPx, heightPx);
		for (const [type, quality] of [...(lines ? [['image/png', 1]] : []), ['image/webp', 0.85], ['image/webp', 0.6]] as [
			PictureType,
			number
		][]) {
			const data = canvas.toDataURL(type, quality);
			// A browser that cannot write a type writes PNG instead.
			const written = /^data:([^;]*);/.exec(data)?.[1] as PictureType | undefined;
			if (written && data.length <= PICTURE_TEXT_LIMIT) return done({ data, type: written, widthPx, heightPx });
		}
		// Photographs, where WebP cannot be written.
		if (lines) continue;
		const data = canvas.toDataURL('image/jpeg', 0.8);
		if (data.length <= PICTURE_TEXT_LIMIT) return done({ data, type: 'image/jpeg', widthPx, heightPx });
	}
	return refused('It could not be made small enough.', SMALLER);
}
