import { areaMm2 } from '#core/conductors';
import {
	ABYC_CRITICAL_DROP_PERCENT,
	BATTERY_M,
	BUNDLE_FACTOR,
	bundleFactor,
	CFR_DROP_PERCENT,
	HIGHER_VOLTAGE_V,
	NEXT_STANDARD_UP_TO,
	OVERCURRENT_FACTOR_FROM_50_V,
	OVERCURRENT_FACTOR_UNDER_50_V,
	SHEATHED_M,
	UNSHEATHED_M
} from '#core/tables';
import { engineSpaceFactor, tableFigure, withFactors } from './table5.ts';
import type { Profile } from './types.ts';

/** United States federal rules for small craft; voluntary practice where the rules are silent, and named so. */
export const usSmallCraft: Profile = {
	id: 'us-small-craft',
	name: 'US small craft (33 CFR 183)',
	scope:
		'33 CFR Part 183 Subpart I, which binds boats with petrol engines other than outboards; nominal 12, 24 and 48 V are read as under 50 V. Ambient temperature other than engine spaces is not in that rule and is not applied.',
	ampacity({ gauge, insulationC, environment, bundleCount }, nominalV) {
		const factors = [];
		if (environment === 'engine-space') factors.push(engineSpaceFactor(insulationC));
		if (nominalV >= HIGHER_VOLTAGE_V) {
			factors.push({ name: `${bundleCount} conductors bundled`, factor: bundleFactor(bundleCount), source: BUNDLE_FACTOR.source });
		}
		return withFactors(tableFigure(gauge, insulationC), factors);
	},
	overcurrent: {
		factor: (nominalV) => (nominalV < HIGHER_VOLTAGE_V ? OVERCURRENT_FACTOR_UNDER_50_V : OVERCURRENT_FACTOR_FROM_50_V),
		nextStandardUpTo: NEXT_STANDARD_UP_TO,
		unsheathedM: UNSHEATHED_M,
		sheathedM: SHEATHED_M,
		batteryM: BATTERY_M
	},
	drop: {
		criticalPercent: ABYC_CRITICAL_DROP_PERCENT,
		ordinaryWarnPercent: CFR_DROP_PERCENT,
		ordinaryPercent: CFR_DROP_PERCENT
	},
	fuseLoadShare: { value: 0.8, source: 'common practice, no source', confidence: 'common-practice' },
	smallestSeparateMm2: { value: areaMm2({ system: 'awg', size: '16' }), source: '33 CFR 183.425(e), 16 AWG', confidence: 'verified' },
	smallestSheathedMm2: { value: areaMm2({ system: 'awg', size: '18' }), source: '33 CFR 183.425(d), 18 AWG', confidence: 'verified' }
};
