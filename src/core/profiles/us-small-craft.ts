import { areaMm2 } from '#core/conductors';
import {
	ABYC_CRITICAL_DROP_PERCENT,
	BATTERY_M,
	BUNDLE_FACTOR,
	CFR_DROP_PERCENT,
	COPPER_OHM_MM2_PER_M,
	HIGHER_VOLTAGE_V,
	NEXT_STANDARD_UP_TO,
	OVERCURRENT_FACTOR_FROM_50_V,
	OVERCURRENT_FACTOR_UNDER_50_V,
	SHEATHED_M,
	UNSHEATHED_M
} from '#core/tables';
import { CFR_TABLE_5 } from './amperage-tables.ts';
import { cfrEngineSpace } from './common-practice.ts';
import { practice, type ProfileSpec } from './spec.ts';

/** United States federal rules for small craft; voluntary practice where the rules are silent, and named so. */
export const usSmallCraft: ProfileSpec = {
	id: 'us-small-craft',
	name: 'US small craft (33 CFR 183)',
	scope:
		'33 CFR Part 183 Subpart I, which binds boats with petrol engines other than outboards; nominal 12, 24 and 48 V are read as under 50 V. Ambient temperature other than engine spaces is not in that rule and is not applied.',
	limits: {
		deviceFactor: OVERCURRENT_FACTOR_UNDER_50_V,
		deviceFactorFrom50V: OVERCURRENT_FACTOR_FROM_50_V,
		nextStandardUpTo: NEXT_STANDARD_UP_TO,
		unsheathedM: UNSHEATHED_M,
		sheathedM: SHEATHED_M,
		batteryM: BATTERY_M,
		fuseLoadShare: practice(0.8),
		fuseGroupedShare: practice(0.7),
		criticalDropPercent: ABYC_CRITICAL_DROP_PERCENT,
		ordinaryWarnPercent: CFR_DROP_PERCENT,
		ordinaryDropPercent: CFR_DROP_PERCENT,
		dropResistivity: COPPER_OHM_MM2_PER_M,
		smallestSeparateMm2: { value: areaMm2({ system: 'awg', size: '16' }), source: '33 CFR 183.425(e), 16 AWG', confidence: 'verified' },
		smallestSheathedMm2: { value: areaMm2({ system: 'awg', size: '18' }), source: '33 CFR 183.425(d), 18 AWG', confidence: 'verified' },
		bundleFromV: { value: HIGHER_VOLTAGE_V, source: '33 CFR 183.435(b)', confidence: 'verified' }
	},
	amperage: { single: CFR_TABLE_5, together: CFR_TABLE_5 },
	engineSpace: cfrEngineSpace(),
	countsAmbient: false,
	bundle: BUNDLE_FACTOR
};
