import type { Conductor } from '#core/diagram';
import {
	ABYC_CRITICAL_DROP_PERCENT,
	ABYC_ORDINARY_DROP_PERCENT,
	AMBIENT_EQUATION_SOURCE,
	ambientFactor,
	bundleFactor,
	BUNDLE_FACTOR,
	ENGINE_SPACE_C,
	ISO_SMALLEST_SEPARATE_MM2,
	ISO_SMALLEST_SHEATHED_MM2,
	TABLE_5_AMBIENT_C,
	type Sourced
} from '#core/tables';
import { engineSpaceFactor, tableFigure, withFactors } from './table5.ts';
import type { AmbientSettings, Ampacity, Profile } from './types.ts';

const practice = (value: number): Sourced<number> => ({ value, source: 'common practice, no source', confidence: 'common-practice' });

/** One temperature factor per conductor: the engine-space factor already stands for 50 °C, so the two never multiply. */
function temperatureFactor(
	{ insulationC, environment }: Pick<Conductor, 'insulationC' | 'environment'>,
	{ outsideC, engineSpaceC }: AmbientSettings
): Ampacity['factors'][number] | null {
	if (environment === 'engine-space' && engineSpaceC <= ENGINE_SPACE_C) return engineSpaceFactor(insulationC);
	const ambientC = environment === 'engine-space' ? engineSpaceC : outsideC;
	if (ambientC <= TABLE_5_AMBIENT_C) return null;
	return {
		name: `${ambientC} °C around the conductor`,
		factor: ambientFactor(insulationC, ambientC, TABLE_5_AMBIENT_C),
		source: AMBIENT_EQUATION_SOURCE
	};
}

/** What careful teachers of the trade ask for: stricter than the law, and not a law. */
export const commonPractice: Profile = {
	id: 'common-practice',
	name: 'Common practice',
	scope:
		'Amperage from 33 CFR 183.425 Table 5 with bundling and ambient temperature at every voltage; fuse no larger than the amperage, or the next standard rating up to 125 % of it. No law stands behind the limits marked common practice.',
	ampacity(conductor, _nominalV, ambient) {
		const factors = [];
		const temperature = temperatureFactor(conductor, ambient);
		if (temperature) factors.push(temperature);
		factors.push({
			name: `${conductor.bundleCount} conductors bundled`,
			factor: bundleFactor(conductor.bundleCount),
			source: `common practice: factors of ${BUNDLE_FACTOR.source}, which the law applies from 50 V`
		});
		return withFactors(tableFigure(conductor.gauge, conductor.insulationC), factors);
	},
	overcurrent: {
		factor: () => practice(1),
		nextStandardUpTo: practice(1.25),
		unsheathedM: practice(0.18),
		sheathedM: practice(1),
		batteryM: practice(1.83)
	},
	drop: {
		criticalPercent: ABYC_CRITICAL_DROP_PERCENT,
		ordinaryWarnPercent: practice(5),
		ordinaryPercent: ABYC_ORDINARY_DROP_PERCENT
	},
	fuseLoadShare: practice(0.8),
	smallestSeparateMm2: ISO_SMALLEST_SEPARATE_MM2,
	smallestSheathedMm2: ISO_SMALLEST_SHEATHED_MM2
};
