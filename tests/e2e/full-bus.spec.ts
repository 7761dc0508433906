/** "The bus is full: where may more circuits land?", the order of its positions, and sizes for everything, by mouse, keyboard and touch. */
import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { openApp } from './support/app.ts';
import { atRest } from './support/rest.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** All ways are drawn and checked: on a busy machine that takes its time. */
const SLOW = { timeout: 120_000 };
test.setTimeout(240_000);

/** The repaired rescue trailer without its solar controller and mains charger: four positions taken, end stud R free. */
function fullBus(): string {
	const diagram = JSON.parse(readFileSync('static/examples/ridge-post-after.json', 'utf8')) as {
		parts: Record<string, unknown>;
		mounts: Record<string, unknown>;
		conductors: Record<string, { from: { part: string }; to: { part: string } }>;
	};
	const gone = ['F5', 'SOL', 'MCH'];
	for (const id of gone) {
		delete diagram.parts[id];
		delete diagram.mounts[id];
	}
	for (const [id, { from, to }] of Object.entries(diagram.conductors))
		if (gone.includes(from.part) || gone.includes(to.part)) delete diagram.conductors[id];
	return JSON.stringify(diagram);
}

async function openFullBus(page: Page) {
	const app = await openApp(page);
	const chooser = page.waitForEvent('filechooser');
	await page.getByRole('button', { name: 'Open' }).first().click();
	await (await chooser).setFiles({ name: 'full.json', mimeType: 'application/json', buffer: Buffer.from(fullBus()) });
	await expect(page.getByText('Opened Ridge Post 3').first()).toBeVisible();
	return app;
}

interface Asked {
	readonly name: string;
	readonly current: number;
	readonly length: number;
	readonly fuse: number;
	readonly source?: boolean;
}

const SOLAR: Asked = { name: 'Solar', current: 28, length: 1.5, fuse: 40, source: true };
const TAILGATE: Asked = { name: 'Tailgate', current: 90, length: 3, fuse: 125 };

async function state(dialog: Locator, circuits: readonly Asked[]): Promise<void> {
	for (const [index, { name, current, length, fuse, source }] of circuits.entries()) {
		if (index > 0) await dialog.getByRole('button', { name: 'Another circuit' }).click();
		const fields = dialog.getByRole('group', { name: `Circuit ${index + 1}` });
		await fields.getByLabel('Name').fill(name);
		await fields.getByLabel('Current').fill(String(current));
		await fields.getByLabel('Length').fill(String(length));
		await fields.getByLabel('Fuse').fill(String(fuse));
		if (source) await fields.getByLabel(/Feeds the bus/).check();
	}
}

async function expectClean(page: Page): Promise<void> {
	const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
}

test('from the bus: ask, compare, refuse the short cuts, do one, take it back', async ({ page }) => {
	const app = await openFullBus(page);
	await app.select('part:D');
	await app.details.getByRole('button', { name: 'Find room for circuits…' }).click();
	const dialog = page.getByRole('dialog', { name: 'Room for more circuits on D' });
	await dialog.getByRole('button', { name: 'Try every way' }).click();
	await expect(dialog.getByText('Each circuit needs its current and its length.')).toBeVisible();

	await state(dialog, [SOLAR]);
	await dialog.getByRole('button', { name: 'Try every way' }).click();
	const best = dialog.getByRole('article', { name: 'Put Solar on end stud R in a single fuse block' });
	await expect(best).toBeVisible(SLOW);
	await expect(best.getByText('Best', { exact: true })).toBeVisible();
	await expect(best.getByText('Nothing that is there is touched.')).toBeVisible();
	await expect(best.getByText(/fuse block with cube fuse 40 A/)).toBeVisible();
	await expect(best.getByRole('img', { name: /^How the drawing changes/ })).toBeVisible(SLOW);
	await expect(dialog.getByText('Every fused position is taken.')).toBeVisible();

	// Refused short cuts say why, and by which finding.
	const under = dialog.getByRole('listitem').filter({ hasText: 'under the cube fuse of a block' });
	await expect(under.getByText(/lies under the fuse of/)).toBeVisible();
	await expect(dialog.getByText(/Two circuits behind one fuse/)).toBeVisible();
	await expectClean(page);

	await best.getByRole('button', { name: 'Do this' }).click();
	await expect(dialog).toBeHidden();
	await expect(app.details).toContainText('Solar');
	await app.at('part:N1');
	await page.keyboard.press('Control+z');
	await expect.poll(() => page.evaluate(() => window.wireworthy?.clientPoint('part:N1') ?? null)).toBeNull();
});

