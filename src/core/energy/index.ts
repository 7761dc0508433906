/** A day's use against a day's charging and what the bank holds. */
export { energyBalance } from './balance.ts';
export type { BatteryRow, EnergyBalance, LoadRow, NotGiven, SourceRow } from './types.ts';
