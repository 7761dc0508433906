/**
 * A drawing far larger than anybody builds: opened, edited, kept, saved and handed over without the page dying. About
 * 300 parts; 5,000 and the whole packet with LONG=1 (PARTS=n for another number). Times and memory are printed, and
 * judged by nobody: they are the machine's.
 */
import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { parseDiagram, serializeDiagram } from '#core/diagram';
import { largeDiagram } from '../support/large-diagram.ts';
import { openApp } from './support/app.ts';
import { diagramText, kept, title } from './support/kept.ts';

const LONG = process.env.LONG === '1';
const PARTS = Number(process.env.PARTS ?? (LONG ? 5_000 : 300));

/** To each part, in this sort of drawing. */
const CONDUCTORS = 1.82;

/** Of the page's scripts, after tidying up. Megabytes. */
async function heapMb(page: Page): Promise<number> {
	const session = await page.context().newCDPSession(page);
	await session.send('HeapProfiler.collectGarbage');
	const { usedSize } = await session.send('Runtime.getHeapUsage');
	await session.detach();
	return Math.round(usedSize / 1e6);
}

test(`about ${PARTS} parts: opened, edited, kept, saved and handed over`, async ({ page, context }, info) => {
	test.setTimeout(LONG ? 3_600_000 : 300_000);
	const figures: string[] = [];
	const step = async <Result>(name: string, work: () => Promise<Result>): Promise<Result> => {
		const startMs = Date.now();
		const result = await test.step(name, work);
		figures.push(`${name} ${((Date.now() - startMs) / 1000).toFixed(1)} s`);
		return result;
	};
	const patience = { timeout: LONG ? 600_000 : 120_000 };
	const diagram = largeDiagram(Math.round(PARTS * CONDUCTORS));
	const count = Object.keys(diagram.parts).length;
	expect(Math.abs(count / PARTS - 1)).toBeLessThan(0.05);

	const app = await openApp(page);
	await step('opened', async () => {
		const chooser = page.waitForEvent('filechooser');
		await page.getByRole('button', { name: 'Open', exact: true }).click();
		await (await chooser).setFiles({ name: 'large.json', mimeType: 'application/json', buffer: Buffer.from(serializeDiagram(diagram)) });
		await expect(page.getByText(new RegExp(`^${count.toLocaleString('en').replace(',', ',?')} parts`)).first()).toBeVisible(patience);
	});
	await step('checked', () => expect(app.findings.getByRole('article').first()).toBeVisible(patience));
	await step('edited', async () => {
		await title(page).fill('Large');
		await app.canvas.focus();
		await page.keyboard.press('Control+a');
		await page.keyboard.press('ArrowRight');
		await expect.poll(async () => parts(await diagramText(page))['S0B']?.at, patience).not.toEqual(diagram.parts['S0B']?.at);
		await page.keyboard.press('Escape');
		await page.keyboard.press('Control+z');
		await expect.poll(async () => parts(await diagramText(page)), patience).toEqual(diagram.parts);
	});
	await step('kept', () => expect(page.getByRole('button', { name: 'Kept', exact: true })).toBeVisible(patience));
	const saved = async (press: () => Promise<void>) => {
		const [download] = await Promise.all([page.waitForEvent('download', patience), press()]);
		return readFileSync(await download.path());
	};
	await step('saved', async () => {
		const text = (await saved(() => page.getByRole('button', { name: 'Save', exact: true }).click())).toString();
		const read = parseDiagram(text);
		expect(read.ok && read.diagram.parts).toEqual(diagram.parts);
	});
	await page.getByRole('button', { name: 'Hand over', exact: true }).click();
	const dialog = page.getByRole('dialog', { name: 'Hand over' });
	const press = (name: string) => () => dialog.getByRole('button', { name, exact: true }).click(patience);
	await step('SVG', async () => expect((await saved(press('Save SVG'))).toString()).toMatch(/^<[^]*<svg|^<svg/));
	await step('CSV', async () => expect((await saved(press('Save CSV'))).length).toBeGreaterThan(1_000));
	if (LONG) await step('packet', async () => expect((await saved(press('Save PDF'))).subarray(0, 5).toString()).toBe('%PDF-'));
	await dialog.getByRole('button', { name: 'Close' }).click();
	figures.push(`${await heapMb(page)} MB of scripts' memory`);
	await kept(page);
	await page.close();

	const later = await context.newPage();
	await step('open again', async () => {
		await later.goto('/');
		await expect(title(later)).toHaveValue('Large', patience);
		expect(parts(await diagramText(later))).toEqual(diagram.parts);
	});
	const line = `${count} parts, ${Object.keys(diagram.conductors).length} conductors: ${figures.join(', ')}`;
	console.log(line);
	info.annotations.push({ type: 'figures', description: line });
});

const parts = (text: string) => (JSON.parse(text) as { parts: Record<string, { at: unknown }> }).parts;
