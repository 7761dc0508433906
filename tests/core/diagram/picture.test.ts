import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { PICTURE_TEXT_LIMIT, pictureSize, PictureText, sizeOfPictureText } from '#core/diagram';

const bytes = (...parts: (string | number[])[]) =>
	Uint8Array.from(parts.flatMap((part) => (typeof part === 'string' ? [...part].map((c) => c.charCodeAt(0)) : part)));
const url = (type: string, data: Uint8Array) => `data:${type};base64,${Buffer.from(data).toString('base64')}`;

const png = (width: number[], height: number[]) =>
	bytes([0x89], 'PNG\r\n', [0x1a, 0x0a, 0, 0, 0, 13], 'IHDR', width, height, [8, 6, 0, 0, 0]);

describe('the size of a picture, from its header', () => {
	test('PNG: IHDR, ISO/IEC 15948 11.2.2; and a file another program wrote', () => {
		expect(pictureSize(png([0, 0, 2, 0], [0, 0, 0, 7]))).toEqual({ type: 'image/png', widthPx: 512, heightPx: 7 });
		expect(pictureSize(readFileSync('static/icons/192.png'))).toEqual({ type: 'image/png', widthPx: 192, heightPx: 192 });
	});

	test('JPEG: the first frame header, ITU-T T.81 B.2.2, past other segments and filling bytes', () => {
		const app = [0xff, 0xe0, 0, 4, 1, 2];
		const tables = [0xff, 0xc4, 0, 3, 9];
		const frame = [0xff, 0xff, 0xc2, 0, 11, 8, 0x01, 0x02, 0x03, 0x04, 1];
		expect(pictureSize(bytes([0xff, 0xd8], app, tables, frame))).toEqual({ type: 'image/jpeg', heightPx: 258, widthPx: 772 });
	});

	test('WebP: lossy, lossless and extended, RFC 9649 2.5 to 2.7', () => {
		const head = (form: string) => bytes('RIFF', [0, 0, 0, 0], 'WEBP', form, [0, 0, 0, 0]);
		const lossy = bytes([...head('VP8 ')], [0, 0, 0, 0x9d, 0x01, 0x2a], [0x40, 0x01], [0xf0, 0x40]);
		expect(pictureSize(lossy)).toEqual({ type: 'image/webp', widthPx: 320, heightPx: 240 });
		// 14 bits of width less one, then 14 of height less one.
		const packed = 319 + 239 * 16_384;
		const lossless = bytes([...head('VP8L')], [0x2f, packed & 255, (packed >> 8) & 255, (packed >> 16) & 255, packed >>> 24]);
		expect(pictureSize(lossless)).toEqual({ type: 'image/webp', widthPx: 320, heightPx: 240 });
		const extended = bytes([...head('VP8X')], [0, 0, 0, 0], [0x3f, 1, 0], [0xef, 0, 0]);
		expect(pictureSize(extended)).toEqual({ type: 'image/webp', widthPx: 320, heightPx: 240 });
	});

	test('nothing else, nothing cut short, nothing without extent', () => {
		expect(pictureSize(bytes('<svg>'))).toBeNull();
		expect(pictureSize(bytes('GIF89a', [1, 0, 1, 0]))).toBeNull();
		expect(pictureSize(bytes([0xff, 0xd8, 0xff, 0xe0, 0, 4]))).toBeNull();
		expect(pictureSize(png([0, 0, 0, 0], [0, 0, 0, 7]))).toBeNull();
		expect(pictureSize(new Uint8Array())).toBeNull();
	});
});

describe('a picture in a diagram', () => {
	const icon = readFileSync('static/icons/192.png');

	test('is a raster picture in base64 whose type is what it says', () => {
		expect(sizeOfPictureText(url('image/png', icon))).toMatchObject({ widthPx: 192 });
		expect(PictureText.safeParse(url('image/png', icon)).success).toBe(true);
	});

	test.each([
		['is of another type than it says', url('image/jpeg', icon)],
		['would unpack to 3.6 thousand million pixels', url('image/png', png([0, 0, 0xea, 0x60], [0, 0, 0xea, 0x60]))],
		['is a drawing with script', url('image/svg+xml', bytes('<svg onload="x()"/>'))],
		['lies elsewhere', 'https://example.org/x.png'],
		['is a page', 'data:text/html;base64,PGI+'],
		['carries something behind it', `${url('image/png', icon)}" onerror="x()`],
		['is longer than a diagram may carry', `data:image/png;base64,${'A'.repeat(PICTURE_TEXT_LIMIT)}`]
	])('is refused when it %s', (_, text) => {
		expect(PictureText.safeParse(text).success).toBe(false);
	});
});
