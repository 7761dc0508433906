import {
	ABYC_CRITICAL_DROP_PERCENT,
	ABYC_ORDINARY_DROP_PERCENT,
	BUNDLE_FACTOR,
	COPPER_OHM_MM2_PER_M,
	ENGINE_SPACE_C,
	ENGINE_SPACE_FACTOR,
	ISO_SMALLEST_SEPARATE_MM2,
	ISO_SMALLEST_SHEATHED_MM2,
	type Sourced,
	type Table5InsulationC
} from '#core/tables';
import { CFR_TABLE_5 } from './amperage-tables.ts';
import { practice, type ProfileSpec } from './spec.ts';

/** Factors of 33 CFR 183.425 note 1, one row for each column. */
export const cfrEngineSpace = (): NonNullable<ProfileSpec['engineSpace']> => ({
	upToC: ENGINE_SPACE_C,
	factors: Object.entries(ENGINE_SPACE_FACTOR.value).map(([insulationC, value]) => {
		const factor: Sourced<number> = { ...ENGINE_SPACE_FACTOR, value };
		return { insulationC: Number(insulationC) as Table5InsulationC, factor };
	})
});

/** What careful teachers of the trade ask for: stricter than the law, and not a law. */
export const commonPractice: ProfileSpec = {
	id: 'common-practice',
	name: 'Common practice',
	scope:
		'Amperage from 33 CFR 183.425 Table 5 with bundling and ambient temperature at every voltage; fuse no larger than the amperage, or the next standard rating up to 125 % of it. No law stands behind the limits marked common practice.',
	limits: {
		deviceFactor: practice(1),
		deviceFactorFrom50V: practice(1),
		nextStandardUpTo: practice(1.25),
		unsheathedM: practice(0.18),
		sheathedM: practice(1),
		batteryM: practice(1.83),
		fuseLoadShare: practice(0.8),
		fuseGroupedShare: practice(0.7),
		criticalDropPercent: ABYC_CRITICAL_DROP_PERCENT,
		ordinaryWarnPercent: practice(5),
		ordinaryDropPercent: ABYC_ORDINARY_DROP_PERCENT,
		dropResistivity: COPPER_OHM_MM2_PER_M,
		smallestSeparateMm2: ISO_SMALLEST_SEPARATE_MM2,
		smallestSheathedMm2: ISO_SMALLEST_SHEATHED_MM2,
		bundleFromV: practice(0)
	},
	amperage: { single: CFR_TABLE_5, together: CFR_TABLE_5 },
	engineSpace: cfrEngineSpace(),
	countsAmbient: true,
	bundle: {
		value: BUNDLE_FACTOR.value,
		source: `common practice: factors of ${BUNDLE_FACTOR.source}, which the law applies from 50 V`,
		confidence: 'common-practice'
	}
};
