/** What leaves the program: files are saved as a person would save them and looked at with other programs. */
import { expect, test, type Download, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { pdfPages, pdfText } from '../support/pdf.ts';
import { openApp } from './support/app.ts';

async function openDialog(page: Page) {
	await openApp(page);
	// The first example is what a newcomer sees.
	await expect(page.getByRole('region', { name: 'Findings' }).getByRole('article').first()).toBeVisible();
	await page.getByRole('button', { name: 'Hand over', exact: true }).click();
	const dialog = page.getByRole('dialog', { name: 'Hand over' });
	await expect(dialog.getByRole('button', { name: 'Save PDF' })).not.toHaveAttribute('aria-disabled', 'true');
	return dialog;
}

async function saved(page: Page, press: () => Promise<void>): Promise<{ readonly download: Download; readonly bytes: Buffer }> {
	const [download] = await Promise.all([page.waitForEvent('download'), press()]);
	return { download, bytes: readFileSync(await download.path()) };
}

test('the packet is a PDF with selectable text, named after the diagram', async ({ page }) => {
	const requests: string[] = [];
	page.on('request', (request) => requests.push(new URL(request.url()).host));
	const dialog = await openDialog(page);
	const { download, bytes } = await saved(page, () => dialog.getByRole('button', { name: 'Save PDF' }).click());
	expect(download.suggestedFilename()).toBe('Ridge Post 3 packet.pdf');
	expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
	const text = pdfText(bytes);
	for (const title of [
		'Fuse schedule',
		'Stud schedule',
		'Conductor schedule',
		'Cut list',
		'Bill of materials',
		'Assembly order',
		'Readings under load'
	])
		expect(text).toContain(title);
	for (const sign of ['Ω', '→', '−', '·']) expect(text).toContain(sign);
	expect(text).not.toMatch(/undefined|NaN/);
	await expect(dialog.getByText(`Saved Ridge Post 3 packet.pdf, ${pdfPages(bytes)} sheets.`)).toBeVisible();
	expect(new Set(requests)).toEqual(new Set([new URL(page.url()).host]));
});

test('sections left out are not in it, and with none there is nothing to save', async ({ page }) => {
	const dialog = await openDialog(page);
	await dialog.getByRole('button', { name: 'None' }).click();
	await expect(dialog.getByRole('button', { name: 'Save PDF' })).toHaveAttribute('aria-disabled', 'true');
	await expect(dialog.getByRole('alert')).toHaveText('Choose at least one section.');
	await dialog.getByRole('checkbox', { name: 'Fuse schedule' }).check();
	const { bytes } = await saved(page, () => dialog.getByRole('button', { name: 'Save PDF' }).click());
	const text = pdfText(bytes);
	expect(text).toContain('Fuse schedule');
	expect(text).not.toContain('Stud schedule');
	expect(pdfPages(bytes)).toBe(1);
});

test('tables come as CSV, one or all', async ({ page }) => {
	const dialog = await openDialog(page);
	const all = await saved(page, () => dialog.getByRole('button', { name: 'Save CSV' }).click());
	expect(all.download.suggestedFilename()).toBe('Ridge Post 3 tables.csv');
	expect([...all.bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
	await dialog.getByLabel('Table', { exact: true }).selectOption('Conductor schedule');
	const one = await saved(page, () => dialog.getByRole('button', { name: 'Save CSV' }).click());
	expect(one.download.suggestedFilename()).toBe('Ridge Post 3 Conductor schedule.csv');
	const lines = one.bytes.toString('utf8').split('\r\n');
	expect(lines[0]).toBe(
		'\uFEFFConductor,From,To,Pole,Colour,Size,Insulation (°C),Length (m),Conditions,Amperage (A),Continuous (A),Surge (A),Protected by,Let-through (A),Lost (V),Lost (%)'
	);
	expect(lines.some((line) => line.startsWith('W3,'))).toBe(true);
});

test('SVG and PNG show the drawing', async ({ page }) => {
	const dialog = await openDialog(page);
	const svg = await saved(page, () => dialog.getByRole('button', { name: 'Save SVG' }).click());
	expect(svg.download.suggestedFilename()).toBe('Ridge Post 3 drawing.svg');
	const text = svg.bytes.toString('utf8');
	expect(text).toMatch(/^<svg /);
	expect(text).toContain('>B1</text>');
	await dialog.getByLabel('Size of the PNG').selectOption({ index: 0 });
	const png = await saved(page, () => dialog.getByRole('button', { name: 'Save PNG' }).click());
	expect(png.bytes.subarray(1, 4).toString()).toBe('PNG');
	const [width, height] = [png.bytes.readUInt32BE(16), png.bytes.readUInt32BE(20)];
	const box = /viewBox="\S+ \S+ (\S+) (\S+)"/.exec(text)!;
	expect(Math.abs(width - Number(box[1]))).toBeLessThanOrEqual(1);
	expect(Math.abs(height - Number(box[2]))).toBeLessThanOrEqual(1);
});

test('print gives the browser one block for each sheet', async ({ page }) => {
	await page.addInitScript(() => {
		window.print = () => {
			(window.top as unknown as { printed: number }).printed = document.querySelectorAll('.sheet > svg').length;
		};
	});
	const dialog = await openDialog(page);
	await dialog.getByRole('button', { name: 'None' }).click();
	await dialog.getByRole('checkbox', { name: 'Cover' }).check();
	await dialog.getByRole('checkbox', { name: 'Wiring diagram' }).check();
	await dialog.getByRole('button', { name: 'Print…' }).click();
	await expect(dialog.getByText('The browser was asked to print.')).toBeVisible();
	// Cover, drawing, list of places.
	expect(await page.evaluate(() => (window as unknown as { printed: number }).printed)).toBe(3);
});

test('an empty diagram says what to do first, and Ctrl P opens the same window', async ({ page }) => {
	await openApp(page);
	await page.getByRole('button', { name: 'New', exact: true }).click();
	await page.keyboard.press('Control+p');
	const dialog = page.getByRole('dialog', { name: 'Hand over' });
	await expect(dialog).toContainText('There is nothing to hand over yet.');
	await expect(dialog).toContainText('Put a battery on the sheet');
	await page.keyboard.press('Escape');
	await expect(dialog).toBeHidden();
});
