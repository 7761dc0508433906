/** The main job, from nothing: draw a system, be told what is wrong, mend it, save it, open it again. */
import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { openApp } from './support/app.ts';

test('opens on an example whose faults show within five seconds', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings.getByRole('listitem').first()).toBeVisible({ timeout: 5_000 });
	await expect(page).toHaveTitle(/Ridge Post/);
});

test('draws a system from nothing, finds its faults, mends them, saves and opens it again', async ({ page }, info) => {
	test.setTimeout(120_000);
	const app = await openApp(page);
	const { findings, details } = app;
	await page.getByRole('button', { name: 'New', exact: true }).click();
	await expect(page).toHaveTitle(/Untitled/);

	await test.step('place the parts', async () => {
		expect(await app.place('Battery', 0.22, 0.45)).toBe('G1');
		expect(await app.place('Battery disconnect', 0.4, 0.2)).toBe('Q1');
		expect(await app.place('Fused distribution bus', 0.72, 0.2)).toBe('X1');
		expect(await app.place('Load', 0.8, 0.62)).toBe('E1');
		expect(await app.place('Negative bus', 0.4, 0.85)).toBe('X2');
		expect(await app.place('Terminal fuse block', 0.55, 0.5)).toBe('F1');
		await expect(page.getByText('6 parts · 0 conductors')).toBeVisible();
	});

	await test.step('the fuse block mounts where it is dropped, in one step', async () => {
		await app.drag(await app.at('part:F1'), await app.at('stud:X1.R'));
		await app.select('part:F1');
		const host = details.getByRole('combobox', { name: 'Sits on' }).locator('option:checked');
		await expect(host).toHaveText('X1 end stud R');
		await page.keyboard.press('Control+z');
		await expect(host).toHaveText('no stud');
		await page.keyboard.press('Control+Shift+z');
		await expect(host).toHaveText('X1 end stud R');
	});

	await test.step('join the positive studs: the load has no return, the battery no fuse', async () => {
		await app.connect('G1.pos', 'Q1.in', 1.2);
		await app.connect('Q1.out', 'X1.L', 1.5);
		await app.connect('F1.post', 'E1.pos');
		await expect(page.getByText('6 parts · 3 conductors')).toBeVisible();
		await expect(app.finding('E1 has a positive feed, but no conductor leads from its negative back')).toBeVisible();
		await expect(app.finding('with no fuse or breaker between')).toBeVisible();
		await expect(app.finding('No length is given for W3')).toBeVisible();
	});

	await test.step('give the load its return', async () => {
		await app.connect('E1.neg', 'X2.1', 0.8);
		await app.connect('X2.2', 'G1.neg', 0.6);
		await expect(app.finding('E1 has a positive feed')).toBeHidden();
	});

	await test.step('a click on a finding leads to its place, where the length is entered', async () => {
		await app.finding('No length is given for W3').getByRole('button').first().click();
		await expect(details).toContainText('Conductor W3');
		await details.getByLabel('Length, one way').fill('0.8');
		await page.keyboard.press('Enter');
		await expect(app.finding('No length is given')).toBeHidden();
	});

	await test.step('put a fuse block on the battery and start the main conductor from it', async () => {
		await app.select('stud:G1.pos');
		await details
			.getByRole('listitem')
			.getByRole('button', { name: /lug of W1$/ })
			.click();
		await details.getByRole('button', { name: 'Delete' }).click();
		await expect(page.getByText('6 parts · 4 conductors')).toBeVisible();
		expect(await app.place('Terminal fuse block', 0.5, 0.62)).toBe('F2');
		await app.drag(await app.at('part:F2'), await app.at('stud:G1.pos'));
		await app.connect('F2.post', 'Q1.in', 1.2);
		await expect(app.finding('with no fuse or breaker between')).toBeHidden();
		await expect(page.getByText('7 parts · 5 conductors')).toBeVisible();
		await expect(findings.getByRole('button', { name: /error/i })).toHaveCount(0);
	});

	await test.step('a load too large for its conductor and fuse is reported with numbers and table', async () => {
		await app.select('part:E1');
		await details.getByLabel('Rated draw').fill('130');
		await page.keyboard.press('Enter');
		const undersized = app.finding('130 A');
		await expect(undersized.first()).toBeVisible();
		await expect(findings).toContainText('33 CFR 183.425 Table 5');
	});

	await info.attach('with faults', { body: await page.screenshot(), contentType: 'image/png' });

	await test.step('undo takes the load back, and its findings with it', async () => {
		await page.getByRole('button', { name: 'Undo', exact: false }).click();
		await expect(app.finding('130 A')).toBeHidden();
		await expect(findings.getByRole('button', { name: /error/i })).toHaveCount(0);
	});

	await test.step('save, start anew, open again', async () => {
		const download = page.waitForEvent('download');
		await page.getByRole('button', { name: 'Save', exact: true }).click();
		const file = info.outputPath('drawn.json');
		await (await download).saveAs(file);
		const saved = JSON.parse(await readFile(file, 'utf8'));
		expect(Object.keys(saved.parts)).toHaveLength(7);
		expect(saved.mounts).toEqual({ F1: { part: 'X1', terminal: 'R' }, F2: { part: 'G1', terminal: 'pos' } });

		await page.getByRole('button', { name: 'New', exact: true }).click();
		await expect(page.getByText('0 parts')).toBeVisible();
		const chooser = page.waitForEvent('filechooser');
		await page.getByRole('button', { name: 'Open', exact: true }).click();
		await (await chooser).setFiles(file);
		await expect(page.getByText('7 parts · 5 conductors')).toBeVisible();
	});
});
