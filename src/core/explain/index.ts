/** Where figures come from. */
export { voltsLost, type BesideWay, type Rung, type RungKind, type VoltsLost } from './volts-lost.ts';
