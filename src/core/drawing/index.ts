/** Diagram → scene: one description for canvas, SVG and PDF. */
export type { DrawnItem, DrawnTerminal, Scene } from './types.ts';
