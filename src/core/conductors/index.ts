/** What a conductor is made of: area, resistance, diameter, lugs. */
export {
	areaMm2,
	areaText,
	awgDiameterMm,
	awgWithin,
	compareGauges,
	gaugeForReader,
	gaugesOf,
	gaugeText,
	nextGaugeUp,
	thinnestGauge
} from './gauge.ts';
export { copperOhmPerM, jointOhm, resistanceAtC, resistanceBreakdown, resistanceOhm, type ResistanceBreakdown } from './resistance.ts';
export { workingTemperatureC, type Heating } from './temperature.ts';
export { cableDiameterMm, lugOf, type Lug } from './lug.ts';
export { shortCircuitEndC, shortCircuitK, withstandAreaMm2, withstandS } from './withstand.ts';
