/** Network → what flows into a short anywhere, and what opens when. */
export { faultsOf, type DeviceFault, type Faults } from './faults-of.ts';
export type { Condition } from './fault-circuit.ts';
export { shortAt } from './short-at.ts';
export type { Short } from './short.ts';
export { openingAt, selectivity, type Opening, type Selectivity } from './opening.ts';
export { clearingDistanceM } from './clearing-distance.ts';
export { shortStory, type ShortStory, type OpeningBand } from './short-story.ts';
export { HELD_S, type DropShort, type Pace, type Stretch } from './drop-short.ts';
export { darkLoads } from './dark-loads.ts';
