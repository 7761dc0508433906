/** A conductor that has carried its worst continuous current for hours: how hot it is, and what it resists then. */
import { resistanceAtC, workingTemperatureC } from '#core/conductors';
import type { ConductorView } from './study.ts';

/** °C, lugs and insulation apart. */
export const workingC = ({ conductor, around, ampacity, continuous }: ConductorView): number =>
	workingTemperatureC({
		ambientC: around.ambientC,
		insulationC: conductor.insulationC,
		currentA: continuous.currentA,
		ampacityA: ampacity.currentA
	});

/** Copper at that temperature, and both joints, ohms. */
export const warmOhm = (view: ConductorView): number => resistanceAtC(view.conductor, view.lengthM, workingC(view));
