import { resistanceOhm } from '#core/conductors';
import type { Conductor } from '#core/diagram';
import { LEAST_OHM } from './elements.ts';
import { usedLengthM } from './length.ts';

/** @param ohmMm2PerM resistivity of copper; left out, that of copper in service */
export const conductorOhm = (conductor: Conductor, ohmMm2PerM?: number): number =>
	Math.max(resistanceOhm(conductor, usedLengthM(conductor).lengthM, ohmMm2PerM), LEAST_OHM);
