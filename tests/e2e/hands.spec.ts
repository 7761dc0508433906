/** The drawing under hands of every kind: mouse, fingers, keys. */
import { expect, test, type Page } from '@playwright/test';
import { openApp, type App } from './support/app.ts';
import { boxAtRest } from './support/rest.ts';

const sitsOn = (app: App) => app.details.getByRole('combobox', { name: 'Sits on' }).locator('option:checked');

async function newSheet(page: Page): Promise<void> {
	await page.getByRole('button', { name: 'New', exact: true }).click();
	await expect(page).toHaveTitle(/Untitled/);
}

test('a fuse block placed on a stud with the mouse is mounted there, in one step', async ({ page }) => {
	const app = await openApp(page);
	await newSheet(page);
	await app.place('Battery', 0.3, 0.5);
	await page.getByRole('button', { name: 'Terminal fuse block', exact: true }).click();
	const stud = await app.at('stud:G1.pos');
	await page.mouse.move(stud.x + 30, stud.y);
	await page.mouse.move(stud.x, stud.y, { steps: 3 });
	await page.mouse.click(stud.x, stud.y);
	await expect(sitsOn(app)).toHaveText('G1 +');
	await page.keyboard.press('Control+z');
	await expect(page.getByText('1 part · 0 conductors')).toBeVisible();
});

test('a fuse block dragged from the shelf onto a stud is mounted there', async ({ page }) => {
	const app = await openApp(page);
	await newSheet(page);
	await app.place('Battery', 0.3, 0.5);
	const stud = await app.at('stud:G1.pos');
	const sheet = await boxAtRest(app.canvas);
	await page
		.getByRole('button', { name: 'Terminal fuse block', exact: true })
		.dragTo(app.canvas, { targetPosition: { x: stud.x - sheet.x, y: stud.y - sheet.y } });
	await app.select('part:F1');
	await expect(sitsOn(app)).toHaveText('G1 +');
});

test('from the keyboard alone: place two parts, move one, connect them', async ({ page }) => {
	const app = await openApp(page);
	await newSheet(page);
	for (const name of ['Battery', 'Load']) {
		await page.getByRole('button', { name, exact: true }).focus();
		await page.keyboard.press('Enter');
		await expect(app.canvas).toBeFocused();
	}
	const before = await app.at('part:E1');
	await page.keyboard.press('Shift+ArrowRight');
	await expect.poll(async () => (await app.at('part:E1')).x).toBeGreaterThan(before.x + 10);

	await page.getByRole('tab', { name: 'Outline' }).click();
	await page.getByRole('treeitem', { name: /^G1/ }).focus();
	await page.keyboard.press('ArrowRight');
	await page.keyboard.press('ArrowDown');
	await page.keyboard.press('c');
	await page.keyboard.press('ArrowLeft');
	await page.keyboard.press('ArrowLeft');
	await page.keyboard.press('ArrowDown');
	await page.keyboard.press('ArrowRight');
	await page.keyboard.press('ArrowDown');
	await page.keyboard.press('c');
	await expect(page.getByText('2 parts · 1 conductor')).toBeVisible();

	await page.keyboard.press('ArrowLeft');
	const moved = await app.at('part:E1');
	await page.keyboard.press('Alt+ArrowDown');
	await expect.poll(async () => (await app.at('part:E1')).y).toBeGreaterThan(moved.y);
	await page.keyboard.press('Delete');
	await expect(page.getByText('1 part · 0 conductors')).toBeVisible();
	await expect(page.getByRole('treeitem', { name: /^G1/ })).toBeFocused();
});

test('a click on a mark leads to its finding', async ({ page }) => {
	const app = await openApp(page);
	await newSheet(page);
	await app.place('Battery', 0.3, 0.5);
	await app.place('Load', 0.7, 0.5);
	await app.connect('G1.pos', 'E1.pos');
	await expect(app.finding('No length is given')).toBeVisible();
	const conductor = await app.at('conductor:W1');
	await page.mouse.click(conductor.x, conductor.y);
	const pressed = app.findings.getByRole('article').getByRole('button', { pressed: true });
	await expect(pressed).toHaveCount(1);
	const first = await pressed.textContent();
	await page.mouse.click(conductor.x, conductor.y);
	await expect(pressed).toHaveCount(1);
	expect(await pressed.textContent()).not.toBe(first);
});

test('a click on a finding shows its verdict, however much opens below it', async ({ page }) => {
	const app = await openApp(page);
	await app.findings.getByRole('article').nth(5).getByRole('button').first().click();
	const verdict = app.findings.getByRole('button', { pressed: true }).locator('.message');
	await expect(app.findings.getByRole('button', { name: /^Mend/ }).first()).toBeAttached();
	// Not only within the panel: the filter that stays on top of the list must not cover it either.
	const isUncovered = () =>
		verdict.evaluate((element) => {
			const { left, top } = element.getBoundingClientRect();
			return element.contains(document.elementFromPoint(left + 2, top + 2));
		});
	await expect.poll(isUncovered).toBe(true);
});

test.describe('with fingers, on a tablet held upright', () => {
	test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true });

	async function placeByTap(page: Page, name: string, at: { x: number; y: number }): Promise<void> {
		const tabs = page.getByRole('navigation', { name: 'Panels' });
		const shelf = tabs.getByRole('button', { name: 'Parts' });
		if ((await shelf.getAttribute('aria-pressed')) !== 'true') await shelf.tap();
		await page.getByRole('button', { name, exact: true }).tap();
		await expect(page.getByText(/^Tap where the/)).toBeVisible();
		await page.touchscreen.tap(at.x, at.y);
		await expect(page.getByText(/^Tap where the/)).toBeHidden();
	}

	test('a fuse block tapped onto a stud is mounted there; two taps connect', async ({ page }) => {
		const app = await openApp(page);
		await newSheet(page);
		await placeByTap(page, 'Battery', { x: 250, y: 400 });
		await placeByTap(page, 'Load', { x: 640, y: 400 });
		await placeByTap(page, 'Terminal fuse block', await app.at('stud:G1.pos'));
		await page.getByRole('navigation', { name: 'Panels' }).getByRole('button', { name: 'Details' }).tap();
		await expect(sitsOn(app)).toHaveText('G1 +');
		await page.getByRole('navigation', { name: 'Panels' }).getByRole('button', { name: 'Details' }).tap();

		await page.getByRole('button', { name: 'Connect', exact: true }).tap();
		const [from, to] = [await app.at('stud:F1.post'), await app.at('stud:E1.pos')];
		await page.touchscreen.tap(from.x, from.y);
		await expect(page.getByText(/^From F1 .*: tap the stud where it ends/)).toBeVisible();
		await page.touchscreen.tap(to.x, to.y);
		await page.getByRole('button', { name: 'Cancel' }).tap();
		await page.getByRole('navigation', { name: 'Panels' }).getByRole('button', { name: 'Details' }).tap();
		await expect(app.details).toContainText('Conductor W1');
	});
});
