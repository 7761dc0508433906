import { describe, expect, test } from 'vitest';
import {
	ADIABATIC_K,
	adiabaticAreaMm2,
	adiabaticK,
	adiabaticTimeS,
	BATTERY_M,
	breakingCapacityA,
	FUSE_FAMILIES,
	fuseFamily,
	nextStandardRatingA,
	OVERCURRENT_FACTOR_UNDER_50_V,
	SHEATHED_M,
	STANDARD_RATINGS,
	UNSHEATHED_M
} from '#core/tables';

test('NFPA 70 Table 240.6(A), standard ratings', () => {
	expect(STANDARD_RATINGS.value.join(' ')).toBe(
		'10 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000'
	);
	expect(nextStandardRatingA(445)).toBe(450);
	expect(nextStandardRatingA(450)).toBe(450);
	expect(nextStandardRatingA(7000)).toBeNull();
});

test('33 CFR 183.455 and .460: 7, 40 and 72 inches, 150 % under 50 V', () => {
	expect(UNSHEATHED_M.value).toBeCloseTo(0.1778, 10);
	expect(SHEATHED_M.value).toBeCloseTo(1.016, 10);
	expect(BATTERY_M.value).toBeCloseTo(1.8288, 10);
	// NEETS (US Navy training series): a fuse of 150 % of the normal 10 A, 15 A, protects against direct shorts only.
	expect(OVERCURRENT_FACTOR_UNDER_50_V.value * 10).toBe(15);
});

describe('adiabatic equation', () => {
	test('k of IEC 60364-5-54 is the constant of IEC 60949 for each pair of temperatures', () => {
		expect(ADIABATIC_K.value).toHaveLength(6);
		for (const { insulation, startC, endC, k } of ADIABATIC_K.value) {
			const byFormula = 226 * Math.sqrt(Math.log((234.5 + endC) / (234.5 + startC)));
			expect(Math.abs(k - byFormula), insulation).toBeLessThan(0.6);
			expect(adiabaticK(startC, endC)).toBeCloseTo(byFormula, 10);
		}
	});

	test('published example: 12 kA for 0.02 s with k 143 needs 11.9 mm²', () => {
		expect(adiabaticAreaMm2(12000, 0.02, 143)).toBeCloseTo(11.9, 1);
	});

	test('time and area are the same equation', () => {
		expect(adiabaticTimeS(adiabaticAreaMm2(123, 0.59, 115), 123, 115)).toBeCloseTo(0.59, 10);
	});
});

describe('fuse families', () => {
	test('ISO 8820-3 blade fuses break 1 kA, ISO 8820-5 strip fuses 2 kA, both at 32 V', () => {
		for (const id of ['blade-mini', 'blade-regular', 'blade-large'] as const) {
			expect(breakingCapacityA(id, 14.6)).toMatchObject({ value: 1000, confidence: 'verified' });
			expect(fuseFamily(id).maxSystemV.value).toBe(32);
		}
		for (const id of ['strip-sf30', 'strip-sf51'] as const) {
			expect(breakingCapacityA(id, 29.2)).toMatchObject({ value: 2000, confidence: 'verified' });
			expect(breakingCapacityA(id, 57.6).value).toBe(0);
		}
	});

	test('ISO 8820-3 goes to 100 A, ISO 8820-5 from 30 to 500 A', () => {
		const all = (ids: readonly (typeof FUSE_FAMILIES)[number][]) => ids.flatMap((id) => fuseFamily(id).ratingsA.value);
		expect(Math.max(...all(['blade-mini', 'blade-regular', 'blade-large']))).toBeLessThanOrEqual(100);
		expect(Math.min(...all(['strip-sf30', 'strip-sf51']))).toBeGreaterThanOrEqual(30);
		expect(Math.max(...all(['strip-sf30', 'strip-sf51']))).toBeLessThanOrEqual(500);
	});

	test('ladders ascend, breaking capacity falls with voltage and reaches the family’s greatest voltage', () => {
		for (const id of FUSE_FAMILIES) {
			const { ratingsA, breaking, maxSystemV } = fuseFamily(id);
			expect(ratingsA.value, id).toEqual([...new Set(ratingsA.value)].sort((a, b) => a - b));
			expect(
				breaking.value.map(({ currentA }) => currentA),
				id
			).toEqual(breaking.value.map(({ currentA }) => currentA).sort((a, b) => b - a));
			expect(breaking.value.at(-1)?.upToV, id).toBe(maxSystemV.value);
		}
	});

	test('figures not seen in a source say so', () => {
		for (const id of ['limiter', 'cube', 'class-t', 'cylindrical'] as const) expect(fuseFamily(id).breaking.confidence).toBe('memory');
	});
});
