/** A part somebody makes: drawn, placed, wired, judged by its own ratings, saved, exported, and taken in elsewhere. */
import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { openApp } from './support/app.ts';
import { kept } from './support/kept.ts';

const maker = (page: Page) => page.getByRole('dialog', { name: /Make a part|Change/ });
const shelf = (page: Page) => page.getByRole('region', { name: 'Your parts' });

async function enter(scope: Locator, label: string, value: string): Promise<void> {
	const field = scope.getByRole('textbox', { name: label, exact: true });
	await field.fill(value);
	await field.press('Enter');
}

test('a part is made, placed, wired and judged by its ratings; it is saved, exported and taken in elsewhere', async ({ page, browser }) => {
	const app = await openApp(page);
	await page.getByRole('button', { name: 'New', exact: true }).click();
	await shelf(page).getByRole('button', { name: 'Make a part' }).click();
	const dialog = maker(page);
	await expect(dialog.getByRole('img', { name: /Drawing of/ })).toBeVisible();

	// Without a name it cannot be kept, and the field says why.
	await expect(dialog.getByText('Give the part a name, by which it is found again.').first()).toBeVisible();
	await expect(dialog.getByRole('button', { name: 'Keep and place' })).toHaveAttribute('aria-disabled', 'true');
	await enter(dialog, 'Name', 'Windlass');
	await enter(dialog, 'Largest fuse allowed', '30');
	await dialog.getByText('Load 1', { exact: true }).click();
	await enter(dialog, 'Rated draw', '80');
	await expect(dialog.getByText('Nothing is wrong with it.')).toBeVisible();
	const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
	expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);

	// A stud off the part is said beside its field, and mended there.
	await dialog.getByText('Stud 2', { exact: true }).click();
	await enter(dialog, 'From the left edge', '500');
	await expect(dialog.getByText('It lies beyond the right edge: the part is 120 mm wide.').first()).toBeVisible();
	await enter(dialog, 'From the left edge', '90');
	await dialog.getByRole('button', { name: 'Keep and place' }).click();
	await expect(dialog).toBeHidden();

	const box = (await app.canvas.boundingBox())!;
	await page.mouse.click(box.width * 0.6, box.height * 0.5);
	await expect(app.details.getByRole('heading', { name: 'E1 Windlass' })).toBeVisible();
	await app.place('Battery', 0.15, 0.3);
	await app.connect('G1.pos', 'E1.s1', 1);
	await app.connect('E1.s2', 'G1.neg', 1);
	await expect(app.finding('W1').first()).toBeVisible();
	await expect(
		app.findings
			.getByRole('article')
			.filter({ hasText: /fuse|protect/i })
			.first()
	).toBeVisible();

	// Saved with the diagram, and in the shelf of this device.
	await kept(page);
	await page.reload();
	await expect(shelf(page).getByRole('button', { name: 'Windlass', exact: true })).toBeVisible();
	await expect.poll(() => page.evaluate(() => window.wireworthy?.diagramText() ?? '')).toContain('"Windlass"');

	const [download] = await Promise.all([
		page.waitForEvent('download'),
		shelf(page).getByRole('button', { name: 'Export', exact: true }).click()
	]);
	const file = await download.path();
	expect(JSON.parse(await readFile(file, 'utf8'))).toMatchObject({
		format: 'wireworthy-parts',
		parts: [{ name: 'Windlass', maxFuseA: 30 }]
	});

	// Another browser that knows nothing of it.
	const elsewhere = await browser.newContext();
	const other = await elsewhere.newPage();
	await openApp(other);
	await expect(shelf(other).getByRole('button', { name: 'Make a part' })).toBeVisible();
	await expect(shelf(other).getByRole('button', { name: 'Windlass', exact: true })).toHaveCount(0);
	const chooser = shelf(other).locator('input[type=file]');
	await chooser.setInputFiles({ name: 'spoilt.json', mimeType: 'application/json', buffer: Buffer.from('{"format": "wireworthy-parts"') });
	await expect(other.getByRole('dialog', { name: 'spoilt.json was not taken in' })).toContainText(/the file ends|cut short/);
	await other.getByRole('button', { name: 'Close' }).last().click();
	await chooser.setInputFiles(file);
	await expect(shelf(other).getByRole('button', { name: 'Windlass', exact: true })).toBeVisible();
	await elsewhere.close();
});

test('a part is made and placed by keyboard alone, and changed on the sheet', async ({ page }) => {
	await openApp(page);
	await page.getByRole('button', { name: 'New', exact: true }).click();
	const make = shelf(page).getByRole('button', { name: 'Make a part' });
	await make.focus();
	await page.keyboard.press('Enter');
	const dialog = maker(page);
	await dialog.getByRole('textbox', { name: 'Name', exact: true }).focus();
	await page.keyboard.type('Siren');
	// A slip of Escape costs nothing.
	await page.keyboard.press('Escape');
	await expect(dialog).toBeHidden();
	await make.focus();
	await page.keyboard.press('Enter');
	await expect(dialog.getByText('This is as you left it.')).toBeVisible();
	await expect(dialog.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Siren');
	const keep = dialog.getByRole('button', { name: 'Keep', exact: true });
	await keep.focus();
	await page.keyboard.press('Enter');
	await expect(dialog).toBeHidden();
	await shelf(page).getByRole('button', { name: 'Siren', exact: true }).focus();
	await page.keyboard.press('Enter');
	const details = page.getByRole('region', { name: 'Details' });
	await expect(details.getByRole('heading', { name: 'E1 Siren' })).toBeVisible();

	await details.getByRole('button', { name: 'Change how it is made…' }).click();
	await maker(page).getByRole('textbox', { name: 'Name', exact: true }).fill('Horn');
	await maker(page).getByRole('button', { name: 'Change it' }).click();
	await expect(details.getByRole('heading', { name: 'E1 Horn' })).toBeVisible();
	await expect(shelf(page).getByRole('button', { name: 'Horn', exact: true })).toBeVisible();
	await page.getByRole('button', { name: 'Undo' }).click();
	await expect(details.getByRole('heading', { name: 'E1 Siren' })).toBeVisible();
});
