/** The program is kept on the device: it opens, edits and checks without a network, and says when there is a newer one. */
import { expect, test, type Page } from '@playwright/test';
import { openApp, settled } from './support/app.ts';

test.use({ serviceWorkers: 'allow' });

/** Resolves when the first version is kept whole. */
const kept = (page: Page) => page.evaluate(async () => void (await navigator.serviceWorker.ready));

test('on the second visit without a network it opens, edits, checks and hands over', async ({ context, page }) => {
	test.setTimeout(180_000);
	await openApp(page);
	await kept(page);
	await context.setOffline(true);
	const second = await context.newPage();
	const { canvas, details, findings } = await openApp(second);
	await expect(canvas).toBeVisible();
	await expect(findings.getByRole('article').first()).toBeVisible();
	await second.getByRole('button', { name: 'Examples', exact: true }).click();
	await second
		.getByRole('dialog')
		.getByRole('button', { name: /Pagemoor/ })
		.first()
		.click();
	await expect(second).toHaveTitle(/Pagemoor/);
	await second.getByRole('tab', { name: 'Outline' }).click();
	await second.getByRole('treeitem').first().click();
	await details.getByLabel('Designation').fill('');
	await second.keyboard.press('Enter');
	await expect(findings).toContainText(/designation/i);
	await second.getByRole('button', { name: 'Hand over', exact: true }).click();
	const dialog = second.getByRole('dialog', { name: 'Hand over' });
	const [download] = await Promise.all([second.waitForEvent('download'), dialog.getByRole('button', { name: 'Save PDF' }).click()]);
	expect(download.suggestedFilename()).toMatch(/packet\.pdf$/);
});

test('a newer version is announced, not applied, until the user says so', async ({ context, page }) => {
	test.setTimeout(120_000);
	let newer = false;
	// The same worker with one more line is another version to the browser.
	await context.route('**/service-worker.js', async (route) => {
		const response = await route.fetch();
		await route.fulfill({ response, body: `${await response.text()}\n${newer ? '// newer' : ''}` });
	});
	await openApp(page);
	await kept(page);
	await page.reload();
	await settled(page);
	await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
	const notice = page.getByText('A new version is ready.');
	await expect(page.getByRole('application')).toBeVisible();
	await expect(notice).toBeHidden();
	await page.getByLabel('Name of the diagram').fill('Under way');
	await page.evaluate(() => Reflect.set(window, 'sameVisit', true));
	newer = true;
	await page.evaluate(async () => void (await (await navigator.serviceWorker.getRegistration())?.update()));
	await expect(notice).toBeVisible({ timeout: 30_000 });
	expect(await page.evaluate(() => Reflect.get(window, 'sameVisit'))).toBe(true);
	await page.screenshot({ path: 'test-results/update.png' });
	await page.getByRole('button', { name: 'Load it now' }).click();
	await expect.poll(() => page.evaluate(() => Reflect.get(window, 'sameVisit')).catch(() => true), { timeout: 30_000 }).toBeUndefined();
	await expect(page.getByLabel('Name of the diagram')).toHaveValue('Under way');
	await expect(notice).toBeHidden();
});

test('a device is offered it as a program of its own', async ({ page, request, baseURL }) => {
	await page.goto('/');
	const address = await page.locator('link[rel=manifest]').evaluate((link) => (link as HTMLLinkElement).href);
	const manifest = (await (await request.get(address)).json()) as {
		icons: { src: string; sizes: string; purpose?: string }[];
		start_url: string;
	};
	expect(new URL(manifest.start_url, address).href).toBe(new URL('/', baseURL).href);
	expect(manifest.icons.some(({ purpose }) => purpose === 'maskable')).toBe(true);
	for (const { src, sizes } of manifest.icons) {
		const size = await page.evaluate(async (icon) => {
			const image = new Image();
			image.src = icon;
			await image.decode();
			return image.naturalWidth;
		}, new URL(src, address).href);
		if (sizes !== 'any') expect(`${size}x${size}`).toBe(sizes);
	}
	const session = await page.context().newCDPSession(page);
	const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
	expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual([]);
});
