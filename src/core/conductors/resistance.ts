import type { Gauge } from '#core/diagram';
import { COPPER_OHM_MM2_PER_M, copperOhmMm2PerM, IACS_OHM_MM2_PER_M, IEC_60228, JOINT_OHM, METRIC_STRANDING } from '#core/tables';
import { areaMm2 } from './gauge.ts';

export interface ResistanceBreakdown {
	/** Copper over the length, ohms. */
	readonly copperOhm: number;
	/** Each end's crimp and bolted joint, ohms. */
	readonly jointOhm: number;
	/** Copper and both joints, ohms. */
	readonly totalOhm: number;
}

/**
 * Copper alone, ohms per metre of one conductor. AWG sizes: resistivity over the area of ASTM B258. Metric sizes: the
 * greatest resistance IEC 60228 allows, which lies 10 to 16 % above resistivity over nominal area, because the
 * nominal area is a name and not a measure. `ohmMm2PerM` is the resistivity at the temperature meant; left out,
 * that of copper in service (about 29 °C).
 */
export function copperOhmPerM(gauge: Gauge, ohmMm2PerM: number = COPPER_OHM_MM2_PER_M.value): number {
	if (gauge.system === 'awg') return ohmMm2PerM / areaMm2(gauge);
	const at20 = IEC_60228.value[gauge.size][METRIC_STRANDING.value] / 1000;
	return (at20 * ohmMm2PerM) / IACS_OHM_MM2_PER_M.value;
}

/** Crimp and bolted joint at one end, ohms: common practice for good workmanship. */
export const jointOhm = (gauge: Gauge): number =>
	areaMm2(gauge) >= JOINT_OHM.value.heavyFromMm2 ? JOINT_OHM.value.heavyOhm : JOINT_OHM.value.lightOhm;

/** Resistance of a conductor of one-way length `lengthM` with a lug at each end, part by part. */
export function resistanceBreakdown(gauge: Gauge, lengthM: number, ohmMm2PerM?: number): ResistanceBreakdown {
	const copperOhm = copperOhmPerM(gauge, ohmMm2PerM) * lengthM;
	const joint = jointOhm(gauge);
	return { copperOhm, jointOhm: joint, totalOhm: copperOhm + 2 * joint };
}

/** Resistance of a conductor of one-way length `lengthM`, both joints included, ohms. */
export const resistanceOhm = (conductor: { readonly gauge: Gauge }, lengthM: number, ohmMm2PerM?: number): number =>
	resistanceBreakdown(conductor.gauge, lengthM, ohmMm2PerM).totalOhm;

/** The same with the copper at a temperature; joints are taken as they are. */
export const resistanceAtC = (conductor: { readonly gauge: Gauge }, lengthM: number, temperatureC: number): number =>
	resistanceOhm(conductor, lengthM, copperOhmMm2PerM(temperatureC));
