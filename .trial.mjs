import { chromium } from 'playwright-core';
import { CHROMIUM_FLAGS } from './tests/e2e/chromium.mjs';
const port = 4473;
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: CHROMIUM_FLAGS });
const errors = [];
async function open(width, height, dark, touch) {
	const context = await browser.newContext({ viewport: { width, height }, colorScheme: dark ? 'dark' : 'light', hasTouch: !!touch, serviceWorkers: 'block' });
	const page = await context.newPage();
	page.on('pageerror', (e) => errors.push(e.message));
	page.on('console', (m) => m.type() === 'error' && errors.push(m.text()));
	await page.goto(`http://127.0.0.1:${port}/`);
	await page.getByText('To do').first().waitFor({ timeout: 30000 });
	await page.waitForTimeout(800);
	return page;
}
const at = (page, key) => page.evaluate((k) => window.wireworthy.clientPoint(k), key);
{
	const page = await open(1440, 900, false);
	await page.keyboard.press('d');
	await page.waitForTimeout(500);
	await page.screenshot({ path: '/tmp/ww/drawshots/dialog.png' });
	await page.getByRole('button', { name: 'Engine space' }).click();
	const items = JSON.parse(await page.evaluate(() => window.wireworthy.diagramText()));
	const keys = Object.keys(items.parts);
	const p = await at(page, 'part:' + keys[0]);
	await page.mouse.move(p.x - 90, p.y - 90); await page.mouse.down(); await page.mouse.move(p.x + 20, p.y + 20, { steps: 4 }); await page.mouse.move(p.x + 140, p.y + 100, { steps: 4 });
	await page.screenshot({ path: '/tmp/ww/drawshots/area-drag.png' });
	await page.mouse.up();
	await page.waitForTimeout(1200);
	await page.screenshot({ path: '/tmp/ww/drawshots/area.png' });
	await page.keyboard.press('n');
	const q = await at(page, 'part:' + keys[3]);
	await page.mouse.move(q.x, q.y); await page.mouse.down(); await page.mouse.move(q.x + 60, q.y + 60, { steps: 4 }); await page.mouse.move(q.x + 80, q.y + 120, { steps: 4 }); await page.mouse.up();
	await page.waitForTimeout(600);
	await page.getByLabel('Words').fill('Grommet where the cable goes through the bulkhead; seal it afterwards.');
	await page.waitForTimeout(800);
	await page.screenshot({ path: '/tmp/ww/drawshots/note.png' });
	await page.keyboard.press('Escape');
	// drag a part to see guides
	const r = await at(page, 'part:' + keys[4]);
	await page.mouse.move(r.x, r.y); await page.mouse.down(); await page.mouse.move(r.x + 30, r.y + 12, { steps: 4 }); await page.mouse.move(r.x + 42, r.y + 4, { steps: 4 });
	await page.screenshot({ path: '/tmp/ww/drawshots/guides.png' });
	await page.mouse.up();
	await page.keyboard.press('Control+a');
	await page.waitForTimeout(500);
	await page.screenshot({ path: '/tmp/ww/drawshots/many.png' });
	await page.getByRole('tab', { name: 'Outline' }).click();
	await page.waitForTimeout(400);
	await page.getByRole('treeitem', { name: /Engine space/ }).click();
	await page.keyboard.press('Control+l');
	await page.waitForTimeout(600);
	await page.screenshot({ path: '/tmp/ww/drawshots/outline.png' });
	await page.getByRole('button', { name: /^Theme/ }).click().catch(() => {});
}
console.log(errors);
await browser.close();
