/** Pictures a user brings: painted anew as raster, whatever they are; what would run, fetch or never end is refused. */
import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { sizeOfPictureText } from '#core/diagram';
import type { Outcome, Picture } from '#files';
import { openApp } from './support/app.ts';
import { serveModule } from './support/bundle.ts';

/** Reads bytes as a picture, in the page. */
async function reader(page: Page): Promise<(bytes: Buffer | string) => Promise<Outcome<Picture>>> {
	const address = await serveModule(page, 'src/files/picture.ts');
	await openApp(page);
	return (bytes) =>
		page.evaluate(
			async ([module, base64]) => {
				const { readPicture } = (await import(module!)) as typeof import('../../src/files/picture.ts');
				return readPicture(new Blob([Uint8Array.from(atob(base64!), (letter) => letter.charCodeAt(0))]));
			},
			[address, Buffer.from(bytes).toString('base64')]
		);
}

/** What the browser itself writes in each type, of this size. */
const painted = (page: Page, type: string, width: number, height: number) =>
	page.evaluate(
		([kind, w, h]) => {
			const canvas = Object.assign(document.createElement('canvas'), { width: w, height: h });
			const context = canvas.getContext('2d')!;
			context.fillStyle = '#c60';
			context.fillRect(0, 0, Number(w) / 2, Number(h));
			return canvas.toDataURL(String(kind));
		},
		[type, width, height] as const
	);

const bytesOf = (data: string): Buffer => Buffer.from(data.split(',')[1]!, 'base64');

/** Colour of a point of a picture, as the browser shows it. */
const colourAt = (page: Page, data: string, xShare: number, yShare: number) =>
	page.evaluate(
		async ([url, x, y]) => {
			const image = new Image();
			image.src = String(url);
			await image.decode();
			const canvas = Object.assign(document.createElement('canvas'), { width: image.width, height: image.height });
			const context = canvas.getContext('2d')!;
			context.drawImage(image, 0, 0);
			return [...context.getImageData(Number(x) * image.width, Number(y) * image.height, 1, 1).data];
		},
		[data, xShare, yShare] as const
	);

function taken(outcome: Outcome<Picture>): Picture {
	if (outcome.status !== 'done') throw new Error(JSON.stringify(outcome));
	const { value } = outcome;
	// What a diagram may carry, by its own rule.
	expect(sizeOfPictureText(value.data)).toEqual({ type: value.type, widthPx: value.widthPx, heightPx: value.heightPx });
	return value;
}

test('PNG, JPEG and WebP are painted anew, smaller where they are large', async ({ page }) => {
	const read = await reader(page);
	for (const type of ['image/png', 'image/jpeg', 'image/webp']) {
		const small = taken(await read(bytesOf(await painted(page, type, 300, 200))));
		expect([small.widthPx, small.heightPx]).toEqual([300, 200]);
		const [red, green, blue] = await colourAt(page, small.data, 0.25, 0.5);
		expect(Math.abs(red! - 0xcc) + Math.abs(green! - 0x66) + blue!).toBeLessThan(30);
		const large = taken(await read(bytesOf(await painted(page, type, 5_200, 2_600))));
		expect([large.widthPx, large.heightPx]).toEqual([2_600, 1_300]);
	}
});

test('a drawing in SVG becomes a raster picture, and nothing of it runs or is fetched', async ({ page }) => {
	const asked: string[] = [];
	page.on('request', (request) => asked.push(request.url()));
	const read = await reader(page);
	const drawing = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100" onload="window.ran = 1">
		<style>.wall { fill: #204080 }</style><rect class="wall" width="100" height="100"/><a href="https://example.org/"><text y="50">A</text></a></svg>`;
	const picture = taken(await read(drawing));
	expect([picture.type, picture.widthPx, picture.heightPx]).toEqual(['image/png', 2_600, 1_300]);
	expect(await colourAt(page, picture.data, 0.4, 0.9)).toEqual([0x20, 0x40, 0x80, 255]);
	expect(await page.evaluate(() => window.ran)).toBeUndefined();
	expect(asked.filter((url) => url.includes('example.org'))).toEqual([]);
});

test('what cannot be a picture is refused with a sentence', async ({ page }) => {
	const read = await reader(page);
	const icon = readFileSync('static/icons/192.png');
	// The header of a picture that would unpack to 14 thousand million bytes.
	const bomb = Buffer.from(icon);
	bomb.writeUInt32BE(60_000, 16);
	bomb.writeUInt32BE(60_000, 20);
	for (const [bytes, why] of [
		[bomb, '3600 million pixels'],
		[icon.subarray(0, 60), 'may be damaged'],
		['<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"><script>window.ran = 2</script></svg>', 'script'],
		['<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"><b></svg>', 'may be damaged'],
		['<html><svg/></html>', 'no PNG, JPEG, WebP or SVG'],
		['', 'no PNG, JPEG, WebP or SVG']
	] as const) {
		const outcome = await read(bytes);
		if (outcome.status !== 'failed') throw new Error(`taken: ${why}`);
		const { what, why: reason, remedy } = outcome.problems[0];
		expect(`${what} ${reason} ${remedy}`).toContain(why);
	}
	expect(await page.evaluate(() => window.ran)).toBeUndefined();
});
