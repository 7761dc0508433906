/**
 * Frames of the canvas at 200, 1000 and 5000 parts, against plain 2D drawing of the same scene in the same run:
 * "everything" paints all of it from nothing, "visible" is our own painter without Konva, the floor.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { build, preview } from 'vite';
import { CHROMIUM_FLAGS, findChromium } from '../e2e/chromium.mjs';
import type { Row } from './canvas/page.ts';

const sizes = (process.env['PARTS'] ?? '200,1000,5000').split(',').map(Number);
const root = fileURLToPath(new URL('./canvas', import.meta.url));
const outDir = mkdtempSync(join(tmpdir(), 'canvas-bench-'));
await build({ configFile: false, root, logLevel: 'error', build: { outDir, emptyOutDir: true } });
const server = await preview({ configFile: false, root, logLevel: 'error', build: { outDir }, preview: { port: 0 } });
const address = server.resolvedUrls!.local[0]!;

const browser = await chromium.launch({
	executablePath: findChromium() ?? undefined,
	args: [...CHROMIUM_FLAGS, '--disable-frame-rate-limit', '--disable-gpu-vsync']
});
try {
	for (const parts of sizes) {
		const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' });
		page.on('pageerror', (error) => console.error(error));
		await page.goto(address);
		await page.waitForFunction(() => 'bench' in window);
		print((await page.evaluate((count) => window.bench(count), parts)) as Row);
		await page.close();
	}
} finally {
	await browser.close();
	await server.close();
	rmSync(outDir, { recursive: true, force: true });
}

function print({ parts, conductors, showMs, frames }: Row): void {
	console.log(`\n${parts} parts, ${conductors} conductors: first picture after ${showMs.toFixed(0)} ms`);
	const ms = (name: string): number => frames[name]!;
	const rows: [done: string, everything: string, visible: string][] = [
		['pan close', 'everything, plain', 'visible, plain'],
		['drag close', 'everything, plain', 'visible, plain'],
		['pan at fit', 'everything at fit, plain', 'visible at fit, plain'],
		['zoom sweep', 'everything at fit, plain', 'visible at fit, plain']
	];
	for (const [done, everything, visible] of rows) {
		const ratio = (of: string): string => (ms(done) / ms(of)).toFixed(2);
		console.log(
			`  ${done.padEnd(11)} ${ms(done).toFixed(1).padStart(6)} ms a frame   ${ratio(everything)} × drawing everything (${ms(everything).toFixed(1)} ms)   ${ratio(visible)} × painting the visible without Konva (${ms(visible).toFixed(1)} ms)`
		);
	}
}
