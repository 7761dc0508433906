/** Another language and other units: chosen, kept, and followed by everything that is shown; on a phone nothing runs over. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { openApp } from './support/app.ts';

test.setTimeout(120_000);

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

async function expectClean(page: Page): Promise<void> {
	const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
}

/** Opened as on a first visit; errors of the page fail the test. */
async function open(page: Page): Promise<void> {
	const errors: string[] = [];
	page.on('pageerror', (error) => errors.push(error.message));
	page.on('close', () => expect(errors).toEqual([]));
	await page.goto('/');
	await expect(page.getByRole('application')).toBeVisible();
}

test('German is chosen in the help, kept, and everything that stood there follows; so does the way back', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings).toContainText('To do');
	await page.getByRole('button', { name: 'Help and shortcuts' }).click();
	await page.getByRole('dialog').getByRole('button', { name: 'Language and units' }).click();
	const dialog = page.getByRole('dialog');
	await dialog.getByLabel('Language', { exact: true }).selectOption('Deutsch');

	await expect(page.getByRole('dialog', { name: 'Sprache und Einheiten' })).toBeVisible();
	await expect(page.locator('html')).toHaveAttribute('lang', 'de');
	await expectClean(page);
	await page.keyboard.press('Escape');
	const findings = page.getByRole('region', { name: 'Befunde' });
	await expect(findings).toContainText('Abhilfe');
	// The decimal mark goes with the language: lengths of findings are written anew by the worker.
	await expect(findings).toContainText(/\d,\d+ m\b/);
	await expect(page.getByRole('button', { name: 'Sicherungsautomat', exact: true })).toBeVisible();
	await expectClean(page);

	const shown = () =>
		page.evaluate(() =>
			[...document.querySelectorAll<HTMLElement>('header, section')]
				.filter((part) => part.querySelector('footer') === null && part.closest('footer') === null)
				.map((part) => part.innerText)
				.join(' ')
				.replace(/\s+/g, ' ')
		);
	const switched = await shown();
	await page.reload();
	await expect(page.getByRole('region', { name: 'Befunde' })).toContainText(/\d,\d+ m\b/);
	// What was switched is word for word what is loaded so; the status line below tells of the last step and is left out.
	const words = (text: string) =>
		text
			.split(' ')
			.filter((word) => /^[A-Za-zÄÖÜäöüß]{4,}$/.test(word))
			.toSorted();
	const after = await shown();
	expect(words(switched).filter((word) => !after.includes(word))).toEqual([]);

	await page.getByRole('button', { name: 'Hilfe und Tastenkürzel' }).click();
	await page.getByRole('dialog').getByRole('button', { name: 'Sprache und Einheiten' }).click();
	await page.getByRole('dialog').getByLabel('Sprache', { exact: true }).selectOption('English');
	await expect(page.locator('html')).toHaveAttribute('lang', 'en');
	await expect(page.getByRole('dialog', { name: 'Language and units' })).toBeVisible();
});

test('feet, inches and degrees Fahrenheit: findings, fields and figures follow, and the diagram stays as it was', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings).toContainText(/\d m\b/);
	const before = await page.evaluate(() => window.wireworthy!.diagramText());
	await page.getByRole('button', { name: 'Help and shortcuts' }).click();
	await page.getByRole('dialog').getByRole('button', { name: 'Language and units' }).click();
	const dialog = page.getByRole('dialog');
	await dialog.getByLabel('Lengths of conductors').selectOption('Feet and inches');
	await dialog.getByLabel('Temperatures').selectOption('Degrees Fahrenheit');
	await dialog.getByLabel('Sizes of conductors').selectOption('mm²');
	await page.keyboard.press('Escape');
	await expect(app.findings).toContainText(/\d+ ft( \d+ in)?/);
	await expect(app.findings).not.toContainText(/\d m\b/);
	expect(await page.evaluate(() => window.wireworthy!.diagramText())).toBe(before);

	// A field takes either unit, whichever it shows.
	await app.finding('C2+ (4 AWG').first().getByRole('button').first().click();
	const length = app.details.getByLabel('Length, one way');
	await expect(length).toBeVisible();
	await expect(app.details.getByText('ft', { exact: true })).toBeVisible();
	await length.fill('11 ft 6 in');
	await page.keyboard.press('Enter');
	await expect(length).toHaveValue('11.5');
	await length.fill('3,5 m');
	await page.keyboard.press('Enter');
	await expect(length).toHaveValue('11.483');
	const kept = JSON.parse(await page.evaluate(() => window.wireworthy!.diagramText())) as {
		conductors: Record<string, { label: string; lengthM: number }>;
	};
	expect(Object.values(kept.conductors).find(({ label }) => label === 'C2+')!.lengthM).toBe(3.5);
	await expect(app.details.getByLabel('Size', { exact: true }).locator('option:checked')).toHaveText(/AWG \([\d.]+ mm²\)/);

	await page.reload();
	await expect(app.findings).toContainText(/\d+ ft( \d+ in)?/);
});

test.describe('by the device', () => {
	test.use({ locale: 'de-DE', viewport: { width: 390, height: 844 }, hasTouch: true });

	test('a German phone opens in German, and no longer word runs over its edge', async ({ page }) => {
		await open(page);
		await expect(page.locator('html')).toHaveAttribute('lang', 'de');
		await expect(page.getByRole('region', { name: 'Befunde' })).toContainText('Abhilfe');
		await expectClean(page);
		for (const panel of ['Teile', 'Gliederung', 'Einzelheiten', 'Befunde', 'Anmerkungen']) {
			await page.getByRole('navigation').getByRole('button', { name: panel }).click();
			await expect(page.getByRole('region', { name: panel })).toBeVisible();
			await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
			const over = await page.evaluate(() =>
				[...document.querySelectorAll('nav button, header button')]
					.filter((button) => button.scrollWidth > button.clientWidth + 1)
					.map((button) => button.textContent?.trim())
			);
			expect(over).toEqual([]);
		}
	});
});

test.describe('in the United States', () => {
	test.use({ locale: 'en-US' });

	test('feet are the usual', async ({ page }) => {
		await open(page);
		await expect(page.getByRole('region', { name: 'Findings' })).toContainText(/\d+ ft( \d+ in)?/);
	});
});
