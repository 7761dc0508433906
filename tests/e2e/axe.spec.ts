/** WCAG 2.2 A and AA as far as axe can tell, in both themes and on a small screen, with the dialogs open. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { openApp } from './support/app.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

async function expectClean(page: Page): Promise<void> {
	const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
}

for (const colorScheme of ['light', 'dark'] as const) {
	test.describe(colorScheme, () => {
		test.use({ colorScheme });

		test('the window, a selected part and each dialog', async ({ page }) => {
			const app = await openApp(page);
			await expect(app.findings.getByRole('listitem').first()).toBeVisible();
			await expectClean(page);
			await page.getByRole('tab', { name: 'Outline' }).click();
			await page.getByRole('treeitem').first().click();
			await expectClean(page);
			await page.getByLabel('Name of the diagram').fill('Kept');
			for (const name of [/^Examples/, /Help|Keys/, /^Diagrams$/]) {
				await page.getByRole('button', { name }).first().click();
				await expect(page.getByRole('dialog')).toBeVisible();
				await expectClean(page);
				await page.keyboard.press('Escape');
			}
		});
	});
}

test.describe('phone', () => {
	test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

	test('the window with its findings', async ({ page }) => {
		await openApp(page);
		await expectClean(page);
	});
});
