/** Dialogs that are fetched when they are opened, by their name in the view. */
const use = () => import('../use/UseDialog.svelte');
const onSite = () => import('../site/OnSiteDialog.svelte');

export const LATE = {
	language: () => import('../language/LanguageDialog.svelte'),
	about: () => import('./AboutDialog.svelte'),
	'full-bus': () => import('../full-bus/FullBusDialog.svelte'),
	positions: () => import('../full-bus/PositionsDialog.svelte'),
	sizing: () => import('../sizing/SizingDialog.svelte'),
	diagrams: () => import('../keeping/DiagramsDialog.svelte'),
	handoff: () => import('../handoff/HandoffDialog.svelte'),
	revisions: () => import('../revisions/RevisionsDialog.svelte'),
	cases: use,
	energy: use,
	short: () => import('../site/ShortDialog.svelte'),
	assembly: onSite,
	readings: onSite
};

export const isLate = (dialog: string | null): dialog is keyof typeof LATE => dialog !== null && Object.hasOwn(LATE, dialog);
