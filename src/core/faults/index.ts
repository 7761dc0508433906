/** Network → what flows into a short anywhere, and what opens when. */
export { faultsOf, type DeviceFault, type Faults } from './faults-of.ts';
export type { Condition } from './fault-circuit.ts';
export type { Short } from './short.ts';
export { openingAt, selectivity, type Opening, type Selectivity } from './opening.ts';
export { clearingDistanceM } from './clearing-distance.ts';