test('with keys alone: asked, stopped, asked again, done', async ({ page }) => {
	const app = await openFullBus(page);
	await app.canvas.focus();
	await page.keyboard.press('l');
	const dialog = page.getByRole('dialog', { name: 'Room for more circuits on D' });
	await expect(dialog).toBeVisible();
	await dialog.getByLabel('Current').focus();
	await page.keyboard.type('90');
	await page.keyboard.press('Tab');
	await page.keyboard.type('3');
	await page.keyboard.press('Tab');
	await page.keyboard.type('125');
	await page.keyboard.press('Enter');
	const stop = dialog.getByRole('button', { name: 'Stop' });
	await stop.press('Enter');
	await expect(stop).toBeHidden();
	await dialog.getByRole('button', { name: 'Try every way' }).press('Enter');
	const take = dialog.getByRole('button', { name: 'Do this' }).first();
	await expect(take).toBeVisible(SLOW);
	// Swapping a smaller circuit to the end stud frees a main position.
	await expect(dialog.getByRole('article', { name: /^Put NEW 1 on position \d in place of .* on end stud R/ }).first()).toBeVisible();
	await take.press('Enter');
	await expect(dialog).toBeHidden();
	await expect(app.details).toContainText('NEW 1');
});

test('the order of positions: before and after, and one step', async ({ page }) => {
	const app = await openFullBus(page);
	await app.select('part:D');
	await app.details.getByRole('button', { name: 'Order the positions…' }).click();
	const dialog = page.getByRole('dialog', { name: 'Order of circuits on D' });
	await expect(dialog.getByRole('table')).toBeVisible(SLOW);
	await expect(dialog.getByRole('row', { name: /^Greatest current in the bar/ })).toBeVisible();
	await expectClean(page);
	const take = dialog.getByRole('button', { name: 'Put them in this order' });
	if (await take.isVisible()) {
		await take.click();
		await expect(page.getByText(/order the circuits on D/i).first()).toBeVisible();
		await page.keyboard.press('Control+z');
	} else await expect(dialog.getByText(/as good as any/)).toBeVisible();
});

test('sizes for everything, what is pinned kept', async ({ page }) => {
	const app = await openFullBus(page);
	await app.select('part:D');
	await app.details.getByLabel('Keep its fuses when everything is sized').check();
	await app.canvas.focus();
	await page.keyboard.press('s');
	const dialog = page.getByRole('dialog', { name: 'Size everything' });
	await expect(dialog.getByText(/^Copper .* kg → .* kg$/)).toBeVisible(SLOW);
	await expect(dialog.getByText('Pinned, and kept: D.')).toBeVisible();
	await expect(dialog.getByRole('row', { name: /would not pass/ }).first()).toBeVisible();
	await expectClean(page);
	await dialog.getByRole('button', { name: /^Change \d+ sizes?$/ }).click();
	await expect(page.getByText(/size conductors and fuses/i).first()).toBeVisible();
});

test('a sheet without a bus says what is missing', async ({ page }) => {
	const app = await openApp(page);
	await page.getByRole('button', { name: 'New' }).first().click();
	await app.canvas.focus();
	await page.keyboard.press('l');
	await expect(page.getByRole('dialog').getByText(/There is no fused distribution bus on the drawing yet/)).toBeVisible();
});

test.describe('phone', () => {
	test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

	test('by touch, the ways one under the other', async ({ page }) => {
		const app = await openFullBus(page);
		await app.canvas.focus();
		await page.keyboard.press('l');
		const dialog = page.getByRole('dialog', { name: 'Room for more circuits on D' });
		await state(dialog, [TAILGATE]);
		await dialog.getByRole('button', { name: 'Try every way' }).tap();
		const cards = dialog.getByRole('article');
		await expect(cards.nth(1)).toBeVisible(SLOW);
		const [first, second] = await atRest(() =>
			cards.evaluateAll((all) => all.slice(0, 2).map((card) => card.getBoundingClientRect().toJSON() as DOMRect))
		);
		expect(second!.x).toBe(first!.x);
		expect(second!.y).toBeGreaterThanOrEqual(first!.y + first!.height);
		expect(await dialog.evaluate((element) => element.scrollWidth <= element.clientWidth)).toBe(true);
		await expectClean(page);
		await cards.nth(0).getByRole('button', { name: 'Do this' }).tap();
		await expect(dialog).toBeHidden();
	});
});
