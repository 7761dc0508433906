/** What the page may not do: run what came with a diagram, fetch from elsewhere, tell anybody. */
import { expect, test, type Page } from '@playwright/test';
import { pdfText } from '../support/pdf.ts';
import { readFileSync } from 'node:fs';
import { openApp, type App } from './support/app.ts';

declare global {
	interface Window {
		/** Set by whatever got in. */
		ran?: unknown;
		broken: string[];
	}
}

/** Counts what the browser refuses under the page's policy, from the first script on. */
async function watchPolicy(page: Page): Promise<() => Promise<string[]>> {
	await page.addInitScript(() => {
		window.broken = [];
		document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sample, sourceFile, lineNumber }) =>
			window.broken.push(`${effectiveDirective} ${blockedURI} "${sample}" at ${sourceFile}:${lineNumber}`)
		);
	});
	return () => page.evaluate(() => window.broken);
}

/** Opens an example, edits it, has it checked, saves the packet. */
async function tour(page: Page): Promise<App> {
	const app = await openApp(page);
	await page.getByRole('button', { name: 'Examples', exact: true }).click();
	await page
		.getByRole('dialog')
		.getByRole('button', { name: /Pagemoor/ })
		.first()
		.click();
	await expect(page).toHaveTitle(/Pagemoor/);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	await page.getByLabel('Name of the diagram').fill('Tour');
	await page.getByRole('tab', { name: 'Outline' }).click();
	await page.getByRole('treeitem').first().click();
	await expect(app.details).toContainText('Designation');
	await page.keyboard.press('Control+d');
	await page.getByRole('button', { name: 'Hand over', exact: true }).click();
	const dialog = page.getByRole('dialog', { name: 'Hand over' });
	const [download] = await Promise.all([page.waitForEvent('download'), dialog.getByRole('button', { name: 'Save PDF' }).click()]);
	expect(pdfText(readFileSync(await download.path()))).toContain('Conductor schedule');
	const [png] = await Promise.all([page.waitForEvent('download'), dialog.getByRole('button', { name: 'Save PNG' }).click()]);
	expect(
		readFileSync(await png.path())
			.subarray(1, 4)
			.toString()
	).toBe('PNG');
	await dialog.getByRole('button', { name: 'Close' }).click();
	return app;
}

test('a whole tour breaks no line of the policy and asks nothing of any other host', async ({ page, baseURL }) => {
	test.setTimeout(180_000);
	const broken = await watchPolicy(page);
	const asked = new Set<string>();
	page.on('request', (request) => asked.add(new URL(request.url()).origin));
	page.on('websocket', (socket) => asked.add(socket.url()));
	await tour(page);
	expect(await broken()).toEqual([]);
	// Files made in the page are downloaded from the page itself.
	asked.delete('null');
	expect([...asked]).toEqual([new URL(baseURL!).origin]);
});

test('what gets into the page cannot run, load or send', async ({ page }) => {
	const broken = await watchPolicy(page);
	await page.goto('/');
	await expect(page.getByRole('application', { name: /^Drawing/ })).toBeVisible();
	const refused = await page.evaluate(async () => {
		// While it is called, the browser's driver may do what the page may not.
		await new Promise((resolve) => setTimeout(resolve, 50));
		const tried: Record<string, string> = {};
		const attempt = async (name: string, work: () => unknown) => {
			try {
				await work();
				tried[name] = 'done';
			} catch (error) {
				tried[name] = (error as Error).name;
			}
		};
		await attempt('markup', () => (document.body.innerHTML += '<img src=x onerror="window.ran=1">'));
		await attempt('script text', () => (document.createElement('script').text = 'window.ran = 2'));
		await attempt('script address', () => (document.createElement('script').src = 'https://example.org/x.js'));
		await attempt('eval', () => (Reflect.get(window, 'eval') as (code: string) => void)('window.ran = 3'));
		await attempt('timer', () => (window.setTimeout as (code: string) => void)('window.ran = 4'));
		await attempt('worker', () => new Worker(URL.createObjectURL(new Blob(['1']))));
		await attempt('fetch', () => fetch('https://example.org/'));
		await attempt('handler', () => document.body.setAttribute('onclick', 'window.ran = 5'));
		document.body.click();
		const image = new Image();
		await attempt(
			'picture',
			() =>
				new Promise((resolve, reject) => {
					image.onload = resolve;
					image.onerror = () => reject(new TypeError('not loaded'));
					image.src = 'https://example.org/x.png';
				})
		);
		return tried;
	});
	expect(Object.entries(refused).filter(([, how]) => how === 'done')).toEqual([]);
	expect(await page.evaluate(() => window.ran)).toBeUndefined();
	const lines = (await broken()).join('\n');
	for (const directive of ['require-trusted-types-for', 'connect-src', 'img-src']) expect(lines).toContain(directive);
});

