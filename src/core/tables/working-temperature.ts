import type { Sourced } from './sourced.ts';

/** Factor to 20 °C of a resistance measured at a temperature: R20 = Kt·Rt. */
export const IEC_60228_KT: Sourced<readonly { readonly temperatureC: number; readonly kt: number }[]> = {
	value: [
		{ temperatureC: 30, kt: 0.962 },
		{ temperatureC: 50, kt: 0.893 },
		{ temperatureC: 70, kt: 0.833 },
		{ temperatureC: 75, kt: 0.82 },
		{ temperatureC: 90, kt: 0.781 }
	],
	source: 'IEC 60228 annex, temperature correction factors',
	confidence: 'verified'
};

/** Why a conductor's rise goes with the square of its share: its amperage is the current that heats it to its limit. */
export const WORKING_TEMPERATURE_SOURCE =
	'rise in proportion to the heat (I²), up to the insulation’s temperature at the amperage: common practice, no source';
