/** A module of the program, served to a page of the built program: what no button leads to yet runs under the page's own policy. */
import type { Page } from '@playwright/test';
import { build, type Rolldown } from 'vite';

/** @param entry from the root of the project; answers with the address to import in the page */
export async function serveModule(page: Page, entry: string): Promise<string> {
	const built = await build({
		configFile: false,
		logLevel: 'silent',
		build: { write: false, minify: false, lib: { entry, formats: ['es'] } }
	});
	const { output } = (built as Rolldown.RolldownOutput[])[0]!;
	const address = `/test-module/${entry.replace(/\W/g, '-')}.js`;
	await page.route(`**${address}`, (route) => route.fulfill({ contentType: 'text/javascript', body: output[0].code }));
	return address;
}
