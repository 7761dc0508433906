import { areaMm2 } from '#core/conductors';
import { NEC_552_DEVICE, NEC_552_PLACEMENT_M, NEC_BUNDLE_PERCENT, type Sourced } from '#core/tables';
import { NEC_FREE_AIR, NEC_TOGETHER } from './amperage-tables.ts';
import { commonPractice } from './common-practice.ts';
import { practice, type ProfileSpec } from './spec.ts';

const notAboveAmpacity: Sourced<number> = {
	value: 1,
	source: 'NFPA 70 552.10(E)(1), not above the conductor’s ampacity',
	confidence: 'verified'
};
const smallest: Sourced<number> = {
	value: areaMm2({ system: 'awg', size: '18' }),
	source: 'NFPA 70 Table 552.10(E)(1) begins at 18 AWG, from memory',
	confidence: 'memory'
};

export const rvNec552: ProfileSpec = {
	id: 'rv-nec-552',
	name: 'RV (NEC 552.10, ANSI/RVIA LV)',
	scope:
		'Low-voltage circuits by NFPA 70 552.10, which the RV standards ANSI/RVIA LV and NFPA 1192 resemble: devices by size for 18 to 10 AWG (from memory), ampacity by NEC Tables 310.16 and 310.17 above that, device within 18 in. Voltage drop and what 552.10 does not say follow common practice.',
	limits: {
		...commonPractice.limits,
		deviceFactor: notAboveAmpacity,
		deviceFactorFrom50V: notAboveAmpacity,
		nextStandardUpTo: notAboveAmpacity,
		unsheathedM: NEC_552_PLACEMENT_M,
		sheathedM: NEC_552_PLACEMENT_M,
		batteryM: NEC_552_PLACEMENT_M,
		smallestSeparateMm2: smallest,
		smallestSheathedMm2: smallest,
		bundleFromV: practice(0)
	},
	amperage: { single: NEC_FREE_AIR, together: NEC_TOGETHER },
	// Article 310 has no factor for engine spaces: their temperature is counted by its equation.
	engineSpace: null,
	countsAmbient: true,
	bundle: {
		...NEC_BUNDLE_PERCENT,
		value: NEC_BUNDLE_PERCENT.value.map(({ from, percent }) => ({ from, factor: percent / 100 }))
	},
	devicesBySize: NEC_552_DEVICE
};
