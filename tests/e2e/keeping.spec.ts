/** Work survives: closed tabs, killed pages, a full disk, a newer or damaged store, two tabs, a file changed on the disk. */
import { readFile } from 'node:fs/promises';
import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { openApp, settled, type App } from './support/app.ts';
import { bystander, damageLastStep, diagramText, kept, makeNewerStore, storeVersion, title } from './support/kept.ts';

/** A first visit: the example is on the sheet. */
async function first(page: Page): Promise<App> {
	const app = await openApp(page);
	await expect(title(page)).toHaveValue(/Ridge Post/);
	return app;
}

/** A second visit: another page of the same browser. */
async function visit(context: BrowserContext): Promise<Page> {
	const page = await context.newPage();
	await openApp(page);
	return page;
}

const banner = (page: Page, text: string | RegExp) => page.getByRole('alert').filter({ hasText: text }).first();

async function renamed(page: Page, name: string): Promise<void> {
	await title(page).fill(name);
	await kept(page);
}

test('a closed tab comes back with its last change, and can undo it', async ({ page, context }) => {
	await first(page);
	await title(page).fill('Second try');
	await page.getByRole('application').focus();
	await page.keyboard.press('Control+a');
	await page.keyboard.press('Delete');
	await kept(page);
	const before = await diagramText(page);
	await page.close();

	const later = await visit(context);
	await expect(title(later)).toHaveValue('Second try');
	expect(await diagramText(later)).toBe(before);
	await expect(later.getByText('0 parts · 0 conductors')).toBeVisible();
	await later.keyboard.press('Control+z');
	await expect(later.getByText('26 parts · 35 conductors')).toBeVisible();
	await later.keyboard.press('Control+z');
	await expect(title(later)).not.toHaveValue('Second try');
});

test('leaving asks nothing while every change is kept', async ({ page }) => {
	await first(page);
	await renamed(page, 'Kept');
	let asked = false;
	page.on('dialog', (dialog) => {
		asked = true;
		void dialog.accept();
	});
	await page.getByRole('button', { name: 'New', exact: true }).click();
	await expect(page.getByText('0 parts')).toBeVisible();
	await page.reload();
	expect(asked).toBe(false);
	await expect(title(page)).toHaveValue('Kept');
});

test('a full disk is said, work goes on, and is kept when there is room again', async ({ page, context, baseURL }) => {
	const origin = new URL(baseURL!).origin;
	const browser = await context.newCDPSession(page);
	await browser.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
	await first(page);
	await title(page).fill('While full');
	await expect(banner(page, 'There is no room left on this device')).toBeVisible();
	await expect(banner(page, 'Save the diagram as a file now')).toBeVisible();
	await page.getByRole('application').focus();
	await page.keyboard.press('Control+a');
	await page.keyboard.press('Delete');
	await expect(page.getByText('0 parts')).toBeVisible();
	const [dialog] = await Promise.all([page.waitForEvent('dialog'), page.close({ runBeforeUnload: true })]);
	await dialog.dismiss();
	const drawn = await diagramText(page);
	await browser.send('Storage.overrideQuotaForOrigin', { origin });
	await expect(page.getByRole('button', { name: 'Kept', exact: true })).toBeVisible({ timeout: 40_000 });
	await page.close();
	const later = await visit(context);
	await expect(title(later)).toHaveValue('While full');
	expect(await diagramText(later)).toBe(drawn);
});

test('a write that fails is said and tried again', async ({ page, context }) => {
	await page.addInitScript(() => {
		const add = IDBObjectStore.prototype.add;
		IDBObjectStore.prototype.add = function (...args) {
			if (sessionStorage.getItem('fail') && this.name === 'journal') throw new DOMException('The disk says no', 'UnknownError');
			return add.apply(this, args as Parameters<typeof add>);
		};
	});
	await first(page);
	await renamed(page, 'Before');
	await page.evaluate(() => sessionStorage.setItem('fail', 'yes'));
	await title(page).fill('After');
	await expect(banner(page, 'could not be kept on this device (The disk says no)')).toBeVisible();
	await page.evaluate(() => sessionStorage.removeItem('fail'));
	await kept(page);
	await expect(banner(page, 'could not be kept')).toBeHidden();
	await page.close();
	await expect(title(await visit(context))).toHaveValue('After');
});

