/** Two states of a drawing → what differs, in the trade's words, and what that does. */
export { compareContents } from './compare.ts';
export { consequencesOf, retestOf, type Consequences, type MovedFigure } from './consequences.ts';
export type { ChangeSort, DrawingChange } from './change.ts';
export { drawnChanges } from './drawn-changes.ts';
export { conductorText, studText } from './names.ts';
export { asDiagram } from './as-diagram.ts';
