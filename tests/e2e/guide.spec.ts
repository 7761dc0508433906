/** The guided starts, on the real drawing: each step is seen to be done, can be skipped, left and resumed. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { openApp } from './support/app.ts';

// Many steps, each waited for: on a busy machine they add up.
test.setTimeout(180_000);

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

async function expectClean(page: Page): Promise<void> {
	const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
}

/** Chooses a start by its title in the dialog that the help leads to. */
async function begin(page: Page, title: RegExp, button: RegExp | string = 'Begin'): Promise<void> {
	await page.getByRole('button', { name: 'Help and shortcuts' }).click();
	await page.getByRole('dialog').getByRole('button', { name: 'Guided starts' }).click();
	await expect(page.getByRole('dialog', { name: 'Guided starts' })).toBeVisible();
	await page.getByRole('dialog').getByRole('group', { name: title }).getByRole('button', { name: button }).click();
}

const panel = (page: Page) => page.getByRole('region', { name: /^Guided start:/ });

test('the first circuit is drawn step by step, left half way, and resumed after the page was loaded again', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings).toContainText('To do');
	await begin(page, /First circuit/);
	await expect(panel(page)).toContainText('Step 1 of 8');
	await expect(panel(page)).toContainText('Put a battery on the sheet');
	await expectClean(page);

	const battery = await app.place('Battery', 0.15, 0.6);
	await expect(panel(page)).toContainText('Step 2 of 8');
	const fuse = await app.place('In-line fuse', 0.45, 0.55);
	await expect(panel(page)).toContainText('Step 3 of 8');
	const light = await app.place('Load', 0.8, 0.6);
	await expect(panel(page)).toContainText('Step 4 of 8');
	const ids = await page.evaluate(() => {
		const { parts } = JSON.parse(window.wireworthy!.diagramText()) as { parts: Record<string, { label: string }> };
		return Object.fromEntries(Object.entries(parts).map(([id, { label }]) => [label, id]));
	});
	await app.connect(`${ids[battery]}.pos`, `${ids[fuse]}.in`, 0.3);
	await expect(panel(page)).toContainText('Step 5 of 8');

	await panel(page).getByRole('button', { name: 'Leave' }).click();
	await expect(panel(page)).toHaveCount(0);
	await page.reload();
	await expect(app.canvas).toBeVisible();
	await expect(app.findings).toContainText('To do');
	await begin(page, /First circuit/, /^Go on: Step 5 of 8/);
	await expect(panel(page)).toContainText('Step 5 of 8');

	await app.connect(`${ids[fuse]}.out`, `${ids[light]}.pos`, 2);
	await expect(panel(page)).toContainText('Step 6 of 8');
	await app.connect(`${ids[light]}.neg`, `${ids[battery]}.neg`, 2.3);
	// Every length was entered on the way, so that the step that asks for them is done at once.
	await expect(panel(page)).toContainText('Step 8 of 8');
	await app.findings.getByRole('article').first().getByRole('button').first().click();
	await expect(panel(page)).toHaveCount(0);
});

test('steps can be skipped and gone back to from the keyboard, and the last one ends it', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings).toContainText('To do');
	await begin(page, /Hand it over/);
	await expect(panel(page)).toContainText('Step 1 of 5');
	const skip = panel(page).getByRole('button', { name: 'Skip' });
	await skip.focus();
	await page.keyboard.press('Enter');
	await expect(panel(page)).toContainText('Step 2 of 5');
	await panel(page).getByRole('button', { name: 'Back' }).focus();
	await page.keyboard.press('Enter');
	await expect(panel(page)).toContainText('Step 1 of 5');
	for (const step of [2, 3, 4]) {
		await panel(page).getByRole('button', { name: 'Skip' }).click();
		await expect(panel(page)).toContainText(`Step ${step} of 5`);
	}
	await page.getByRole('button', { name: 'Hand over' }).first().click();
	// The dialog covers the sheet: the step stands in it.
	const dialog = page.getByRole('dialog', { name: 'Hand over' });
	await expect(dialog.getByRole('region', { name: /^Guided start:/ })).toContainText('Step 5 of 5');
	await page.keyboard.press('Escape');
	await expect(panel(page)).toHaveCount(0);
});

test('the full bus: room is asked for, and what was entered is noticed', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings).toContainText('To do');
	await begin(page, /The full bus/);
	// The example that is open has a bus, so the first step is done already.
	await expect(panel(page)).toContainText('Step 2 of 6');
	await app.select('part:D');
	await expect(panel(page)).toContainText('Step 3 of 6');
	await app.details.getByRole('button', { name: 'Find room for circuits…' }).first().click();
	const dialog = page.getByRole('dialog');
	const step = dialog.getByRole('region', { name: /^Guided start:/ });
	await expect(step).toContainText('Step 4 of 6');
	await dialog.getByLabel('Current').first().fill('8');
	await dialog.getByLabel('Length, one way').first().fill('3 m');
	await page.keyboard.press('Enter');
	await expect(step).toContainText('Step 5 of 6');
	await step.getByRole('button', { name: 'Leave' }).click();
	await expect(step).toHaveCount(0);
});
