import type { Workbench } from './context.ts';
import { viewsTexts } from './views-texts.ts';

/** Outlines to scale, or symbols: fetched the first time they are wanted. */
export async function toggleSymbols({ editor, view }: Workbench): Promise<void> {
	if (view.symbols) {
		view.symbols = null;
		return editor.announce(viewsTexts.symbolsOff);
	}
	try {
		view.symbols = (await import('#core/symbols')).SYMBOLS;
		editor.announce(viewsTexts.symbolsOn);
	} catch {
		editor.refuse(viewsTexts.notLoaded);
	}
}
