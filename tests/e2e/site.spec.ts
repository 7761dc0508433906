/** What is done beside the system: a short tried out, readings compared, the order of assembly ticked off. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { openApp, settled } from './support/app.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

async function expectClean(page: Page): Promise<void> {
	const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
}

test('a short at the radio: which fuse opens and when, and what is dark then', async ({ page }) => {
	const { select, details } = await openApp(page);
	await expect(page.getByText('Checked', { exact: true })).toBeVisible();
	await select('stud:RAD.pos');
	await details.getByRole('button', { name: 'Drop a short here…' }).click();
	const dialog = page.getByRole('dialog');
	await expect(dialog.getByText(/opens (between|after) .*(ms|s)/).first()).toBeVisible();
	await expect(dialog.getByRole('img', { name: 'When each device opens' })).toBeVisible();
	await expect(dialog.getByText(/Bands are unverified/)).toBeVisible();
	await expect(dialog.getByText('Step 1 of 2')).toBeVisible();
	await expect(dialog.getByText('No load is dark.')).toHaveCount(0);
	await dialog.getByRole('button', { name: 'Next step' }).click();
	await expect(dialog.getByText('Step 2 of 2')).toBeVisible();
	await expect(dialog.getByText('The short is out.')).toBeVisible();
	await expect(dialog.getByRole('listitem').filter({ hasText: /^RAD$/ })).toBeVisible();
	await expectClean(page);
	const amps = async () => /([\d.]+ k?A) into/.exec((await dialog.textContent())!)?.[1];
	const dead = await amps();
	await dialog.getByLabel('Resistance of the short').selectOption({ label: '50 mΩ: a chafed wire' });
	await expect.poll(amps).not.toBe(dead);
	await dialog.getByRole('button', { name: 'Show on the drawing' }).click();
	await expect(dialog).toBeHidden();
});

test('X drops a short at what is selected; without anything it says what to do', async ({ page }) => {
	const { canvas, select } = await openApp(page);
	await expect(page.getByText('Checked', { exact: true })).toBeVisible();
	await canvas.focus();
	await page.keyboard.press('x');
	await expect(page.getByRole('dialog').getByText('Select a stud or a conductor of the positive side first.')).toBeVisible();
	await page.keyboard.press('Escape');
	await select('conductor:W3');
	await page.keyboard.press('x');
	await expect(page.getByRole('dialog').getByLabel('Where')).toBeVisible();
});

test('readings typed in are compared with the model, and a raised joint is named', async ({ page }) => {
	await openApp(page);
	await page.getByRole('button', { name: 'On site' }).click();
	const dialog = page.getByRole('dialog');
	await dialog.getByRole('tab', { name: 'Test readings' }).click();
	await expect(dialog.getByText('No reading in this case yet.')).toBeVisible();
	await dialog
		.getByLabel('Case')
		.selectOption({ label: 'Peak, no charging' })
		.catch(() => undefined);
	await dialog.getByRole('button', { name: 'Add every stud' }).click();
	const rows = dialog.locator('tbody tr');
	await expect(rows.first().locator('td').nth(2)).toHaveText(/V\s*$/);
	await expectClean(page);

	// As the model says, but the radio's own positive stud reads 0.2 V less: all of it between its fuse and itself.
	const shown = await rows.evaluateAll((all) =>
		all.map((row) => [...[...row.querySelectorAll('input')].slice(0, 2).map(({ value }) => value), row.children[2]!.textContent!])
	);
	const lines = shown.flatMap(([red, black, model]) => {
		const volts = Number(/-?[\d.]+/.exec(model!)?.[0]);
		return Number.isFinite(volts) ? [`${red}; ${black}; ${(red === 'RAD +' ? volts - 0.2 : volts).toFixed(3)}`] : [];
	});
	expect(lines.some((line) => line.startsWith('RAD +'))).toBe(true);
	await dialog.getByText('Paste several rows').click();
	await dialog.getByRole('textbox', { name: /A row each/ }).fill(lines.join('\n'));
	await dialog.getByRole('button', { name: 'Take these rows' }).click();
	const says = dialog.getByRole('region', { name: 'What the readings say' });
	await expect(says).toContainText(/RAD/);
	await expect(says).toContainText(/Conductor .* explains the difference/);
	await expect(says).toContainText(/mΩ more than drawn/);
	await says
		.getByRole('button', { name: /on the drawing/ })
		.first()
		.click();
	await expect(page.getByRole('region', { name: 'Details' })).toContainText('Conductor');
});

test('ticks of the assembly survive a reload, and can be taken back', async ({ page }) => {
	await openApp(page);
	const openList = () => page.getByRole('button', { name: 'On site' }).click();
	await openList();
	const dialog = page.getByRole('dialog');
	const boxes = dialog.getByRole('checkbox');
	await expect(dialog.getByText(/^0 of \d+ steps done$/)).toBeVisible();
	await boxes.nth(0).check();
	await boxes.nth(2).check();
	await expectClean(page);
	await page.reload();
	await settled(page);
	await openList();
	await expect(dialog.getByText(/^2 of \d+ steps done$/)).toBeVisible();
	await expect(boxes.nth(2)).toBeChecked();
	await dialog.getByRole('button', { name: 'Untick all' }).click();
	await page.getByRole('dialog', { name: 'Untick every step?' }).getByRole('button', { name: 'Untick all' }).click();
	await expect(dialog.getByText(/^0 of \d+ steps done$/)).toBeVisible();
	await dialog
		.getByRole('button', { name: /^Show step/ })
		.first()
		.click();
	await expect(dialog).toBeHidden();
	await expect(page.getByRole('region', { name: 'Details' })).not.toContainText('Nothing selected');
});
