/** Network → voltages and currents of each operating case. Knows nothing of parts. */
export type { OperatingPoint } from './types.ts';
