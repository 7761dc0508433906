import type { Gauge } from '#core/diagram';
import { COPPER_OHM_MM2_PER_M, JOINT_OHM } from '#core/tables';
import { areaMm2 } from './gauge.ts';

export interface ResistanceBreakdown {
	/** Copper over the length, ohms. */
	readonly copperOhm: number;
	/** Each end's crimp and bolted joint, ohms. */
	readonly jointOhm: number;
	/** Copper and both joints, ohms. */
	readonly totalOhm: number;
}

/** Copper alone, ohms per metre of one conductor, in service (about 29 °C). */
export const copperOhmPerM = (gauge: Gauge): number => COPPER_OHM_MM2_PER_M.value / areaMm2(gauge);

/** Crimp and bolted joint at one end, ohms: common practice for good workmanship. */
export const jointOhm = (gauge: Gauge): number =>
	areaMm2(gauge) >= JOINT_OHM.value.heavyFromMm2 ? JOINT_OHM.value.heavyOhm : JOINT_OHM.value.lightOhm;

/** Resistance of a conductor of one-way length `lengthM` with a lug at each end, part by part. */
export function resistanceBreakdown(gauge: Gauge, lengthM: number): ResistanceBreakdown {
	const copperOhm = copperOhmPerM(gauge) * lengthM;
	const joint = jointOhm(gauge);
	return { copperOhm, jointOhm: joint, totalOhm: copperOhm + 2 * joint };
}

/** Resistance of a conductor of one-way length `lengthM`, both joints included, ohms. */
export const resistanceOhm = (conductor: { readonly gauge: Gauge }, lengthM: number): number =>
	resistanceBreakdown(conductor.gauge, lengthM).totalOhm;
