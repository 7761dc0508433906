import type { Sourced } from '#core/tables';
import { commonPractice } from './common-practice.ts';
import type { ProfileSpec } from './spec.ts';

/** With In not above Iz, I2 ≤ 1.45·Iz holds for every device that opens at 1.45 times its rating or less. */
const notAboveAmperage: Sourced<number> = {
	value: 1,
	source: 'IEC 60364-4-43 433.1, In ≤ Iz; I2 ≤ 1.45·Iz with it for devices that open by 1.45 times their rating, from memory',
	confidence: 'memory'
};

export const caravan: ProfileSpec = {
	id: 'caravan',
	name: 'Caravan (EN 1648, IEC 60364-7-721)',
	scope:
		'12 V installations of caravans and motor caravans. The cable and fuse tables of EN 1648 and the extra-low-voltage numbers of IEC 60364-7-721 were not found: devices follow IEC 60364-4-43 (from memory), the rest is common practice, with ambient temperature by the square-root rule of IEC 60364-5-52 and NFPA 70.',
	limits: {
		...commonPractice.limits,
		deviceFactor: notAboveAmperage,
		deviceFactorFrom50V: notAboveAmperage,
		nextStandardUpTo: notAboveAmperage
	},
	amperage: commonPractice.amperage,
	engineSpace: commonPractice.engineSpace,
	countsAmbient: true,
	bundle: commonPractice.bundle
};
