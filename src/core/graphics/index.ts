/** How things are drawn, without saying on what. */
export type { Paint, Primitive, Style } from './primitives.ts';