test('text of a file that looks like markup is shown as text everywhere, and runs nowhere', async ({ page }, info) => {
	test.setTimeout(120_000);
	const broken = await watchPolicy(page);
	const app = await openApp(page);
	const markup = '<img src=x onerror="window.ran=1"><script>window.ran=2</script>';
	const file = JSON.parse(readFileSync('static/examples/ridge-post-before.json', 'utf8')) as {
		titleBlock: { title: string };
		parts: Record<string, { label: string; note: string }>;
		conductors: Record<string, { label: string; lengthM: null }>;
	};
	file.titleBlock.title = `T ${markup}`;
	for (const [id, part] of Object.entries(file.parts)) Object.assign(part, { label: `${id} ${markup}`, note: markup });
	for (const [id, conductor] of Object.entries(file.conductors)) Object.assign(conductor, { label: `${id} ${markup}`, lengthM: null });
	const chooser = page.waitForEvent('filechooser');
	await page.getByRole('button', { name: 'Open', exact: true }).click();
	await (await chooser).setFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(file)) });
	await expect(page.getByLabel('Name of the diagram')).toHaveValue(`T ${markup}`);
	await expect(app.findings.getByRole('article').filter({ hasText: markup }).first()).toBeVisible();
	await page.getByRole('tab', { name: 'Outline' }).click();
	const row = page.getByRole('treeitem').filter({ hasText: markup }).first();
	await row.click();
	await expect(app.details.getByLabel('Designation')).toHaveValue(new RegExp('<img src=x'));
	await page.screenshot({ path: info.outputPath('markup.png') });
	await page.getByRole('button', { name: 'Hand over', exact: true }).click();
	const dialog = page.getByRole('dialog', { name: 'Hand over' });
	const [pdf] = await Promise.all([page.waitForEvent('download'), dialog.getByRole('button', { name: 'Save PDF' }).click()]);
	expect(pdfText(readFileSync(await pdf.path()))).toContain('<img');
	const [svg] = await Promise.all([page.waitForEvent('download'), dialog.getByRole('button', { name: 'Save SVG' }).click()]);
	const drawing = readFileSync(await svg.path(), 'utf8');
	expect(drawing).toContain('&lt;img');
	expect(drawing).not.toContain('<img');
	expect(drawing).not.toContain('<script');
	expect(await page.evaluate(() => window.ran)).toBeUndefined();
	expect(await page.locator('img[src="x"]').count()).toBe(0);
	expect(await broken()).toEqual([]);
});

test('a file that is refused leaves the open diagram as it was', async ({ page }) => {
	const app = await openApp(page);
	await expect(page).toHaveTitle(/Ridge Post/);
	await page.getByLabel('Name of the diagram').fill('Mine');
	for (const text of ['{"format":"wireworthy-diagram","version":1,"__proto__":{"x":1}}', '['.repeat(100_000), '', '{"format":"x"}']) {
		const chooser = page.waitForEvent('filechooser');
		await page.getByRole('button', { name: 'Open', exact: true }).click();
		await (await chooser).setFiles({ name: 'bad.json', mimeType: 'application/json', buffer: Buffer.from(text) });
		const dialog = page.getByRole('dialog');
		await expect(dialog).toContainText('was not opened');
		await page.keyboard.press('Escape');
		await expect(dialog).toBeHidden();
		await expect(page.getByLabel('Name of the diagram')).toHaveValue('Mine');
	}
	await expect(app.findings.getByRole('article').first()).toBeVisible();
});

test('a script that stands in the page does not run', async ({ page }) => {
	const broken = await watchPolicy(page);
	await page.route('**/', async (route) => {
		const response = await route.fetch();
		const body = (await response.text()).replace(
			'</body>',
			'<script>window.ran = 1</script><img src="x:" onerror="window.ran = 2"></body>'
		);
		await route.fulfill({ response, body });
	});
	await page.goto('/');
	await expect(page.getByRole('application', { name: /^Drawing/ })).toBeVisible();
	expect(await page.evaluate(() => window.ran)).toBeUndefined();
	const lines = (await broken()).join('\n');
	expect(lines).toContain('script-src-elem');
	expect(lines).toContain('script-src-attr');
});
