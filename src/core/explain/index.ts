/** Where figures come from. */
export { voltsLost, type BesideWay, type Rung, type RungKind, type VoltsLost } from './volts-lost.ts';
export { LENSES, lensValues, type LensBand, type LensId, type LensValue, type LensView } from './lens.ts';
export { BAND_LOOKS, type BandIndex, type BandLook } from './lens-bands.ts';
export { explain } from './explain.ts';
export {
	CONDUCTOR_FIGURES,
	type ConductorFigure,
	type Explanation,
	type FigureId,
	type Input,
	type Origin,
	type StudFigure
} from './explanation.ts';
