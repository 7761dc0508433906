/** Dialogs, each fetched when it is opened, by their name in the view. */
import type { Component } from 'svelte';
import type { DialogName } from '../view.svelte.ts';

export type LateDialog = () => Promise<{ readonly default: Component<{ close: () => void }> }>;

const use = () => import('../use/UseDialog.svelte');
const onSite = () => import('../site/OnSiteDialog.svelte');

export const LATE: Readonly<Record<DialogName, LateDialog>> = {
	help: () => import('./HelpDialog.svelte'),
	cautions: () => import('./CautionsDialog.svelte'),
	examples: () => import('./ExamplesDialog.svelte'),
	starts: () => import('../guide/StartsDialog.svelte'),
	language: () => import('../language/LanguageDialog.svelte'),
	about: () => import('./AboutDialog.svelte'),
	'full-bus': () => import('../full-bus/FullBusDialog.svelte'),
	positions: () => import('../full-bus/PositionsDialog.svelte'),
	sizing: () => import('../sizing/SizingDialog.svelte'),
	diagrams: () => import('../keeping/DiagramsDialog.svelte'),
	handoff: () => import('../handoff/HandoffDialog.svelte'),
	find: () => import('../find/FindDialog.svelte'),
	'part-maker': () => import('../own-parts/PartMakerDialog.svelte'),
	drawing: () => import('../drawing/DrawingDialog.svelte'),
	arrange: () => import('../drawing/ArrangeDialog.svelte'),
	scale: () => import('../drawing/ScaleDialog.svelte'),
	revisions: () => import('../revisions/RevisionsDialog.svelte'),
	cases: use,
	energy: use,
	short: () => import('../site/ShortDialog.svelte'),
	assembly: onSite,
	readings: onSite
};
