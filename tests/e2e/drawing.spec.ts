/** Areas, notes, a picture below, locks, and "arrange for me", as a person meets them. */
import { expect, test, type Page } from '@playwright/test';
import { openApp, type App } from './support/app.ts';
import { boxAtRest } from './support/rest.ts';

interface Drawn {
	readonly parts: Record<string, { at: { x: number; y: number }; rotation: number; group?: string; locked?: boolean }>;
	readonly areas: Record<string, { label: string; at: { x: number; y: number } }>;
	readonly notes: Record<string, { text: string; to: unknown }>;
	readonly underlays: Record<string, { mmPerPx: number }>;
}
const drawn = (page: Page): Promise<Drawn> => page.evaluate(() => JSON.parse(window.wireworthy!.diagramText()) as Drawn);

/** Two parts on an empty sheet, the sheet with the keyboard. */
async function twoParts(page: Page): Promise<App> {
	const app = await openApp(page);
	await page.getByRole('button', { name: 'New', exact: true }).click();
	await expect(page).toHaveTitle(/Untitled/);
	for (const name of ['Battery', 'Load']) {
		await page.getByRole('button', { name, exact: true }).focus();
		await page.keyboard.press('Enter');
		await expect(app.canvas).toBeFocused();
	}
	await expect.poll(async () => Object.keys((await drawn(page)).parts).length).toBe(2);
	return app;
}

test('an area is chosen, drawn, listed in the outline and says what is around things', async ({ page }) => {
	const app = await twoParts(page);
	await page.keyboard.press('d');
	await page.getByRole('dialog').getByRole('button', { name: 'Engine space' }).click();
	await expect(app.canvas).toBeFocused();
	const battery = await app.at('part:G1');
	await page.mouse.click(battery.x, battery.y);
	await expect.poll(async () => Object.values((await drawn(page)).areas).map(({ label }) => label)).toEqual(['Engine space']);
	await expect(app.details.getByRole('heading', { name: 'Area Engine space' })).toBeVisible();
	await expect(app.details.getByText(/part.? stands? in it|parts stand in it/)).toBeVisible();
	await page.getByRole('tab', { name: 'Outline' }).click();
	const row = page.getByRole('treeitem', { name: /^Engine space/ });
	await row.click();
	await expect(row).toHaveAttribute('aria-selected', 'true');
	await page.keyboard.press('Control+z');
	await expect(row).toHaveCount(0);
});

test('a note is written, and locked things stay until they are unlocked, from the keyboard', async ({ page }) => {
	const app = await twoParts(page);
	await page.keyboard.press('n');
	const battery = await app.at('part:G1');
	await page.mouse.click(battery.x, battery.y);
	await app.details.getByLabel('Words').fill('Seal the grommet');
	await expect
		.poll(async () => Object.values((await drawn(page)).notes)[0])
		.toMatchObject({ text: 'Seal the grommet', to: { kind: 'part', id: 'G1' } });
	await page.keyboard.press('Escape');
	await expect(app.canvas).toBeFocused();
	await page.keyboard.press('Control+l');
	await page.keyboard.press('ArrowRight');
	await expect(page.getByText('The note is locked. Unlock it first.').first()).toBeVisible();
	await page.keyboard.press('Control+l');
	await page.keyboard.press('Delete');
	await expect.poll(async () => Object.keys((await drawn(page)).notes).length).toBe(0);
});

test('a picture is laid below and set to scale by two points and a distance', async ({ page }) => {
	const app = await twoParts(page);
	await page.keyboard.press('d');
	// A red square of 40 pixels, painted here so that no file is needed.
	const bytes = await page.evaluate(async () => {
		const canvas = document.createElement('canvas');
		canvas.width = canvas.height = 40;
		const context = canvas.getContext('2d')!;
		context.fillStyle = 'red';
		context.fillRect(0, 0, 40, 40);
		const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
		return [...new Uint8Array(await blob!.arrayBuffer())];
	});
	await page.getByLabel('Choose a picture…').setInputFiles({ name: 'bay.png', mimeType: 'image/png', buffer: Buffer.from(bytes) });
	await expect.poll(async () => Object.keys((await drawn(page)).underlays).length).toBe(1);
	const before = Object.values((await drawn(page)).underlays)[0]!.mmPerPx;
	await app.details.getByRole('button', { name: 'Set the scale by two points' }).click();
	const sheet = await boxAtRest(app.canvas);
	const [x, y] = [sheet.x + sheet.width / 2, sheet.y + sheet.height / 2];
	await app.drag({ x: x - 100, y }, { x: x + 100, y });
	const distance = page.getByRole('dialog').getByLabel('Distance');
	await expect(distance).toBeVisible();
	await distance.fill('10 m');
	await page.keyboard.press('Enter');
	await expect.poll(async () => Object.values((await drawn(page)).underlays)[0]!.mmPerPx).not.toBe(before);
});

test('a whole drawing is arranged after a look at it, as one step', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings).toContainText('To do');
	const before = await drawn(page);
	await app.canvas.focus();
	await page.keyboard.press('d');
	await page.getByRole('button', { name: 'Arrange for me…' }).click();
	const dialog = page.getByRole('dialog');
	await expect(dialog.getByRole('img', { name: 'Arranged' })).toBeVisible({ timeout: 30_000 });
	expect((await drawn(page)).parts).toEqual(before.parts);
	await dialog.getByRole('button', { name: 'Arrange', exact: true }).click();
	await expect.poll(async () => (await drawn(page)).parts).not.toEqual(before.parts);
	await page.keyboard.press('Control+z');
	await expect.poll(async () => (await drawn(page)).parts).toEqual(before.parts);
});
