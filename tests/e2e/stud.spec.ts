/** A stud seen from the side: drawn to scale, put into another order by mouse, finger and key, arranged by the program. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { openApp, type App } from './support/app.ts';
import { boxAtRest } from './support/rest.ts';

/** End stud L of the first example carries a 4/0 AWG feed on top of a smaller lug: the order is wrong there. */
const STUD = 'stud:D.L' as const;

const layer = (scope: Locator, label: RegExp) => scope.getByRole('button', { name: label });
const places = (scope: Locator) =>
	scope
		.locator('[data-layer]')
		.evaluateAll((layers) => layers.map((element) => element.getAttribute('aria-label')!.split(',')[0]!).toReversed());

/** The first example is fetched after the window is there. */
async function openExample(page: Page): Promise<App> {
	const app = await openApp(page);
	await expect.poll(() => page.evaluate((key) => window.wireworthy?.clientPoint(key) ?? null, STUD)).not.toBeNull();
	return app;
}

async function openStud(page: Page): Promise<{ app: App; view: Locator }> {
	const app = await openExample(page);
	await app.select(STUD);
	const view = app.details.getByRole('group', { name: /from the side, to scale/ });
	// What the check answers is written on the layers, and may move them.
	await expect(layer(view, FEED)).toHaveAttribute('aria-label', /see finding 1/);
	return { app, view };
}

/** Middle of a layer's row, clear of its label. */
async function rowOf(of: Locator): Promise<{ x: number; y: number }> {
	const box = await boxAtRest(of.locator('.row'));
	return { x: box.x + box.width * 0.6, y: box.y + box.height / 2 };
}

const FEED = /^4\/0 AWG lug of W4/;
const PANEL = /^4 AWG lug of C2\+/;

test('its layers are drawn to scale: heights are those of the model', async ({ page }) => {
	const { view } = await openStud(page);
	const high = async (label: RegExp) =>
		(await layer(view, label).evaluate((element) => {
			const hit = element.querySelector('rect')!;
			const { width, height } = (element.closest('svg') as SVGSVGElement).viewBox.baseVal;
			const box = element.closest('svg')!.getBoundingClientRect();
			return { mm: hit.height.baseVal.value, squareness: box.width / width / (box.height / height) };
		})) as { mm: number; squareness: number };
	// Washer 1.6 mm (ISO 7089) and nut 6.8 mm (ISO 4032) for M8; strokes add up to 0.35 mm.
	const washer = await high(/^washer/);
	const nut = await high(/^nut/);
	expect(Math.abs(washer.mm - 1.6)).toBeLessThan(0.4);
	expect(Math.abs(nut.mm - 6.8)).toBeLessThan(0.4);
	expect(nut.squareness).toBeCloseTo(1, 2);
	await expect(view).toContainText('thread left');
});

test('findings are numbered on their layer, and lead to the list', async ({ page }) => {
	const { app, view } = await openStud(page);
	const found = app.details.getByRole('list', { name: 'Findings on this stud' });
	await expect(found.getByRole('listitem').first()).toContainText('give off');
	await expect(layer(view, FEED)).toHaveAttribute('aria-label', /see finding 1/);
	await found.getByRole('button').first().click();
	await expect(app.findings.getByRole('article').getByRole('button', { pressed: true })).toContainText('The joints on D');
});

test('a layer dragged with the mouse changes the order, and the change is seen before it is made', async ({ page }) => {
	const { app, view } = await openStud(page);
	const before = await places(view);
	const from = await rowOf(layer(view, PANEL));
	const to = await rowOf(layer(view, FEED));
	await page.mouse.move(from.x, from.y);
	await page.mouse.down();
	await page.mouse.move(to.x, to.y - 4, { steps: 6 });
	await expect(app.details.getByText('Dropped here')).toBeVisible();
	await expect(app.details.getByText(/Goes: The largest current sits lowest/)).toBeVisible();
	await page.mouse.up();
	await expect(app.details.getByText('Dropped here')).toBeHidden();
	const after = await places(view);
	expect(after).not.toEqual(before);
	expect(after.slice(0, 2)).toEqual(before.slice(0, 2).toReversed());
	await page.keyboard.press('Control+z');
	await expect.poll(() => places(view)).toEqual(before);
});