test('a store from a newer version is left alone, and said; work goes on', async ({ page, context }) => {
	const aside = await bystander(context);
	await makeNewerStore(aside);
	await openApp(page);
	await expect(title(page)).toHaveValue(/Ridge Post/);
	await expect(banner(page, 'kept by a newer version of this program')).toBeVisible();
	await title(page).fill('Still drawing');
	await expect(page).toHaveTitle(/Still drawing/);
	await expect(page.getByRole('button', { name: 'Not kept' })).toBeVisible();
	expect(await storeVersion(aside)).toBe(99);
});

test('a store thrown away under the open diagram gets it back', async ({ page, context }) => {
	await first(page);
	await renamed(page, 'Before');
	const aside = await bystander(context);
	// Gone before the next step is written: one written while it goes would go with it.
	await aside.evaluate(
		() =>
			new Promise<void>((resolve, reject) => {
				const request = indexedDB.deleteDatabase('wireworthy');
				request.onsuccess = () => resolve();
				request.onerror = () => reject(request.error ?? new Error('It was not deleted.'));
			})
	);
	await title(page).fill('After');
	await expect(page.getByRole('status').filter({ hasText: 'put back' })).toBeAttached();
	await kept(page);
	await page.close();
	await expect(title(await visit(context))).toHaveValue('After');
});

test('a damaged journal opens up to the damage, and says what is missing', async ({ page, context }) => {
	await first(page);
	await title(page).fill('Whole');
	await page.getByRole('application').focus();
	await page.keyboard.press('Control+a');
	await page.keyboard.press('Delete');
	await kept(page);
	await page.close();
	await damageLastStep(await bystander(context));

	const later = await visit(context);
	const told = later.getByRole('dialog');
	await expect(told).toContainText('The last 1 step could not be read');
	await told.getByRole('button', { name: 'Continue' }).click();
	await expect(title(later)).toHaveValue('Whole');
	await expect(later.getByText('26 parts · 35 conductors')).toBeVisible();
	await renamed(later, 'Going on');
	await later.close();
	const last = await visit(context);
	await expect(title(last)).toHaveValue('Going on');
	await expect(last.getByRole('dialog')).toBeHidden();
});

test('a check worker that dies while solving is replaced; the drawing is not touched', async ({ page }) => {
	await page.addInitScript(() => {
		const Real = Worker;
		window.Worker = class extends Real {
			override postMessage(...args: unknown[]): void {
				if (sessionStorage.getItem('kill')) {
					sessionStorage.removeItem('kill');
					super.postMessage(...(args as [unknown]));
					// As a worker that ran out of memory: it is gone without a word.
					this.terminate();
					return;
				}
				super.postMessage(...(args as [unknown]));
			}
		};
	});
	await page.clock.install();
	const app = await first(page);
	await expect(app.findings.getByRole('listitem').first()).toBeVisible();
	await page.evaluate(() => sessionStorage.setItem('kill', 'yes'));
	await title(page).fill('Mid-solve');
	await expect.poll(() => page.evaluate(() => sessionStorage.getItem('kill'))).toBeNull();
	await page.clock.fastForward(60_000);
	await expect(page.getByText('The check stopped unexpectedly and was started again').first()).toBeVisible();
	await title(page).fill('After');
	await expect(page.getByText('The check stopped unexpectedly').first()).toBeHidden();
	await expect(page.getByText('26 parts · 35 conductors')).toBeVisible();
});

test('two tabs: one edits, the other reads live, asks, and gets its turn', async ({ page, context }) => {
	await first(page);
	await renamed(page, 'Shared');
	const second = await visit(context);
	await expect(second.getByText('This diagram is being edited in another tab')).toBeVisible();
	await title(page).fill('Seen at once');
	await expect(title(second)).toHaveValue('Seen at once');

	await title(second).fill('Not allowed');
	await expect(second.getByRole('status').filter({ hasText: 'nothing can be changed here' })).toBeAttached();
	await expect(second).toHaveTitle(/Seen at once/);
	await second.getByRole('application').focus();
	await second.keyboard.press('Control+a');
	await second.keyboard.press('Delete');
	await expect(second.getByText('26 parts · 35 conductors')).toBeVisible();

	await second.getByRole('button', { name: 'Edit here' }).click();
	await expect(page.getByText('This diagram is being edited in another tab')).toBeVisible();
	await expect(second.getByText('This diagram is being edited in another tab')).toBeHidden();
	await title(second).fill('From the second');
	await expect(title(page)).toHaveValue('From the second');

	await second.close();
	await expect(page.getByText('This diagram is being edited in another tab')).toBeHidden();
	await renamed(page, 'Alone again');
});

