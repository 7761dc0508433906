/** Where figures come from. */
export { voltsLost, type BesideWay, type Rung, type RungKind, type VoltsLost } from './volts-lost.ts';
export { LENSES, lensValues, type LensBand, type LensId, type LensValue, type LensView } from './lens.ts';
export { BAND_LOOKS, type BandIndex, type BandLook } from './lens-bands.ts';
