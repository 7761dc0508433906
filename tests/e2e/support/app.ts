/**
 * The editor as a person meets it: things are found by role and label; only gestures on the drawing need
 * coordinates, and those are asked from the app, never written in a test.
 */
import { expect, type Locator, type Page } from '@playwright/test';
import type { ItemKey } from '#core/diagram';
import type {} from '../../../src/ui/test-hook.ts';
import { atRest, boxAtRest } from './rest.ts';

export interface App {
	readonly page: Page;
	readonly canvas: Locator;
	readonly findings: Locator;
	readonly details: Locator;
	/** The finding that says this. */
	finding(text: string): Locator;
	/** Where an item is on the screen. */
	at(key: string): Promise<{ x: number; y: number }>;
	/** Takes a part from the shelf and puts it at a share of the free canvas; answers with its designation. */
	place(name: string, xShare: number, yShare: number): Promise<string>;
	/** Draws a conductor from one stud to another, "B1.pos" to "Q1.in", and enters its length where the eye is led to. */
	connect(from: string, to: string, lengthM?: number): Promise<void>;
	drag(from: { x: number; y: number }, to: { x: number; y: number }): Promise<void>;
	/** Selects an item by clicking it. */
	select(key: string): Promise<void>;
}

/** Opens the editor as on a first visit; pickers of the operating system are replaced by plain upload and download. */
export async function openApp(page: Page): Promise<App> {
	const errors: string[] = [];
	page.on('pageerror', (error) => errors.push(error.message));
	page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
	await page.addInitScript(() => {
		Reflect.deleteProperty(window, 'showOpenFilePicker');
		Reflect.deleteProperty(window, 'showSaveFilePicker');
	});
	await slowDown(page);
	await page.goto('/');
	const canvas = page.getByRole('application', { name: /^Drawing/ });
	await expect(canvas).toBeVisible();
	await settled(page);
	const app = appOn(page, canvas);
	page.on('close', () => expect(errors).toEqual([]));
	return app;
}

/** Until what is opened by itself is on the sheet: what was open last, what is in the address, or the example. */
export const settled = (page: Page): Promise<void> => expect(page.locator('.workbench[aria-busy=false]')).toBeAttached();

/** With E2E_SLOW=6 the page's processor is six times slower: finds what only holds on a fast machine. */
export async function slowDown(page: Page): Promise<void> {
	const rate = Number(process.env.E2E_SLOW ?? 1);
	if (rate > 1) await (await page.context().newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate });
}

function appOn(page: Page, canvas: Locator): App {
	const at = (key: string) => atRest(() => page.evaluate((k) => window.wireworthy?.clientPoint(k as ItemKey) ?? null, key));

	const details = page.getByRole('region', { name: 'Details' });

	const drag = async (from: { x: number; y: number }, to: { x: number; y: number }) => {
		await page.mouse.move(from.x, from.y);
		await page.mouse.down();
		await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 });
		await page.mouse.move(to.x, to.y, { steps: 4 });
		await page.mouse.up();
	};

	return {
		page,
		canvas,
		findings: page.getByRole('region', { name: 'Findings' }),
		details,
		at,
		drag,
		finding: (text) => page.getByRole('region', { name: 'Findings' }).getByRole('article').filter({ hasText: text }),
		async place(name, xShare, yShare) {
			await page.getByRole('button', { name, exact: true }).click();
			const box = await boxAtRest(canvas);
			// The panels lie over the canvas on both sides.
			const [left, right, top, bottom] = [260, box.width - 350, 60, box.height - 60];
			await page.mouse.click(left + xShare * (right - left), top + yShare * (bottom - top));
			const label = await details.getByLabel('Designation').inputValue();
			expect(label).not.toBe('');
			return label;
		},
		async connect(from, to, lengthM) {
			await drag(await at(`stud:${from}`), await at(`stud:${to}`));
			if (lengthM === undefined) return;
			await details.getByLabel('Length, one way').fill(String(lengthM));
			await page.keyboard.press('Enter');
		},
		async select(key) {
			const { x, y } = await at(key);
			await page.mouse.click(x, y);
		}
	};
}
