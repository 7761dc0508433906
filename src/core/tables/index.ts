/** Published numbers, each with its source and how sure we are of it. */
export { ARRAY_CONDUCTOR_FACTOR, BRIGHT_SUN_FACTOR, COLD_VOLTAGE_FACTOR, type ColdStep } from './nec-690.ts';
export { FUSE_FAMILIES, THREADS, type FuseFamilyId, type ThreadId } from './ids.ts';
export type { Confidence, Sourced } from './sourced.ts';

/** Copper. */
export { CONDUCTIVITY_56_OHM_MM2_PER_M, COPPER_OHM_MM2_PER_M, COPPER_PER_K, copperOhmMm2PerM, IACS_OHM_MM2_PER_M } from './copper.ts';
export { IEC_60228, METRIC_STRANDING, type GreatestResistance, type IecSize } from './iec-60228.ts';
export { IEC_60228_KT, WORKING_TEMPERATURE_SOURCE } from './working-temperature.ts';
export { NEC_CHAPTER_9_TABLE_8, type ConductorProperties } from './nec-chapter9-table8.ts';
export { JOINT_OHM } from './joints.ts';
export { LUGS, type LugRow } from './lugs.ts';

/** Amperage. */
export {
	BUNDLE_FACTOR,
	ENGINE_SPACE_C,
	ENGINE_SPACE_FACTOR,
	HIGHER_VOLTAGE_V,
	TABLE_5,
	TABLE_5_COLUMNS_C,
	table5A,
	type AwgSize,
	type BundleStep,
	type Table5InsulationC
} from './cfr-183-425.ts';
export { NEC_310_16, NEC_310_17, type NecAmpacity } from './nec-ampacity.ts';
export { AMBIENT_EQUATION_SOURCE, ambientFactor, NEC_AMBIENT, NEC_BUNDLE_PERCENT, type AmbientRow } from './nec-factors.ts';
export {
	ABYC_105,
	ABYC_BUNDLE_FACTOR,
	ABYC_CRITICAL_DROP_PERCENT,
	ABYC_ENGINE_SPACE_105,
	ABYC_K,
	ABYC_ORDINARY_DROP_PERCENT,
	TERMINALS_PER_STUD,
	circularMilsFor,
	type OutsideInside
} from './abyc-e11.ts';
export {
	ISO_ANNEX,
	ISO_BATTERY_M,
	ISO_COLUMNS_C,
	ISO_CRITICAL_DROP_PERCENT,
	ISO_DEVICE_FACTOR,
	ISO_ENCLOSED_M,
	ISO_ENGINE_SPACE_C,
	ISO_ENGINE_SPACE_FACTOR,
	ISO_PLACEMENT_M,
	ISO_SMALLEST_SEPARATE_MM2,
	ISO_SMALLEST_SHEATHED_MM2,
	isoAnnexA,
	type IsoInsulationC,
	type IsoSize
} from './iso-13297.ts';
export { ADIABATIC_K, adiabaticAreaMm2, adiabaticK, adiabaticTimeS, temperatureAfterC, type InsulationLimit } from './adiabatic.ts';

/** Protection. */
export {
	BATTERY_M,
	CFR_DROP_PERCENT,
	NEXT_STANDARD_UP_TO,
	OVERCURRENT_FACTOR_FROM_50_V,
	OVERCURRENT_FACTOR_UNDER_50_V,
	SHEATHED_M,
	UNSHEATHED_M
} from './cfr-183-455.ts';
export { NEC_552_BOND, NEC_552_DEVICE, NEC_552_PLACEMENT_M } from './nec-552.ts';
export { nextStandardRatingA, STANDARD_RATINGS } from './nec-standard-ratings.ts';
export { breakingCapacityA, fuseFamily, type BreakingStep, type FuseFamily } from './fuse-families.ts';
export { fuseTimes, SUPPLEMENTARY_LATEST, timeAt, type FuseTimes, type Gate } from './fuse-times.ts';

/** Studs. */
export { thread, type Thread } from './threads.ts';
