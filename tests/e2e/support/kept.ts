/** Looks into the store of a browser from a page of the same origin that runs nothing, and breaks things there. */
import { expect, type BrowserContext, type Page } from '@playwright/test';

/** A page of the origin that is not the app. */
export async function bystander(context: BrowserContext): Promise<Page> {
	const page = await context.newPage();
	await page.goto('/icon.svg');
	return page;
}

/** A store as a later version of the program would leave it. */
export const makeNewerStore = (page: Page): Promise<void> =>
	page.evaluate(
		() =>
			new Promise<void>((resolve, reject) => {
				const open = indexedDB.open('wireworthy', 99);
				open.onsuccess = () => {
					open.result.close();
					resolve();
				};
				open.onerror = () => reject(open.error!);
			})
	);

export const storeVersion = (page: Page): Promise<number | undefined> =>
	page.evaluate(async () => (await indexedDB.databases()).find(({ name }) => name === 'wireworthy')?.version);

/** Cuts the text of the newest step in half, as a bad disk might. */
export const damageLastStep = (page: Page): Promise<void> =>
	page.evaluate(
		() =>
			new Promise<void>((resolve, reject) => {
				const open = indexedDB.open('wireworthy');
				open.onerror = () => reject(open.error!);
				open.onsuccess = () => {
					const journal = open.result.transaction('journal', 'readwrite').objectStore('journal');
					journal.openCursor(null, 'prev').onsuccess = ({ target }) => {
						const cursor = (target as IDBRequest<IDBCursorWithValue>).result;
						cursor.update({ ...cursor.value, text: cursor.value.text.slice(0, cursor.value.text.length / 2) });
					};
					journal.transaction.oncomplete = () => {
						open.result.close();
						resolve();
					};
				};
			})
	);

export const diagramText = (page: Page): Promise<string> => page.evaluate(() => window.wireworthy!.diagramText());

/** Until every change is on the disk. */
export const kept = (page: Page): Promise<void> => expect(page.getByRole('button', { name: 'Kept', exact: true })).toBeVisible();

export const title = (page: Page) => page.getByLabel('Name of the diagram');
