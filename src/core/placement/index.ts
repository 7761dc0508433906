/** Where on a bus more circuits may land. */
export type { FullBusOptions, FullBusRequest, NewCircuit, PlacementCost, PlacementFigures, PlacementOption } from './request.ts';
export { fullBusOptions } from './full-bus-options.ts';
