/** A day's use against a day's charging and what the bank holds. */
export { energyBalance } from './balance.ts';
export type { EnergyBalance, LoadRow, NotGiven, SourceRow } from './types.ts';
