/** A bus as a ladder: what flows along it, and the order of its circuits that asks least of it. */
export { barCases, barFigures, barOf, type Bar, type BarCase, type BarFigures, type Slot } from './bar.ts';
export { bestSequence } from './best-sequence.ts';
export { bestPositions, type PositionOptions, type Positions } from './best-positions.ts';
