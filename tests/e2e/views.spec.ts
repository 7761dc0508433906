/** Finding what is on the drawing, and looking at it as symbols. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { openApp } from './support/app.ts';

test('one key finds a part, a conductor, a stud and a finding, and goes there', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	await app.canvas.focus();
	await page.keyboard.press('/');
	const dialog = page.getByRole('dialog', { name: 'Find' });
	const field = dialog.getByRole('combobox', { name: 'Find on the drawing' });
	await expect(field).toBeFocused();
	const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
	expect(violations.map(({ id }) => id)).toEqual([]);

	const options = dialog.getByRole('option');
	await field.fill('battery');
	await expect(options.first()).toContainText('Battery');
	const first = (await options.first().locator('strong').textContent())!;
	await page.keyboard.press('ArrowDown');
	await expect(options.nth(1)).toHaveAttribute('aria-selected', 'true');
	await page.keyboard.press('ArrowUp');
	await page.keyboard.press('Enter');
	await expect(dialog).toBeHidden();
	await expect(app.details.getByRole('heading', { name: first })).toBeVisible();
	await expect(app.canvas).toBeFocused();

	await page.keyboard.press('Control+f');
	await field.fill('zzz');
	await expect(dialog.getByText('Nothing on the drawing is called “zzz”')).toBeVisible();
	await field.fill('');
	await expect(dialog.getByText('Arrow keys choose, Enter goes there.')).toBeVisible();
	const finding = options.filter({ has: page.getByText('Finding', { exact: true }) });
	// Four words of what the first one says.
	const said = (await app.findings.getByRole('article').first().textContent())!;
	const words = /[A-Z0-9]\w*(?: [a-z]+){3}/.exec(said)![0];
	await field.fill(words);
	await expect(finding.first()).toBeVisible();
	await finding.first().click();
	await expect(dialog).toBeHidden();
	await expect(page.locator('article.focused').first()).toBeVisible();
});

test('symbols take the place of outlines by one key; nothing moves, and picking still works', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	await app.canvas.focus();
	const diagram = await page.evaluate(() => window.wireworthy!.diagramText());
	const [part] = Object.keys((JSON.parse(diagram) as { parts: object }).parts);
	const before = await app.at(`part:${part}`);
	const toggle = page.getByRole('button', { name: 'Symbols', exact: true });
	await page.keyboard.press('i');
	await expect(toggle).toHaveAttribute('aria-pressed', 'true');
	await expect(page.getByText('Symbols in place of outlines').first()).toBeAttached();
	expect(await app.at(`part:${part}`)).toEqual(before);
	await app.select(`part:${part}`);
	await expect(app.details.getByLabel('Designation')).toBeVisible();
	expect(await page.evaluate(() => window.wireworthy!.diagramText())).toBe(diagram);

	// On paper as on the sheet, or as chosen.
	await page.getByRole('button', { name: 'Hand over' }).click();
	const handOver = page.getByRole('dialog', { name: 'Hand over' });
	await expect(handOver.getByLabel('Parts drawn as')).toHaveValue('symbols');
	const svg = async () => {
		const [file] = await Promise.all([page.waitForEvent('download'), handOver.getByRole('button', { name: 'Save SVG' }).click()]);
		const stream = await file.createReadStream();
		let text = '';
		for await (const chunk of stream) text += String(chunk);
		return text;
	};
	const asSymbols = await svg();
	await handOver.getByLabel('Parts drawn as').selectOption('outlines');
	const asOutlines = await svg();
	expect(asSymbols).toContain('stroke-dasharray="7 2 1 2"');
	expect(asOutlines).not.toContain('stroke-dasharray="7 2 1 2"');
	await page.keyboard.press('Escape');
	await toggle.click();
	await expect(toggle).toHaveAttribute('aria-pressed', 'false');
});
