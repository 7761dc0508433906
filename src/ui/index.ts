/** The interface: Svelte components. `Workbench` is the whole window, `Embedded` the page that others frame. */
export { default as Workbench } from './Workbench.svelte';
export { default as Embedded } from './share/Embedded.svelte';
export { isEmbedded } from './share/address.ts';
