/** Two states of a drawing → what differs, in the trade's words, and what that does. */
export { compareContents } from './compare.ts';
export { consequencesOf, type Consequences, type MovedFigure } from './consequences.ts';
export type { ChangeSort, DrawingChange } from './change.ts';
export { asDiagram } from './as-diagram.ts';
