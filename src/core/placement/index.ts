/** Where on a bus circuits belong, and where more of them may land. */
export { barFigures, barOf, type Bar, type BarCase, type BarFigures } from './bar.ts';
export { bestSequence } from './best-sequence.ts';
export { bestPositions, type PositionOptions, type Positions } from './best-positions.ts';
export type { FullBusOptions, FullBusRequest, NewCircuit, PlacementCost, PlacementFigures, PlacementOption } from './request.ts';
export { fullBusOptions } from './full-bus-options.ts';
