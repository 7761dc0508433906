/** The window: everything around and over the sheet. */
export { default as Workbench } from './Workbench.svelte';