test('the diagrams: find, copy, rename, bin and put back, go back to a version, all as one file', async ({ page }, info) => {
	await first(page);
	await renamed(page, 'Boat');
	const dialog = page.getByRole('dialog');
	const open = () => page.getByRole('button', { name: 'Diagrams', exact: true }).click();
	const cards = dialog.getByRole('list', { name: 'Kept diagrams' }).getByRole('listitem');
	const card = (name: string) => cards.filter({ has: page.getByText(name, { exact: true }) });

	await open();
	await card('Boat').getByRole('button', { name: 'Duplicate' }).click();
	await expect(card('Boat (copy)')).toBeVisible();
	await expect(card('Boat (copy)').getByRole('img', { includeHidden: true })).toBeAttached();
	await card('Boat (copy)').getByRole('button', { name: 'Rename' }).click();
	await dialog.getByLabel('New name').fill('Cabin');
	await page.keyboard.press('Enter');
	await expect(card('Cabin')).toBeVisible();
	await dialog.getByLabel('Find a diagram').fill('cab');
	await expect(cards).toHaveCount(1);
	await dialog.getByLabel('Find a diagram').fill('');

	await card('Cabin').getByRole('button', { name: 'To the bin' }).click();
	await expect(card('Cabin')).toBeHidden();
	await dialog.getByRole('button', { name: 'Bin (1)' }).click();
	await card('Cabin').getByRole('button', { name: 'Put back' }).click();
	await dialog.getByRole('button', { name: 'Back to the diagrams' }).click();
	await expect(cards).toHaveCount(2);

	const download = page.waitForEvent('download');
	await dialog.getByRole('button', { name: 'Save all as one file' }).click();
	const file = info.outputPath('all.json');
	await (await download).saveAs(file);
	expect(JSON.parse(await readFile(file, 'utf8')).diagrams).toHaveLength(2);
	await dialog.locator('input[type=file]').setInputFiles(file);
	await expect(cards).toHaveCount(4);
	await dialog.locator('input[type=file]').setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') });
	await expect(dialog.getByRole('alert')).toContainText('Nothing was added');
	await expect(cards).toHaveCount(4);

	await dialog.locator('[aria-current]').locator('..').getByRole('button', { name: 'Versions' }).click();
	await expect(dialog.getByRole('img', { name: /The drawing as of/ })).toBeVisible();
	await dialog.getByRole('button', { name: 'Go back to this' }).click();
	await expect(title(page)).toHaveValue(/Ridge Post/);
	await page.keyboard.press('Control+z');
	await expect(title(page)).toHaveValue('Boat');
});

test('a file that something else has written is noticed, and never written over unasked', async ({ page }) => {
	await first(page);
	// A file of the browser's own is a real file handle, without the chooser of the operating system.
	await page.evaluate(() => {
		Object.assign(window, {
			showSaveFilePicker: async () => (await navigator.storage.getDirectory()).getFileHandle('plan.json', { create: true })
		});
	});
	await renamed(page, 'Plan');
	const save = page.getByRole('button', { name: 'Save', exact: true });
	await save.click();
	await expect(page.getByRole('status').filter({ hasText: 'Saved plan.json' })).toBeAttached();

	const change = (name: string) =>
		page.evaluate(async (text) => {
			await new Promise((resolve) => setTimeout(resolve, 20));
			const handle = await (await navigator.storage.getDirectory()).getFileHandle('plan.json');
			const file = await (await handle.getFile()).text();
			const writable = await handle.createWritable();
			await writable.write(file.replace('"Plan"', `"${text}"`));
			await writable.close();
		}, name);
	const contents = () =>
		page.evaluate(async () => (await (await (await navigator.storage.getDirectory()).getFileHandle('plan.json')).getFile()).text());

	await change('Theirs');
	await title(page).fill('Mine');
	await save.click();
	const dialog = page.getByRole('dialog');
	await expect(dialog).toContainText('plan.json was changed by another program');
	await dialog.getByRole('button', { name: 'Do not save' }).click();
	expect(await contents()).toContain('"Theirs"');

	await page.evaluate(() => window.dispatchEvent(new Event('focus')));
	await dialog.getByRole('button', { name: 'Show what is in the file' }).click();
	await expect(title(page)).toHaveValue('Theirs');
	await page.keyboard.press('Control+z');
	await expect(title(page)).toHaveValue('Mine');
	await save.click();
	await expect.poll(contents).toContain('"Mine"');

	// The way back to the file is kept, too.
	await page.reload();
	await settled(page);
	await title(page).fill('After loading the page again');
	await save.click();
	await expect.poll(contents).toContain('After loading the page again');
});
