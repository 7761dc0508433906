/** Paints static/icon.svg as the pictures that a device shows for an installed program. Needs the browser of the tests. */
import { mkdirSync, readFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { CHROMIUM_FLAGS, findChromium } from '../e2e/chromium.mjs';

const svg = readFileSync('static/icon.svg', 'utf8');
mkdirSync('static/icons', { recursive: true });
const browser = await chromium.launch({ executablePath: findChromium() ?? undefined, args: CHROMIUM_FLAGS });
const page = await browser.newPage();
/** A device may cut a maskable picture to a circle of 80 %: the mark stays within, its ground reaches the edge. */
for (const [file, size, share, ground] of [
	['192', 192, 1, 'transparent'],
	['512', 512, 1, 'transparent'],
	['maskable-512', 512, 0.8, '#17616a']
]) {
	await page.setViewportSize({ width: size, height: size });
	const side = size * share;
	await page.setContent(
		`<style>body{margin:0;background:${ground};display:grid;place-items:center;height:100vh}svg{width:${side}px;height:${side}px}</style>${svg}`
	);
	await page.screenshot({ path: `static/icons/${file}.png`, omitBackground: true });
}
await browser.close();
