/**
 * The page is killed at random moments of editing: what is older than a second is there again, with its undo, and the
 * store opens. 20 times; 200 with LONG=1.
 */
import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { openApp } from './support/app.ts';
import { diagramText, title } from './support/kept.ts';

const LONG = process.env.LONG === '1';
const KILLS = LONG ? 200 : 20;
const LOST_MS = 1_000;

/** Repeatable: the same seed makes the same edits; moments of killing vary with the machine. */
function randomFrom(seed: number): () => number {
	let state = seed;
	return () => {
		state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
		return state / 2 ** 32;
	};
}

/** A state the diagram was seen in, and when. */
interface Known {
	readonly atMs: number;
	readonly text: string;
}

const KEYS = ['ArrowRight', 'ArrowDown', 'Control+d', 'Delete', 'r', 'Control+z', 'Control+z', 'Control+Shift+z'];

/** Edits until the page is gone, and notes the diagram after each edit. */
async function editUntilKilled(page: Page, random: () => number, known: Known[], count: () => number): Promise<void> {
	const note = async () => {
		const atMs = Date.now();
		known.push({ atMs, text: await diagramText(page) });
	};
	for (;;) {
		await page.getByRole('application').focus();
		if (random() < 0.7) await page.keyboard.press('Control+a');
		await page.keyboard.press(KEYS[Math.floor(random() * KEYS.length)]!);
		await note();
		await title(page).fill(`n${count()}`);
		await note();
	}
}

async function kill(context: BrowserContext, page: Page): Promise<void> {
	const session = await context.newCDPSession(page);
	const gone = page.waitForEvent('crash');
	void session.send('Page.crash').catch(() => undefined);
	await gone;
}

/** The number in the diagram's name, which only grows, and all else. A name nobody numbered comes before all. */
function apart(text: string): { readonly number: number; readonly rest: string } {
	const diagram = JSON.parse(text) as { titleBlock: { title: string } };
	const number = Number(/^n(\d+)$/.exec(diagram.titleBlock.title)?.[1] ?? -1);
	return { number, rest: JSON.stringify({ ...diagram, titleBlock: { ...diagram.titleBlock, title: '' } }) };
}

/**
 * An edit under way when the page died may be kept before it was noted, and so may the name that was entered before it.
 * Names entered within half a second are one step of undo, which can lead far back; so a state counts as one that was
 * when all but the name is the same, and the name is no older. One step away, back or forth, such a state must lie; this
 * tries the kept undo and redo, too.
 */
async function isBesideKnown(page: Page, known: readonly Known[]): Promise<boolean> {
	const states: string[] = [await diagramText(page)];
	await page.getByRole('application').focus();
	for (const keys of [['Control+z'], ['Control+Shift+z', 'Control+Shift+z']]) {
		for (const key of keys) await page.keyboard.press(key);
		states.push(await diagramText(page));
	}
	const seen = known.map(({ text }) => apart(text));
	return states.map(apart).some((state) => seen.some(({ number, rest }) => rest === state.rest && state.number >= number));
}

test(`killed ${KILLS} times while editing, nothing older than a second is lost`, async ({ context }, info) => {
	test.setTimeout(LONG ? 7_200_000 : 900_000);
	const seed = Number(process.env.SEED ?? 7);
	const random = randomFrom(seed);
	let edits = 0;
	let page = await context.newPage();
	await openApp(page);
	await expect(title(page)).toHaveValue(/Ridge Post/);
	let known: Known[] = [{ atMs: 0, text: await diagramText(page) }];
	let [underWay, longestLostMs] = [0, 0];

	for (let round = 1; round <= KILLS; round += 1) {
		const editing = editUntilKilled(page, random, known, () => (edits += 1)).catch(() => undefined);
		await new Promise((resolve) => setTimeout(resolve, 200 + random() * 1800));
		const killedMs = Date.now();
		await kill(context, page);
		await editing;
		await page.close();

		page = await context.newPage();
		await openApp(page);
		await expect(title(page)).not.toHaveValue('');
		const back = await diagramText(page);
		const due = known.findLastIndex(({ atMs }) => atMs <= killedMs - LOST_MS);
		const found = known.findLastIndex(({ text }) => text === back);
		const ages = known.slice(due).map(({ atMs }) => killedMs - atMs);
		const story = `seed ${seed}, kill ${round}: state ${found} of ${known.length} came back, ${due} was due; the states from there on were ${ages.join(', ')} ms old`;
		if (found >= due) {
			const lost = known[found + 1];
			if (lost) longestLostMs = Math.max(longestLostMs, killedMs - lost.atMs);
		} else {
			underWay += 1;
			expect(await isBesideKnown(page, known.slice(due)), story).toBe(true);
		}
		known = [...known.slice(-20), { atMs: 0, text: await diagramText(page) }];
	}
	const figures = `${KILLS} kills, ${2 * edits} edits; the oldest edit lost was ${longestLostMs} ms old; ${underWay} times an edit under way was kept`;
	console.log(figures);
	info.annotations.push({ type: 'figures', description: figures });
});
