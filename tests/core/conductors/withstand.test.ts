import { describe, expect, test } from 'vitest';
import { shortCircuitK, withstandAreaMm2, withstandS } from '#core/conductors';
import { INSULATION_C } from '#core/diagram';
import { ADIABATIC_K, adiabaticAreaMm2, adiabaticK } from '#core/tables';

describe('what a conductor stands in a short circuit', () => {
	// IEC 60364-5-54 Table 54.2, PVC 90 °C: k 100.
	test('thermoplastic at 90 °C is the published row', () => {
		const row = ADIABATIC_K.value.find(({ insulation }) => insulation === 'PVC 90 °C')!;
		expect(Math.abs(shortCircuitK(90).value - row.k)).toBeLessThan(0.6);
	});

	// IEC 60949: k = 226·√ln((234.5 + θf)/(234.5 + θi)).
	test.each([
		[75, 160],
		[105, 160],
		[125, 250],
		[200, 350]
	] as const)('%s °C insulation is heated to %s °C by the constant of IEC 60949', (startC, endC) => {
		expect(shortCircuitK(startC).value).toBeCloseTo(226 * Math.sqrt(Math.log((234.5 + endC) / (234.5 + startC))), 9);
	});

	test('the mapping from temperature class to material is a habit and says so', () => {
		for (const c of INSULATION_C)
			expect(shortCircuitK(c)).toMatchObject({ confidence: 'common-practice', source: expect.stringContaining('common practice') });
	});

	// Published example of IEC 60364 guides: 12 kA for 0.02 s with k 143 needs 11.9 mm², so 16 mm².
	test('12 kA for 0.02 s', () => {
		const byTable = adiabaticAreaMm2(12_000, 0.02, 143);
		expect(byTable).toBeCloseTo(11.9, 1);
		expect(withstandAreaMm2(12_000, 0.02, 90) / byTable).toBeCloseTo(143 / shortCircuitK(90).value, 9);
	});

	test('time and area are one equation', () => {
		expect(withstandS(withstandAreaMm2(923, 0.7, 105), 105, 923)).toBeCloseTo(0.7, 9);
	});

	/** ICEA P-32-382: (I/A)²·t = 0.0297·log₁₀((T2 + 234)/(T1 + 234)), A in circular mils. */
	const icea = (cmil: number, t1: number, t2: number, timeS: number): number =>
		cmil * Math.sqrt((0.0297 * Math.log10((t2 + 234) / (t1 + 234))) / timeS);

	test('ICEA P-32-382 says the same within 1 %', () => {
		const mm2 = 0.000506707 * 10_380;
		expect(Math.abs((mm2 * adiabaticK(75, 150)) / icea(10_380, 75, 150, 1) - 1)).toBeLessThan(0.01);
		expect(Math.abs((mm2 * adiabaticK(90, 250)) / icea(10_380, 90, 250, 1) - 1)).toBeLessThan(0.01);
	});

	/** Onderdonk: I = A·√(log₁₀((Tm − Ta)/(234 + Ta) + 1)/(33·t)), to the melting of copper at 1083 °C. */
	test('Onderdonk’s 16 AWG from 25 °C melts in 5 s at 168.9 A; the constant carried to 1083 °C agrees within 2 %', () => {
		const melts = 2581 * Math.sqrt(Math.log10((1083 - 25) / (234 + 25) + 1) / (33 * 5));
		expect(melts).toBeCloseTo(168.9, 0);
		expect(Math.abs((2581 * 0.000506707 * adiabaticK(25, 1083)) / Math.sqrt(5) / melts - 1)).toBeLessThan(0.02);
	});
});
