/** The interface: Svelte components. `Workbench` is the whole window, `EMBEDDED` the page that others frame. */
export { default as Workbench } from './Workbench.svelte';
export { EMBEDDED } from './late-parts.ts';
export { default as LatePart } from './LatePart.svelte';
export { beginReading } from './language/index.ts';
export { isEmbedded } from './share/address.ts';
