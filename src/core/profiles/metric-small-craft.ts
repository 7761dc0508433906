import {
	CONDUCTIVITY_56_OHM_MM2_PER_M,
	ISO_BATTERY_M,
	ISO_CRITICAL_DROP_PERCENT,
	ISO_DEVICE_FACTOR,
	ISO_ENCLOSED_M,
	ISO_ENGINE_SPACE_C,
	ISO_ENGINE_SPACE_FACTOR,
	ISO_PLACEMENT_M,
	ISO_SMALLEST_SEPARATE_MM2,
	ISO_SMALLEST_SHEATHED_MM2
} from '#core/tables';
import { ISO_TABLE } from './amperage-tables.ts';
import { commonPractice } from './common-practice.ts';
import type { ProfileSpec } from './spec.ts';

export const metricSmallCraft: ProfileSpec = {
	id: 'metric-small-craft',
	name: 'Metric small craft (ISO 13297)',
	scope:
		'ISO 13297 (before it ISO 10133) for craft up to 24 m: amperage by its annex, engine-space factors and the place of devices from memory and shown as unverified; 3 % circuits and smallest sizes as read. Bundling was not found there and follows common practice.',
	limits: {
		...commonPractice.limits,
		deviceFactor: ISO_DEVICE_FACTOR,
		deviceFactorFrom50V: ISO_DEVICE_FACTOR,
		nextStandardUpTo: ISO_DEVICE_FACTOR,
		unsheathedM: ISO_PLACEMENT_M,
		sheathedM: ISO_ENCLOSED_M,
		batteryM: ISO_BATTERY_M,
		criticalDropPercent: ISO_CRITICAL_DROP_PERCENT,
		dropResistivity: CONDUCTIVITY_56_OHM_MM2_PER_M,
		smallestSeparateMm2: ISO_SMALLEST_SEPARATE_MM2,
		smallestSheathedMm2: ISO_SMALLEST_SHEATHED_MM2
	},
	amperage: { single: ISO_TABLE, together: ISO_TABLE },
	engineSpace: {
		upToC: ISO_ENGINE_SPACE_C,
		factors: Object.entries(ISO_ENGINE_SPACE_FACTOR.value).map(([insulationC, value]) => ({
			insulationC: Number(insulationC),
			factor: { ...ISO_ENGINE_SPACE_FACTOR, value }
		}))
	},
	countsAmbient: true,
	bundle: commonPractice.bundle
};
