/**
 * Pictures that stand in a diagram: raster data of limited size, as data URLs. Their size is read from their own header
 * before anything unpacks them: a small file can unpack to more than the memory holds.
 */
import * as z from 'zod';

export type PictureType = 'image/png' | 'image/jpeg' | 'image/webp';

export interface PictureSize {
	readonly type: PictureType;
	readonly widthPx: number;
	readonly heightPx: number;
}

/** Characters of a picture kept in a diagram. Ours, so that a diagram stays one that can be mailed. */
export const PICTURE_TEXT_LIMIT = 2_000_000;
/** Pixels of one, so that it can be unpacked on a telephone: 4 bytes each. */
export const PICTURE_PIXEL_LIMIT = 8_000_000;

const ascii = (bytes: Uint8Array, at: number, length: number): string => String.fromCharCode(...bytes.subarray(at, at + length));
const big16 = (bytes: Uint8Array, at: number): number => (bytes[at] ?? 0) * 256 + (bytes[at + 1] ?? 0);
const big32 = (bytes: Uint8Array, at: number): number => big16(bytes, at) * 65_536 + big16(bytes, at + 2);
const little = (bytes: Uint8Array, at: number, count: number): number =>
	count === 0 ? 0 : (bytes[at] ?? 0) + 256 * little(bytes, at + 1, count - 1);

/** From the header alone; null when it is none of these types, or cut short. */
export function pictureSize(bytes: Uint8Array): PictureSize | null {
	const found = png(bytes) ?? webp(bytes) ?? jpeg(bytes);
	return found && found.widthPx > 0 && found.heightPx > 0 ? found : null;
}

/** PNG specification (ISO/IEC 15948), 5.2 and 11.2.2: signature, then IHDR with width and height. */
function png(bytes: Uint8Array): PictureSize | null {
	if (ascii(bytes, 0, 8) !== '\x89PNG\r\n\x1a\n' || ascii(bytes, 12, 4) !== 'IHDR') return null;
	return { type: 'image/png', widthPx: big32(bytes, 16), heightPx: big32(bytes, 20) };
}

/** RFC 9649: a RIFF container; lossy, lossless or extended form. */
function webp(bytes: Uint8Array): PictureSize | null {
	if (ascii(bytes, 0, 4) !== 'RIFF' || ascii(bytes, 8, 4) !== 'WEBP') return null;
	const type = 'image/webp';
	const form = ascii(bytes, 12, 4);
	if (form === 'VP8X') return { type, widthPx: 1 + little(bytes, 24, 3), heightPx: 1 + little(bytes, 27, 3) };
	if (form === 'VP8 ') return { type, widthPx: little(bytes, 26, 2) % 16_384, heightPx: little(bytes, 28, 2) % 16_384 };
	if (form !== 'VP8L') return null;
	const packed = little(bytes, 21, 4);
	return { type, widthPx: 1 + (packed % 16_384), heightPx: 1 + (Math.floor(packed / 16_384) % 16_384) };
}

/** ITU-T T.81, annex B: segments, one after the other, until one that begins a frame (SOF0–15, without DHT, JPG, DAC). */
function jpeg(bytes: Uint8Array): PictureSize | null {
	if (big16(bytes, 0) !== 0xff_d8) return null;
	for (let at = 2; at + 9 <= bytes.length;) {
		if (bytes[at] !== 0xff) return null;
		const marker = bytes[at + 1]!;
		// Filling bytes may stand before a marker.
		if (marker === 0xff) {
			at += 1;
			continue;
		}
		if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker))
			return { type: 'image/jpeg', heightPx: big16(bytes, at + 5), widthPx: big16(bytes, at + 7) };
		at += 2 + Math.max(2, big16(bytes, at + 2));
	}
	return null;
}

const DATA_URL = /^data:(image\/(?:png|jpeg|webp));base64,([A-Za-z0-9+/]+={0,2})$/;
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

function fromBase64(text: string): Uint8Array {
	const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
	let [length, held, bits] = [0, 0, 0];
	for (const letter of text) {
		if (letter === '=') break;
		held = ((held << 6) | LETTERS.indexOf(letter)) & 0xff_ff;
		bits += 6;
		if (bits < 8) continue;
		bits -= 8;
		bytes[length++] = (held >> bits) & 0xff;
	}
	return bytes.subarray(0, length);
}

/** Size of a picture in a diagram; null when it is no picture that may stand there. */
export function sizeOfPictureText(text: string): PictureSize | null {
	if (text.length > PICTURE_TEXT_LIMIT) return null;
	const match = DATA_URL.exec(text);
	if (!match) return null;
	const found = pictureSize(fromBase64(match[2]!));
	return found && found.type === match[1] && found.widthPx * found.heightPx <= PICTURE_PIXEL_LIMIT ? found : null;
}

/** A picture as a field of a diagram. */
export const PictureText = z
	.string()
	.max(PICTURE_TEXT_LIMIT)
	.refine((text) => sizeOfPictureText(text) !== null, 'This is no PNG, JPEG or WebP picture of a size that can be shown.');
