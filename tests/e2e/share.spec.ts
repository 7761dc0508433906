/** A diagram in a link: opened without a server's help, looked at, remarked on, copied; and revisions of it compared. */
import { expect, test, type Browser, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { pdfText } from '../support/pdf.ts';
import { openApp, settled } from './support/app.ts';

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
	await settled(visitor);
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

	// A page of somebody else, under no policy of ours.
	await page.route('**/their-page', (route) => route.fulfill({ contentType: 'text/html', body: `<h1>Our cabin</h1>${frame}` }));
	await page.goto('/their-page');
	const framed = page.frameLocator('iframe');
	await expect(framed.getByRole('application', { name: /^Drawing/ })).toBeVisible();
	await expect(framed.getByRole('heading', { name: EXAMPLE })).toBeVisible();
	await expect(framed.getByText(/^\d+ (errors?|warnings?|notes?)$/).first()).toBeAttached();
	await framed.getByLabel('Lens').selectOption({ index: 1 });
	await framed.getByRole('button', { name: 'Closer' }).click();
	await expect(framed.getByRole('link', { name: 'Open it whole' })).toHaveAttribute('href', /\/#1\./);
	await expect(framed.getByRole('button', { name: 'Undo' })).toHaveCount(0);
});

test('a reviewer pins a remark to a part, and the author takes it in, answers and closes it', async ({ page, browser }) => {
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	const visitor = await openLink(browser, await linkTo(page));
	await visitor.keyboard.press('Control+a');
	await visitor.keyboard.press('Escape');
	const at = await visitor.evaluate(() => window.wireworthy?.clientPoint('part:B1') ?? null);
	await visitor.mouse.click(at!.x, at!.y);
	await visitor.getByRole('tab', { name: 'Remarks' }).click();
	const theirs = visitor.getByRole('region', { name: 'Remarks' });
	await theirs.getByLabel('What to look at').fill('Strap it down.');
	await theirs.getByRole('button', { name: 'Pin the remark' }).click();
	await expect(theirs.getByRole('alert')).toHaveText('Give the name of whoever remarks it.');
	await theirs.getByLabel('Your name').fill('R. Reader');
	await theirs.getByRole('button', { name: 'Pin the remark' }).click();
	await expect(theirs.getByRole('article')).toContainText('Strap it down.');
	await expect(theirs.getByRole('button', { name: 'Answer…' })).toHaveCount(0);
	// They are kept beside the link, and leaving asks nothing.
	await visitor.reload();
	await settled(visitor);
	await visitor.getByRole('tab', { name: 'Remarks' }).click();
	await expect(theirs.getByRole('article')).toContainText('Strap it down.');
	const [file] = await Promise.all([visitor.waitForEvent('download'), theirs.getByRole('button', { name: 'Save remarks' }).click()]);
	expect(file.suggestedFilename()).toBe('Ridge Post 3 remarks.json');
	const text = readFileSync(await file.path(), 'utf8');
	expect(Object.keys(JSON.parse(text))).toEqual(['format', 'version', 'about', 'remarks']);
	await visitor.context().close();

	await page.getByRole('tab', { name: 'Remarks' }).click();
	const mine = page.getByRole('region', { name: 'Remarks' });
	const take = async (name: string, content: string) => {
		const [chooser] = await Promise.all([page.waitForEvent('filechooser'), mine.getByRole('button', { name: 'Take in remarks…' }).click()]);
		await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
	};
	await take('diagram.json', JSON.stringify({ format: 'wireworthy-diagram', version: 1, parts: {} }));
	await expect(mine.getByRole('alert')).toContainText('This is not a file of remarks.');
	await take('remarks.json', text);
	const remark = mine.getByRole('article');
	await expect(remark).toContainText('Strap it down.');
	await expect(remark).toContainText('R. Reader');
	await remark.getByRole('button', { name: /^B1/ }).click();
	await expect(app.details.getByLabel('Designation')).toHaveValue('B1');

	await remark.getByRole('button', { name: 'Answer…' }).click();
	await remark.getByLabel('Answer').fill('Done, with two straps.');
	await remark.getByLabel('Your name').fill('A. Author');
	await remark.getByRole('button', { name: 'Give this answer' }).click();
	await expect(remark).toContainText('A. Author: Done, with two straps.');
	await remark.getByRole('button', { name: 'Close', exact: true }).click();
	await mine.getByText('1 closed remark').click();
	await expect(mine.getByRole('button', { name: 'Open again' })).toBeVisible();

	// What it was about is taken away: the remark says so.
	await mine.getByRole('button', { name: 'Open again' }).click();
	await remark.getByRole('button', { name: /^B1/ }).click();
	await app.canvas.focus();
	await page.keyboard.press('Delete');
	await expect(remark).toContainText('What this was about is no longer there');
});

test('two revisions are issued and compared, on the drawing, as a list and as a sheet', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	await page.getByRole('button', { name: 'New', exact: true }).click();
	const fuse = await app.place('In-line fuse', 0.5, 0.5);
	await app.details.getByLabel('Fuse', { exact: true }).fill('100');
	await page.keyboard.press('Enter');

	const issue = async (why: string) => {
		await page.getByRole('button', { name: 'Hand over', exact: true }).click();
		await page.getByRole('dialog').getByRole('button', { name: 'Revisions…' }).click();
		const dialog = page.getByRole('dialog', { name: 'Revisions' });
		await dialog.getByLabel('Issued by').fill('A. Author');
		if (why !== '') await dialog.getByLabel('What changed and why').fill(why);
		await dialog.getByRole('button', { name: 'Issue', exact: true }).click();
		return dialog;
	};
	const first = await issue('');
	await expect(first.getByRole('alert')).toContainText('Say what changed and why');
	await first.getByLabel('What changed and why').fill('First issue.');
	await first.getByRole('button', { name: 'Issue', exact: true }).click();
	await expect(first.getByText('Revision A is issued.')).toBeVisible();
	await first.getByRole('button', { name: 'Close' }).click();

	await app.select(`part:${fuse}`);
	await app.details.getByLabel('Fuse', { exact: true }).fill('80');
	await page.keyboard.press('Enter');
	const second = await issue('A smaller fuse.');
	await expect(second.getByText('Revision B is issued.')).toBeVisible();
	await second.getByLabel('From').selectOption({ index: 2 });
	await second.getByLabel('To', { exact: true }).selectOption({ index: 1 });
	await second.getByRole('button', { name: 'Compare', exact: true }).click();

	await expect(page.getByText('Comparing: Revision A → Revision B')).toBeVisible();
	const changes = page.getByRole('region', { name: 'Changes' });
	await expect(changes.getByText(`${fuse} 100 A to 80 A`)).toBeVisible();
	const [sheet] = await Promise.all([page.waitForEvent('download'), changes.getByRole('button', { name: 'Save change sheet' }).click()]);
	const text = pdfText(readFileSync(await sheet.path()));
	expect(text).toContain('Change sheet, revision A to revision B');
	expect(text).toContain('100 A to 80 A');

	// What is on the sheet is revision B as issued: it cannot be changed.
	await app.canvas.focus();
	await page.keyboard.press('Control+a');
	await page.keyboard.press('Delete');
	await expect(page.getByRole('status').filter({ hasText: 'it is read only' })).toBeVisible();
	await page.getByRole('button', { name: 'Back to the drawing' }).click();
	await expect(page.getByText(/^Comparing/)).toBeHidden();
	await app.canvas.focus();
	await page.keyboard.press('Control+a');
	await page.keyboard.press('Delete');
	await expect(page.getByText(/0 parts/).first()).toBeVisible();
});
