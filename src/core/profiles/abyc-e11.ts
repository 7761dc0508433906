import {
	ABYC_BUNDLE_FACTOR,
	ABYC_CRITICAL_DROP_PERCENT,
	ABYC_ENGINE_SPACE_105,
	ABYC_ORDINARY_DROP_PERCENT,
	BATTERY_M,
	COPPER_OHM_MM2_PER_M,
	ENGINE_SPACE_C,
	OVERCURRENT_FACTOR_UNDER_50_V,
	OVERCURRENT_FACTOR_FROM_50_V,
	SHEATHED_M,
	UNSHEATHED_M,
	type Sourced
} from '#core/tables';
import { ABYC_TABLE } from './amperage-tables.ts';
import { cfrEngineSpace } from './common-practice.ts';
import { practice, type ProfileSpec } from './spec.ts';
import { usSmallCraft } from './us-small-craft.ts';

/** The law's figure, which E-11 is remembered to repeat; its wording was not seen. */
const asInLaw = ({ value, source }: Sourced<number>): Sourced<number> => ({
	value,
	source: `ABYC E-11, from memory as ${source}`,
	confidence: 'memory'
});
const smallest = (sourced: Sourced<number>, size: string): Sourced<number> => ({
	...sourced,
	source: `ABYC E-11 11.14.1.2, ${size}`,
	confidence: 'verified'
});

export const abycE11: ProfileSpec = {
	id: 'abyc-e11',
	name: 'US small craft, voluntary (ABYC E-11)',
	scope:
		'ABYC E-11 as far as it could be read in quotations: the 105 °C column, the 3 % and 10 % circuits, four terminals to a stud and the smallest sizes. Other columns, bundling and the wording on overcurrent devices are from memory and shown as unverified.',
	limits: {
		...usSmallCraft.limits,
		deviceFactor: asInLaw(OVERCURRENT_FACTOR_UNDER_50_V),
		deviceFactorFrom50V: asInLaw(OVERCURRENT_FACTOR_FROM_50_V),
		nextStandardUpTo: asInLaw(usSmallCraft.limits.nextStandardUpTo),
		unsheathedM: asInLaw(UNSHEATHED_M),
		sheathedM: asInLaw(SHEATHED_M),
		batteryM: asInLaw(BATTERY_M),
		criticalDropPercent: ABYC_CRITICAL_DROP_PERCENT,
		ordinaryWarnPercent: ABYC_ORDINARY_DROP_PERCENT,
		ordinaryDropPercent: ABYC_ORDINARY_DROP_PERCENT,
		dropResistivity: COPPER_OHM_MM2_PER_M,
		smallestSeparateMm2: smallest(usSmallCraft.limits.smallestSeparateMm2, '16 AWG'),
		smallestSheathedMm2: smallest(usSmallCraft.limits.smallestSheathedMm2, '18 AWG'),
		fuseLoadShare: practice(0.8),
		fuseGroupedShare: practice(0.7),
		bundleFromV: { value: 0, source: ABYC_BUNDLE_FACTOR.source, confidence: 'memory' }
	},
	amperage: { single: ABYC_TABLE, together: ABYC_TABLE },
	engineSpace: {
		upToC: ENGINE_SPACE_C,
		factors: cfrEngineSpace().factors.map(({ insulationC, factor }) => ({
			insulationC,
			factor: insulationC === 105 ? ABYC_ENGINE_SPACE_105 : asInLaw(factor)
		}))
	},
	countsAmbient: false,
	bundle: ABYC_BUNDLE_FACTOR
};
