import { describe, expect, test } from 'vitest';
import { clearingDistanceM, openingAt, selectivity } from '#core/faults';
import type { ProtectiveDevice } from '#core/parts';
import { FUSE_FAMILIES, fuseTimes, SUPPLEMENTARY_LATEST, timeAt, type FuseFamilyId } from '#core/tables';

const device = (family: FuseFamilyId | null, ratingA: number): ProtectiveDevice => ({
	kind: 'fuse',
	family,
	ratingA,
	ratedV: null,
	breakingA: null
});

describe('curves', () => {
	// UL 248-14, supplementary fuses: 135 % within an hour; 200 % within 2 min up to 30 A, 4 min from 35 to 60 A.
	test('pass through published gates', () => {
		const { value, confidence } = SUPPLEMENTARY_LATEST;
		expect(confidence).toBe('verified');
		for (const ratingA of [1, 30, 35, 60]) expect(timeAt(value(ratingA), 1.35)).toBe(3600);
		expect([15, 30, 35, 60].map((ratingA) => timeAt(value(ratingA), 2))).toEqual([120, 120, 240, 240]);
	});

	test('are straight on logarithmic scales between gates: half way in the logarithm of both', () => {
		expect(
			timeAt(
				[
					[2, 100],
					[8, 1]
				],
				4
			)
		).toBeCloseTo(10, 9);
	});

	test('keep I²t beyond the last gate and are endless before the first', () => {
		expect(
			timeAt(
				[
					[2, 100],
					[8, 1]
				],
				16
			)
		).toBeCloseTo(0.25, 12);
		expect(
			timeAt(
				[
					[2, 100],
					[8, 1]
				],
				1.99
			)
		).toBe(Infinity);
	});

	test.each(FUSE_FAMILIES)('%s: not shown as verified, falling with current, the earliest before the latest', (family) => {
		const { value, confidence } = fuseTimes(family);
		expect(['memory', 'common-practice']).toContain(confidence);
		const multiples = Array.from({ length: 80 }, (_, i) => 1.05 * 1.06 ** i);
		const bands = multiples.map((multiple) => openingAt(device(family, 100), 100 * multiple)!);
		for (const { earliestS, latestS } of bands) {
			expect(earliestS > 0).toBe(true);
			if (latestS < Infinity) expect(earliestS).toBeLessThan(latestS);
		}
		for (const name of ['earliestS', 'latestS'] as const) {
			const times = bands.map((band) => band[name]);
			expect(times).toEqual(times.toSorted((a, b) => b - a));
		}
		expect(openingAt(device(family, 100), 100 * value.holds)!.earliestS).toBe(Infinity);
	});

	test('are not known for a breaker', () => expect(openingAt(device(null, 100), 1000)).toBeNull());

	test('the direction of the current does not matter', () => {
		expect(openingAt(device('strip-sf51', 40), -923)).toEqual(openingAt(device('strip-sf51', 40), 923));
	});
});

describe('selectivity, by hand for a 12 V trailer with Class T string fuses', () => {
	test('radio: 923 A through 40 A opens within 7 to 68 ms; 461 A through 225 A takes 9 to 400 s', () => {
		const radio = openingAt(device('strip-sf51', 40), 923)!;
		const string = openingAt(device('class-t', 225), 461)!;
		expect(radio.earliestS).toBeCloseTo(0.0068, 4);
		expect(radio.latestS).toBeCloseTo(0.068, 3);
		expect(string.earliestS).toBeCloseTo(9, 0);
		expect(string.latestS).toBeGreaterThan(380);
		expect(selectivity(radio, string)).toBe('selective');
	});

	test('inverter: 4.63 kA through 250 A takes 10 to 105 ms, 2.31 kA through each string fuse 5 to 19 ms: they may be first', () => {
		const inverter = openingAt(device('strip-sf51', 250), 4630)!;
		const string = openingAt(device('class-t', 225), 2310)!;
		expect(inverter.earliestS).toBeCloseTo(0.0105, 4);
		expect(inverter.latestS).toBeCloseTo(0.105, 3);
		expect(string.earliestS).toBeCloseTo(0.0047, 3);
		expect(string.latestS).toBeCloseTo(0.019, 3);
		expect(selectivity(inverter, string)).toBe('bands-touch');
	});

	test('a much slower nearer fuse is not selective', () => {
		expect(selectivity(openingAt(device('strip-sf51', 250), 2500)!, openingAt(device('blade-regular', 20), 2500)!)).toBe('not-selective');
	});

	test('what holds the current is selective with anything', () => {
		expect(selectivity(openingAt(device('strip-sf51', 40), 50)!, openingAt(device('strip-sf51', 100), 50)!)).toBe('selective');
	});
});

// By hand for 13.6 V behind 1.82 mΩ and a fuse that breaks 2 kA: 8, 6, 4 AWG and 2/0 at 2.135, 1.34, 0.843 and 0.265 mΩ/m.
test.each([
	[2.135, 1.15],
	[1.343, 1.8],
	[0.8445, 2.9],
	[0.2652, 9.2]
])('clearing distance at %s mΩ/m is %s m', (milliohmPerM, metres) => {
	const found = clearingDistanceM(13.6, 0.00182, 2000, (2 * milliohmPerM) / 1000);
	expect(Math.abs(found / metres - 1)).toBeLessThan(0.05);
});

test('a fuse that can break a short right behind it has no clearing distance', () => {
	expect(clearingDistanceM(13.6, 0.0068, 2000, 0.004)).toBe(0);
	expect(clearingDistanceM(13.6, 0.01, 2000, 0.004)).toBe(0);
});
