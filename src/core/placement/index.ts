/** Where on a bus circuits belong. */
export { barFigures, barOf, type Bar, type BarCase, type BarFigures } from './bar.ts';
export { bestSequence } from './best-sequence.ts';
export { bestPositions, type PositionOptions, type Positions } from './best-positions.ts';
