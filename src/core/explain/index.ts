/** Where figures come from. */
export { explain } from './explain.ts';
export type { Explanation, Input, Origin, Related } from './explanation.ts';
export {
	CASE_FIGURES,
	CONDUCTOR_FIGURES,
	ENERGY_FIGURES,
	JOINT_FIGURES,
	type CaseFigure,
	type ConductorFigure,
	type EnergyFigure,
	type EnergyUnit,
	type FigureId,
	type JointFigure,
	type LinkRef
} from './figure-id.ts';
export { partFigures, type FigureGroup, type FigureRow } from './part-figures.ts';
export { caseCells, type CaseCells, type CaseResultCell } from './case-figures.ts';
export { startOf, type Start, type StartDevice, type StartVerdict } from './start.ts';
export { voltsLost, type BesideWay, type Rung, type RungKind, type VoltsLost } from './volts-lost.ts';
export { LENSES, lensValues, type LensBand, type LensId, type LensValue, type LensView } from './lens.ts';
export { BAND_LOOKS, type BandIndex, type BandLook } from './lens-bands.ts';
export { studyOf } from './study-of.ts';
