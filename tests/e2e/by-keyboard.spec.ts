/** The drawing without eyes and without a mouse: keys alone, the tree as it is read out, large text, little motion. */
import { expect, test, type Page } from '@playwright/test';
import { openApp } from './support/app.ts';

const tree = (page: Page) => page.getByRole('tree', { name: 'Parts, their studs and what lands on them' });
const row = (page: Page, name: string | RegExp) => tree(page).getByRole('treeitem', { name });
const focused = (page: Page) => page.evaluate(() => document.activeElement?.querySelector('.text')?.textContent ?? '');
const diagram = async (page: Page) =>
	JSON.parse(await page.evaluate(() => window.wireworthy!.diagramText())) as {
		parts: Record<string, { label: string; at: { x: number; y: number } }>;
		conductors: Record<string, { gauge: { size: string }; from: { part: string }; to: { part: string } }>;
	};

/** As far as a row, with the arrow keys. */
async function walkTo(page: Page, text: string): Promise<void> {
	for (let step = 0; step < 30 && (await focused(page)) !== text; step++) await page.keyboard.press('ArrowDown');
	expect(await focused(page)).toBe(text);
}

test('a circuit is placed, moved, wired, renamed, sized and judged by keys alone', async ({ page }) => {
	await openApp(page);
	await page.getByRole('button', { name: 'New', exact: true }).press('Enter');
	const search = page.getByRole('searchbox', { name: 'Find a part' });
	for (const name of ['Battery', 'Load']) {
		await search.focus();
		await page.keyboard.type(name);
		await page.keyboard.press('Enter');
		await search.fill('');
	}
	await expect.poll(async () => Object.keys((await diagram(page)).parts).sort()).toEqual(['E1', 'G1']);

	// The sheet has the keyboard after placing; arrows move what was placed.
	const before = (await diagram(page)).parts['E1']!.at;
	await page.getByRole('application', { name: /^Drawing/ }).focus();
	await page.keyboard.press('Shift+ArrowDown');
	await expect.poll(async () => (await diagram(page)).parts['E1']!.at.y).toBeGreaterThan(before.y);

	await page.getByRole('tab', { name: 'Outline' }).press('Enter');
	await row(page, /^G1/).focus();
	await page.keyboard.press('ArrowRight');
	await page.keyboard.press('ArrowDown');
	await page.keyboard.press('c');
	await expect(page.getByText('Choose the stud where the conductor from G1 + ends.')).toBeVisible();
	await walkTo(page, 'E1');
	await page.keyboard.press('ArrowRight');
	await page.keyboard.press('ArrowDown');
	await page.keyboard.press('c');
	await expect
		.poll(async () => Object.values((await diagram(page)).conductors).map(({ from, to }) => `${from.part} ${to.part}`))
		.toEqual(['G1 E1']);

	// Back along it to the battery.
	await row(page, /^\+/).last().focus();
	await page.keyboard.press('ArrowRight');
	await page.keyboard.press('ArrowDown');
	await page.keyboard.press('ArrowRight');
	await expect.poll(() => focused(page)).toBe('+');
	await expect(page.getByRole('region', { name: 'Details' }).getByRole('heading', { name: /Stud G1 \+/ })).toBeVisible();

	await page.keyboard.press('Home');
	await page.keyboard.press('F2');
	await page.keyboard.type('House bank');
	await page.keyboard.press('Enter');
	await expect(row(page, /^House bank/)).toBeFocused();

	await page.keyboard.press('End');
	await expect(row(page, /^Findings/)).toBeFocused();
	await page.keyboard.press('Enter');
	await page.keyboard.press('ArrowDown');
	await page.keyboard.press('Enter');
	await expect(page.getByRole('region', { name: 'Findings' }).locator('article.focused')).toBeVisible();

	await row(page, /^Conductors/).focus();
	await page.keyboard.press('ArrowRight');
	await page.keyboard.press('ArrowDown');
	const size = async () => Object.values((await diagram(page)).conductors)[0]!.gauge.size;
	const thin = await size();
	await page.keyboard.press('+');
	await expect.poll(size).not.toBe(thin);
	await page.keyboard.press('Delete');
	await expect.poll(async () => Object.keys((await diagram(page)).conductors)).toEqual([]);
	await expect(tree(page).getByRole('treeitem', { name: /^Conductors/ })).toHaveCount(0);
});

test('new findings are said, and those of a diagram that is opened are not', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	const voice = page.locator('[data-new-findings]');
	await expect(voice).toHaveText('');
	await page.getByRole('tab', { name: 'Outline' }).click();
	await tree(page).getByRole('treeitem').first().focus();
	await page.keyboard.press('ArrowDown');
	await page.keyboard.press('Delete');
	await expect(voice).toHaveText(/New (danger|error|warning|note): |gone\./);
});

