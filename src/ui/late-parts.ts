/** What of the window is fetched after it has opened. Dialogs have a list of their own: dialogs/late.ts. */
import { Late } from './late.svelte.ts';

export const SELECTION_FORM = new Late(() => import('./inspector/SelectionForm.svelte'));
export const SETTINGS_FORM = new Late(() => import('./inspector/SettingsForm.svelte'));
/** What a right click or long press offers. */
export const ITEM_MENU = new Late(() => import('./dialogs/ItemMenu.svelte'));
export const LENS_LEGEND = new Late(() => import('./lens/LensLegend.svelte'));
/** Says aloud what a check has brought. */
export const NEW_FINDINGS = new Late(() => import('./findings/NewFindings.svelte'));
export const OUTLINE = new Late(() => import('./outline/Outline.svelte'));
export const REMARKS_PANEL = new Late(() => import('./review/RemarksPanel.svelte'));
export const CHANGES_PANEL = new Late(() => import('./revisions/ChangesPanel.svelte'));
export const GUIDE = new Late(() => import('./guide/GuidePanel.svelte'));
export const EMBEDDED = new Late(() => import('./share/Embedded.svelte'));

/** Fetches what the next click will most likely need, once nothing else is to be done. Returns how to call it off. */
export function fetchWhenIdle(): () => void {
	return whenIdle(() =>
		NEW_FINDINGS.load()
			.then(() => ITEM_MENU.load())
			.then(() => SETTINGS_FORM.load())
			.then(() => SELECTION_FORM.load())
	);
}

/** Runs it once nothing else is to be done. Returns how to call it off. */
export function whenIdle(run: () => unknown): () => void {
	if (typeof requestIdleCallback === 'undefined') {
		const timer = setTimeout(run, 1000);
		return () => clearTimeout(timer);
	}
	const idle = requestIdleCallback(run);
	return () => cancelIdleCallback(idle);
}
