/** What the program says about itself: version, caution, privacy, and the licence of everything that is in the page. */
import { expect, test } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { openApp } from './support/app.ts';

test('About tells version, caution and privacy, and shows every licence in full', async ({ page }) => {
	await openApp(page);
	await page.getByRole('button', { name: 'Help and shortcuts' }).click();
	await page.getByRole('button', { name: 'About Wireworthy' }).click();
	const about = page.getByRole('dialog', { name: 'About Wireworthy' });
	const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
	await expect(about).toContainText(`Version ${version}`);
	await expect(about).toContainText('A drawing aid, not an inspection.');
	await expect(about).toContainText('Nothing leaves this device');
	const shipped = JSON.parse(readFileSync('static/licences.json', 'utf8')) as { name: string; licence: string; text: string }[];
	expect(shipped.length).toBeGreaterThan(5);
	const entries = about.getByRole('listitem');
	await expect(entries).toHaveCount(shipped.length);
	for (const [index, { name, licence, text }] of shipped.entries()) {
		const entry = entries.nth(index);
		await expect(entry).toContainText(name);
		await expect(entry).toContainText(`Licence: ${licence}`);
		await entry.locator('summary').click();
		await expect(entry.locator('pre')).toBeVisible();
		expect((await entry.locator('pre').textContent())!.replace(/\s+/g, ' ').trim()).toBe(text.replace(/\s+/g, ' ').trim());
		await entry.locator('summary').click();
	}
	await page.keyboard.press('Escape');
	await expect(about).toBeHidden();
});
