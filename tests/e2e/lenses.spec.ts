/** Looking behind the findings: the drawing through a lens, a finding accepted, a mend applied and undone. */
import { expect, test } from '@playwright/test';
import { openApp } from './support/app.ts';

test('a lens colours the drawing, explains its bands and stays until it is switched off', async ({ page }, info) => {
	const { canvas } = await openApp(page);
	await expect(page.getByText('Checked', { exact: true })).toBeVisible();
	const plain = await canvas.screenshot();
	await page.getByLabel('Lens', { exact: true }).selectOption({ label: 'Loading' });
	const legend = page.getByRole('region', { name: 'Lens: Loading' });
	await expect(legend).toContainText('over its amperage');
	await expect(legend).toContainText('25 % to 50 %');
	await expect.poll(async () => (await canvas.screenshot()).equals(plain)).toBe(false);
	await info.attach('loading', { body: await page.screenshot(), contentType: 'image/png' });

	await page.keyboard.press('Escape');
	await expect(legend).toBeVisible();
	await legend.getByRole('button', { name: 'Switch the lens off' }).click();
	await expect(legend).toBeHidden();
	await expect(page.getByLabel('Lens', { exact: true })).toHaveValue('');
});

test('a warning is accepted with reason and name, and taken back', async ({ page }) => {
	const { findings } = await openApp(page);
	await findings.getByRole('button', { name: /^\d+ warnings?$/ }).click();
	const open = findings.getByRole('list', { name: 'Findings', exact: true }).getByRole('article');
	const before = await open.count();
	expect(before).toBeGreaterThan(0);
	const first = open.first();
	const says = (await first.locator('.message').textContent())!;
	await first.getByRole('button').first().click();
	await first.getByRole('button', { name: 'Accept…' }).click();
	await page.keyboard.type('Known, and looked after.');
	await first.getByLabel('Your name').fill('A. Builder');
	await page.keyboard.press('Enter');

	const accepted = findings.getByRole('list', { name: 'Accepted', exact: true });
	await expect(accepted).toContainText(says);
	await expect(accepted).toContainText('Known, and looked after.');
	await accepted.getByRole('button', { name: 'Take back' }).click();
	await expect(accepted).toBeHidden();
	await expect(findings.getByRole('article').filter({ hasText: says })).toBeVisible();
});

test('a mend says what it changes, is applied as one step, and undone', async ({ page }) => {
	const { findings } = await openApp(page);
	const articles = findings.getByRole('list', { name: 'Findings', exact: true }).getByRole('article');
	await expect(articles.first()).toBeVisible();
	const mend = findings.getByRole('button', { name: /^Mend / });
	const undo = page.getByRole('button', { name: /^Undo/ });
	let says = '';
	for (let i = 0; i < (await articles.count()) && says === ''; i++) {
		await articles.nth(i).getByRole('button').first().click();
		const found = await mend
			.first()
			.waitFor({ timeout: 3000 })
			.then(
				() => true,
				() => false
			);
		if (found) says = (await articles.nth(i).locator('.message').textContent())!;
	}
	expect(says).not.toBe('');
	await expect(findings.getByText(/Errors \d+ → \d+, warnings \d+ → \d+/).first()).toBeVisible();
	await mend.first().click();
	await expect(findings.getByRole('article').filter({ hasText: says })).toHaveCount(0);
	await undo.click();
	await expect(findings.getByRole('article').filter({ hasText: says })).toHaveCount(1);
	await expect(undo).toBeDisabled();
});
