/** A diagram in a link: opened without a server's help, looked at, remarked on, copied; and revisions of it compared. */
import { expect, test, type Browser, type Page } from '@playwright/test';
import { openApp } from './support/app.ts';

const EXAMPLE = 'Ridge Post 3';
const sheetOf = (page: Page) => page.getByRole('application', { name: /^Drawing/ });

/** The address that "Copy a link" offers. */
async function linkTo(page: Page): Promise<string> {
	await page.getByRole('button', { name: 'Hand over', exact: true }).click();
	const dialog = page.getByRole('dialog', { name: 'Hand over' });
	const address = await dialog.getByLabel(/^Address, [\d,]+ characters$/).inputValue();
	await dialog.getByRole('button', { name: 'Close' }).click();
	return address;
}

async function openLink(browser: Browser, address: string): Promise<Page> {
	const page = await (await browser.newContext()).newPage();
	await page.goto(address);
	await expect(sheetOf(page)).toBeVisible();
	await expect(page.getByText('Read only: from a link.', { exact: true })).toBeVisible();
	return page;
}

test('a link is copied, opens read only elsewhere, and becomes a copy to edit', async ({ page, browser, context }) => {
	await context.grantPermissions(['clipboard-read', 'clipboard-write']);
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	await page.getByRole('button', { name: 'Hand over', exact: true }).click();
	const dialog = page.getByRole('dialog', { name: 'Hand over' });
	await dialog.getByRole('button', { name: 'Copy a link' }).click();
	await expect(dialog.getByText(/^Copied, [\d,]+ characters\.$/)).toBeVisible();
	const address = await page.evaluate(() => navigator.clipboard.readText());
	expect(address).toMatch(/^http:\/\/[^#]+\/#1\.[A-Za-z0-9_-]+$/);

	const visitor = await openLink(browser, address);
	await expect(visitor.getByRole('textbox', { name: 'Name of the diagram' })).toHaveValue(EXAMPLE);
	await expect(visitor.getByRole('region', { name: 'Findings' }).getByRole('article').first()).toBeVisible();
	await visitor.getByLabel('Lens').selectOption({ index: 1 });

	// Nothing can be changed, by pointer or by key, and nothing is kept.
	await visitor.keyboard.press('Control+a');
	await visitor.keyboard.press('Delete');
	await expect(visitor.getByRole('status').filter({ hasText: 'This diagram came with a link and is read only.' })).toBeVisible();
	await expect(visitor.getByText(/[1-9]\d* parts/).first()).toBeVisible();
	expect(await visitor.evaluate(() => navigator.locks.query().then(({ held }) => held?.length))).toBe(0);

	await visitor.getByRole('button', { name: 'Make a copy to edit' }).click();
	await expect(visitor.getByText('Read only: from a link.', { exact: true })).toBeHidden();
	expect(new URL(visitor.url()).hash).toBe('');
	await visitor.getByRole('textbox', { name: 'Name of the diagram' }).fill('My copy');
	await expect(visitor.getByRole('button', { name: 'Kept', exact: true })).toBeVisible();
	await visitor.reload();
	await expect(visitor.getByRole('textbox', { name: 'Name of the diagram' })).toHaveValue('My copy');
	await visitor.context().close();
});

test('a broken link says so and leaves an empty sheet; a good one put into the address opens', async ({ page, browser }) => {
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	const address = await linkTo(page);

	const visitor = await (await browser.newContext()).newPage();
	await visitor.goto(address.slice(0, address.length / 2));
	const dialog = visitor.getByRole('dialog', { name: 'The link cannot be opened' });
	await expect(dialog).toContainText(
		'This link does not hold a diagram. It was cut short or changed on its way. Copy the whole link again'
	);
	await dialog.getByRole('button').first().click();
	await expect(visitor.getByText(/^0 parts/).first()).toBeVisible();
	await visitor.evaluate((hash) => (location.hash = hash), new URL(address).hash);
	await expect(visitor.getByText('Read only: from a link.', { exact: true })).toBeVisible();
	await visitor.context().close();
});

test('the small page shows the drawing in a frame of another page', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	await page.getByRole('button', { name: 'Hand over', exact: true }).click();
	await page.getByText('Show it within another page').click();
	const frame = await page.getByLabel('For the page').inputValue();
	expect(frame).toContain('?embed#1.');

	await page.setContent(`<h1>Our cabin</h1>${frame}`);
	const framed = page.frameLocator('iframe');
	await expect(framed.getByRole('application', { name: /^Drawing/ })).toBeVisible();
	await expect(framed.getByRole('heading', { name: EXAMPLE })).toBeVisible();
	await expect(framed.getByText(/^\d+ (errors?|warnings?|notes?)$/).first()).toBeAttached();
	await framed.getByLabel('Lens').selectOption({ index: 1 });
	await framed.getByRole('button', { name: 'Closer' }).click();
	await expect(framed.getByRole('link', { name: 'Open it whole' })).toHaveAttribute('href', /\/#1\./);
	await expect(framed.getByRole('button', { name: 'Undo' })).toHaveCount(0);
});
