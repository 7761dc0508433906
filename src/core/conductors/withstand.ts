import type { InsulationC } from '#core/diagram';
import { adiabaticAreaMm2, adiabaticK, adiabaticTimeS, type Sourced } from '#core/tables';

/**
 * Greatest temperature at the end of a short circuit: thermoplastic, cross-linked and silicone insulation of
 * IEC 60364-5-54 Table 54.2. Which of them a temperature class stands for is a habit of the trade: boat and vehicle
 * wire up to 105 °C is taken as thermoplastic.
 */
const END_C = (insulationC: InsulationC): { readonly insulation: string; readonly endC: number } => {
	if (insulationC <= 105) return { insulation: 'thermoplastic', endC: 160 };
	return insulationC <= 125 ? { insulation: 'cross-linked', endC: 250 } : { insulation: 'silicone', endC: 350 };
};

/** Greatest temperature of the copper at the end of a short circuit, °C; see `END_C` for what it rests on. */
export const shortCircuitEndC = (insulationC: InsulationC): number => END_C(insulationC).endC;

/**
 * k of the adiabatic equation, A·√s/mm², from the insulation's working temperature: a conductor that is already hot
 * stands less. 75 °C gives 111, 90 °C gives 100, 105 °C gives 88.
 */
export function shortCircuitK(insulationC: InsulationC): Sourced<number> {
	const { insulation, endC } = END_C(insulationC);
	return {
		value: adiabaticK(insulationC, endC),
		source: `IEC 60949 for copper from ${insulationC} °C to ${endC} °C, ${insulation} insulation (IEC 60364-5-54 Table 54.2); that ${insulationC} °C wire has it is common practice`,
		confidence: 'common-practice'
	};
}

/** How long a conductor stands a short-circuit current, seconds; the equation holds up to 5 s. */
export const withstandS = (areaMm2: number, insulationC: InsulationC, currentA: number): number =>
	adiabaticTimeS(areaMm2, currentA, shortCircuitK(insulationC).value);

/** Smallest copper area that stands a current for a time, mm². */
export const withstandAreaMm2 = (currentA: number, timeS: number, insulationC: InsulationC): number =>
	adiabaticAreaMm2(currentA, timeS, shortCircuitK(insulationC).value);
