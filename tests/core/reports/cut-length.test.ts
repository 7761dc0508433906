/** Allowances: common practice, no source. */
import { expect, test } from 'vitest';
import { cutLength } from '#core/reports';

const gauge = (size: '2/0' | '6' | '8' | '16') => ({ gauge: { system: 'awg', size } as const });

test.each([
	// 3 %, at least 30 mm, from 6 AWG up
	['2/0', 0.45, 0, 0.48],
	['2/0', 2, 0, 2.06],
	['6', 6, 0, 6.18],
	['6', 6, 2, 6.18],
	// 10 %, at least 150 mm, below; 100 mm for each panel end
	['8', 1, 0, 1.15],
	['8', 4, 1, 4.5],
	['16', 2, 1, 2.3],
	['16', 2, 2, 2.4],
	// up to the next 10 mm
	['8', 1.801, 0, 1.99]
] as const)('%s AWG, %d m, %d panel ends: cut to %d m', (size, lengthM, panelEnds, cutM) => {
	expect(cutLength(gauge(size), lengthM, panelEnds).cutM).toBeCloseTo(cutM, 9);
});
