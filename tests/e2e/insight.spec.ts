/** Figures traced to their source, cases edited as a table, and the day's energy: all by keyboard where a hand would. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { openApp } from './support/app.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

async function expectClean(page: Page): Promise<void> {
	const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
}

/** Between link post and disconnect of the diagram that opens first. */
const CONDUCTOR = 'conductor:W3';

async function selectInOutline(page: Page, name: RegExp): Promise<void> {
	await page.getByRole('tab', { name: 'Outline' }).click();
	await page.getByRole('treeitem').filter({ hasText: name }).first().click();
}

test('a figure opens by keyboard to its formula, and what it is made of opens down to the source', async ({ page }) => {
	const { details } = await openApp(page);
	await expect(page.getByText('Checked', { exact: true })).toBeVisible();
	await selectInOutline(page, /^\s*FAN\b/);
	const volts = details.locator('details[data-figure=load]').first();
	await volts.locator('summary').first().focus();
	await page.keyboard.press('Enter');
	await expect(volts).toContainText('I = Ir × k');
	await expect(volts).toContainText('The load on the drawing');

	const total = details.locator('details[data-figure=ladder]').first();
	await total.locator('summary').first().focus();
	await page.keyboard.press('Enter');
	const rung = total.locator('details[data-figure=rung]').first();
	await expect(rung).toBeVisible();
	await rung.locator('summary').first().focus();
	await page.keyboard.press('Enter');
	await expect(rung).toContainText('U = I × R');
	await expectClean(page);
});

test('a level typed in the table of cases changes which case is the worst', async ({ page }) => {
	const { details, canvas, select } = await openApp(page);
	await expect(page.getByText('Checked', { exact: true })).toBeVisible();
	await select(CONDUCTOR);
	const figures = details.locator('dl').first();
	const worst = async () => /Worst continuous current.*?in “([^”]+)”/s.exec((await figures.textContent())!)?.[1];
	await expect.poll(worst).toBeDefined();
	const before = (await worst())!;
	await canvas.focus();
	await page.keyboard.press('Escape');

	await details.getByRole('button', { name: 'Cases as a table' }).click();
	const dialog = page.getByRole('dialog');
	await expect(dialog.locator('details[data-figure=case]').first()).toBeVisible();
	await expectClean(page);
	const level = (of: string) => dialog.getByRole('textbox', { name: `${of} in “${before}”`, exact: true });
	await level('All loads').focus();
	await page.keyboard.type('0');
	// Down takes what was typed and goes on; up comes back.
	await page.keyboard.press('ArrowDown');
	await expect(level('All loads')).toHaveValue('0');
	await page.keyboard.press('ArrowUp');
	await expect(level('All loads')).toBeFocused();
	await level('All sources').fill('0');
	await page.keyboard.press('Enter');
	await page.keyboard.press('Escape');
	await select(CONDUCTOR);
	await expect.poll(worst).not.toBe(before);
});

test('cases are suggested, copied and removed', async ({ page }) => {
	const { details } = await openApp(page);
	await details.getByRole('button', { name: 'Cases as a table' }).click();
	const dialog = page.getByRole('dialog');
	const heads = dialog.getByRole('textbox', { name: /^Name of/ });
	const before = await heads.count();
	await dialog.getByRole('button', { name: 'Add “Batteries nearly empty”' }).click();
	await expect(heads).toHaveCount(before + 1);
	await expect(dialog.getByRole('combobox', { name: 'Batteries in “Batteries nearly empty”' })).toHaveValue('low');
	await dialog.getByRole('button', { name: 'Copy “Batteries nearly empty”' }).click();
	await expect(heads).toHaveCount(before + 2);
	await dialog.getByRole('button', { name: 'Remove “Batteries nearly empty, copy”' }).click();
	await expect(heads).toHaveCount(before + 1);
	await page.keyboard.press('Control+z');
	await expect(heads).toHaveCount(before + 2);
});

test('hours of use make a day, and more than the bank holds becomes a finding that leads back', async ({ page }) => {
	const app = await openApp(page);
	await app.details.getByRole('button', { name: 'A day of energy' }).click();
	const dialog = page.getByRole('dialog');
	await expect(dialog.getByText('Give each load the hours')).toBeVisible();
	const hours = dialog.getByRole('textbox', { name: 'MAST: Hours a day' });
	await hours.fill('24');
	await page.keyboard.press('Enter');
	// 20 A for 24 h.
	await expect(dialog.getByText('480 Ah').first()).toBeVisible();
	await expectClean(page);
	const lasts = dialog.locator('details[data-figure=energy]').nth(3);
	await lasts.locator('summary').first().focus();
	await page.keyboard.press('Enter');
	await expect(lasts).toContainText('D = W ÷ Wu');
	await dialog.getByRole('button', { name: 'Show the finding' }).click();
	const finding = app.finding('use 480 Ah a day');
	await expect(finding).toBeVisible();
	await finding.getByText('Where its figures come from').click();
	await expect(finding.locator('details[data-figure=energy]').first()).toBeVisible();
	await finding.getByRole('button', { name: 'A day of energy' }).click();
	await expect(dialog.getByRole('tab', { name: 'A day of energy' })).toHaveAttribute('aria-selected', 'true');
});