test('Escape puts a dragged layer back', async ({ page }) => {
	const { view } = await openStud(page);
	const before = await places(view);
	const from = await rowOf(layer(view, PANEL));
	const to = await rowOf(layer(view, FEED));
	await page.mouse.move(from.x, from.y);
	await page.mouse.down();
	await page.mouse.move(to.x, to.y - 4, { steps: 6 });
	await expect.poll(() => places(view)).not.toEqual(before);
	await page.keyboard.press('Escape');
	await page.mouse.up();
	await expect.poll(() => places(view)).toEqual(before);
	await expect(page.getByRole('button', { name: 'Undo' })).toHaveAttribute('aria-disabled', 'true');
});

test('from the keyboard a layer is moved and keeps the focus; an order that is wrong says why', async ({ page }) => {
	const { app, view } = await openStud(page);
	const before = await places(view);
	await layer(view, PANEL).focus();
	await page.keyboard.press('Alt+ArrowUp');
	await expect.poll(async () => (await places(view)).slice(0, 2)).toEqual(before.slice(0, 2).toReversed());
	await expect(layer(view, PANEL)).toBeFocused();
	await page.keyboard.press('Alt+ArrowUp');
	await expect(page.getByRole('status').filter({ hasText: 'lies on top already' })).toHaveCount(1);

	await app.details.getByRole('button', { name: 'Washer', exact: true }).click();
	await layer(view, /^washer, 3 of 3/).focus();
	await page.keyboard.press('Alt+ArrowDown');
	await expect(page.getByRole('status').filter({ hasText: 'The washer lies under the 4 AWG lug of C2+' })).toHaveCount(1);
	await expect(app.details.getByRole('list', { name: 'Findings on this stud' })).toContainText('a washer lies under');
});

test('the program arranges it after showing both orders; one undo step takes it back', async ({ page }) => {
	const { app, view } = await openStud(page);
	const before = await places(view);
	await app.details.getByRole('button', { name: 'Arrange this stud' }).click();
	const dialog = page.getByRole('dialog');
	await expect(dialog.getByRole('img', { name: 'As drawn' })).toBeVisible();
	await expect(dialog.getByRole('img', { name: 'Arranged' })).toBeVisible();
	await dialog.getByRole('button', { name: 'Put it in this order' }).click();
	await expect(dialog).toBeHidden();
	await expect.poll(async () => (await places(view))[0]).toBe('4/0 AWG lug of W4');
	await page.getByRole('button', { name: 'Undo' }).click();
	await expect.poll(() => places(view)).toEqual(before);
});

for (const colorScheme of ['light', 'dark'] as const) {
	test.describe(colorScheme, () => {
		test.use({ colorScheme });

		test('axe finds nothing in the panel, the large view and the arrangement', async ({ page }) => {
			const { app } = await openStud(page);
			const expectClean = async () => {
				const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze();
				expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
			};
			await expectClean();
			for (const name of ['Enlarge', 'Arrange this stud']) {
				await app.details.getByRole('button', { name }).click();
				await expect(page.getByRole('dialog')).toBeVisible();
				await expectClean();
				await page.keyboard.press('Escape');
				await expect(page.getByRole('dialog')).toBeHidden();
			}
		});
	});
}

test.describe('with fingers', () => {
	test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true });

	test('a layer is dragged by its grip', async ({ page }) => {
		const app = await openExample(page);
		await app.select(STUD);
		const tab = page.getByRole('navigation', { name: 'Panels' }).getByRole('button', { name: 'Details' });
		if ((await tab.getAttribute('aria-pressed')) !== 'true') await tab.tap();
		const view = app.details.getByRole('group', { name: /from the side, to scale/ });
		await expect(layer(view, FEED)).toHaveAttribute('aria-label', /see finding 1/);
		await layer(view, PANEL).locator('.grip').scrollIntoViewIfNeeded();
		const before = await places(view);
		const grip = async (label: RegExp) => {
			const box = await boxAtRest(layer(view, label).locator('.grip'));
			return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
		};
		const [from, to] = [await grip(PANEL), await grip(FEED)];
		const touch = await page.context().newCDPSession(page);
		await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [from] });
		for (const share of [0.3, 0.7, 1.1]) {
			await touch.send('Input.dispatchTouchEvent', {
				type: 'touchMove',
				touchPoints: [{ x: from.x, y: from.y + (to.y - from.y) * share }]
			});
		}
		await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
		await expect.poll(async () => (await places(view)).slice(0, 2)).toEqual(before.slice(0, 2).toReversed());
	});
});