test('the tree reads as parts, studs, what lands on them, conductors and findings', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	await page.getByRole('tab', { name: 'Outline' }).click();
	await tree(page).getByRole('treeitem').first().focus();
	await page.keyboard.press('ArrowRight');
	await page.keyboard.press('ArrowDown');
	await page.keyboard.press('ArrowRight');
	// What a screen reader is given: roles, names, states, levels.
	const heard = await tree(page)
		.getByRole('treeitem')
		.evaluateAll((rows) =>
			rows.slice(0, 4).map((item) => ({
				level: item.getAttribute('aria-level'),
				expanded: item.getAttribute('aria-expanded'),
				place: `${item.getAttribute('aria-posinset')} of ${item.getAttribute('aria-setsize')}`,
				text: item.textContent.trim().length > 0
			}))
		);
	expect(heard.map(({ level, expanded }) => [level, expanded])).toEqual([['1', 'true'], ['2', 'true'], ['3', null], expect.anything()]);
	expect(heard.every(({ text, place }) => text && /^[1-9]\d* of [1-9]\d*$/.test(place))).toBe(true);
	const snapshot = await tree(page).ariaSnapshot();
	expect(snapshot).toMatch(/treeitem "[^"]+" \[expanded\]/);
	expect(snapshot).toMatch(/treeitem "Conductors \(\d+\)/);
	expect(snapshot).toMatch(/treeitem "Findings \(\d+\)/);
	await expect(tree(page)).toHaveAccessibleDescription(/Arrow keys walk the tree/);

	// Every control of the window has a name and a role.
	const nameless = await page.evaluate(() =>
		[...document.querySelectorAll('button, input, select, textarea, [role=button], [role=tab]')]
			.filter((element) => element.checkVisibility() && !element.closest('[aria-hidden=true]'))
			.filter((element) => {
				const labelled = (element as HTMLInputElement).labels?.length ?? 0;
				return !labelled && !element.getAttribute('aria-label') && !element.getAttribute('aria-labelledby') && !element.textContent.trim();
			})
			.map((element) => element.outerHTML.slice(0, 120))
	);
	expect(nameless).toEqual([]);
});

test('text of twice the size is not cut', async ({ page }) => {
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
	await expect.poll(() => page.evaluate(() => getComputedStyle(document.body).fontSize)).toBe('26px');
	const cut = () =>
		page.evaluate(() => {
			const scrolls = (element: Element | null): boolean =>
				element !== null && (/(auto|scroll)/.test(getComputedStyle(element).overflow) || scrolls(element.parentElement));
			return [...document.querySelectorAll('button, label, h2, h3, h4, p, li, legend, summary, td, th')]
				.filter((element) => element.checkVisibility({ visibilityProperty: true }) && !element.closest('.visually-hidden'))
				.filter((element) => {
					const { left, right, width } = element.getBoundingClientRect();
					const outside = width > 1 && (left < -1 || right > innerWidth + 1) && !scrolls(element.parentElement);
					const style = getComputedStyle(element);
					const clipped = style.overflowX === 'hidden' && element.scrollWidth > element.clientWidth + 1 && !element.getAttribute('title');
					return outside || clipped;
				})
				.map((element) => `${element.tagName} ${element.className} ${element.textContent.trim().slice(0, 40)}`);
		});
	await expect.poll(cut).toEqual([]);
	await page.getByRole('tab', { name: 'Outline' }).click();
	await expect(tree(page).getByRole('treeitem').first()).toBeVisible();
	await expect.poll(cut).toEqual([]);
	await page.getByRole('button', { name: 'Find', exact: true }).click();
	await expect(page.getByRole('dialog', { name: 'Find' }).getByRole('option').first()).toBeVisible();
	await expect.poll(cut).toEqual([]);
});

test('with reduced motion nothing glides', async ({ page }) => {
	await page.emulateMedia({ reducedMotion: 'reduce' });
	const app = await openApp(page);
	await expect(app.findings.getByRole('article').first()).toBeVisible();
	const moving = await page.evaluate(
		() =>
			[...document.querySelectorAll('*')]
				.map((element) => getComputedStyle(element))
				.filter(({ transitionDuration, animationDuration }) => /[1-9]/.test(transitionDuration) || /[1-9]/.test(animationDuration)).length
	);
	expect(moving).toBe(0);
	// The view is where it is going at once: two readings without a frame between them are the same.
	await app.canvas.focus();
	const key = `part:${Object.keys((await diagram(page)).parts)[0]}`;
	await page.keyboard.press('+');
	const [a, b] = await page.evaluate(async (wanted) => {
		const at = () => window.wireworthy!.clientPoint(wanted as never);
		const first = at();
		await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
		return [first, at()];
	}, key);
	expect(b).toEqual(a);
});
