/** Profiles beside the first two: what was seen in a source is compared with it, what was not must say so. */
import { describe, expect, test } from 'vitest';
import type { Conductor } from '#core/diagram';
import { greatestDevice, profile, PROFILE_IDS, PROFILES } from '#core/profiles';

type Conditions = Pick<Conductor, 'gauge' | 'insulationC' | 'environment' | 'bundleCount'>;

const awg = (size: string, rest: Partial<Conditions> = {}): Conditions => ({
	gauge: { system: 'awg', size } as Conductor['gauge'],
	insulationC: 105,
	environment: 'outside',
	bundleCount: 1,
	...rest
});
const metric = (size: string, rest: Partial<Conditions> = {}): Conditions => ({
	...awg('4', rest),
	gauge: { system: 'iec', size } as Conductor['gauge']
});
const MILD = { outsideC: 30, engineSpaceC: 50 };

describe('ABYC E-11', () => {
	const abyc = profile('abyc-e11');

	// ABYC E-11, 105 °C, outside and inside engine spaces, as reprinted (inside is 0.85 times, cut to one digit).
	test.each([
		['18', 20, 17],
		['16', 25, 21.2],
		['14', 35, 29.8],
		['12', 45, 38.2],
		['10', 60, 51],
		['8', 80, 68],
		['6', 120, 102],
		['4', 160, 136],
		['3', 180, 153],
		['2', 210, 178.5],
		['1', 245, 208.2],
		['1/0', 285, 242.2],
		['2/0', 330, 280.5],
		['3/0', 385, 327.2],
		['4/0', 445, 378.2]
	])('%s AWG: %d A outside, %d A in an engine space, seen in print', (size, outsideA, insideA) => {
		const outside = abyc.ampacity(awg(size), 12, MILD);
		const inside = abyc.ampacity(awg(size, { environment: 'engine-space' }), 12, MILD);
		expect(outside.currentA).toBe(outsideA);
		expect(Math.abs(inside.currentA - insideA)).toBeLessThan(0.1);
		expect([outside.unverified, inside.unverified]).toEqual([false, false]);
		expect(outside.table).toBe('ABYC E-11 (voluntary), amperage, 105 °C column');
	});

	test('other columns, bundling and the factor for devices are shown as unverified', () => {
		expect(abyc.ampacity(awg('4', { insulationC: 75 }), 12, MILD).unverified).toBe(true);
		expect(abyc.ampacity(awg('4', { bundleCount: 3 }), 12, MILD)).toMatchObject({ unverified: true, factors: [{ factor: 0.7 }] });
		expect(abyc.ampacity(awg('4', { bundleCount: 2 }), 12, MILD)).toMatchObject({ unverified: false, factors: [] });
		expect(greatestDevice(abyc, abyc.ampacity(awg('4'), 12, MILD), 12)).toMatchObject({ currentA: 240, unverified: true });
	});

	test('3 % and 10 % circuits', () => {
		expect(abyc.drop.criticalPercent).toMatchObject({ value: 3, confidence: 'two-sources' });
		expect(abyc.drop.ordinaryPercent).toMatchObject({ value: 10, confidence: 'two-sources' });
	});
});

describe('RV', () => {
	const rv = profile('rv-nec-552');
	const deviceA = (conditions: Conditions) => greatestDevice(rv, rv.ampacity(conditions, 12, MILD), 12);

	// NFPA 70:2023 Tables 310.17 (free air) and 310.16 (raceway or cable), 90 °C column, copper.
	test('ampacity: free air for one conductor, the cable table for two, its factor from four', () => {
		expect(rv.ampacity(awg('4/0'), 12, MILD).currentA).toBe(405);
		expect(rv.ampacity(awg('4/0', { bundleCount: 2 }), 12, MILD).currentA).toBe(260);
		expect(rv.ampacity(awg('4/0', { bundleCount: 3 }), 12, MILD).currentA).toBe(260);
		expect(rv.ampacity(awg('4/0', { bundleCount: 4 }), 12, MILD).currentA).toBeCloseTo(0.8 * 260, 9);
		expect(rv.ampacity(awg('8', { insulationC: 75 }), 12, MILD).currentA).toBe(70);
		expect(rv.ampacity(awg('4/0'), 12, MILD).table).toBe('NFPA 70:2023 Table 310.17, 90 °C column');
		expect(rv.ampacity(awg('4/0', { bundleCount: 2 }), 12, MILD).table).toBe('NFPA 70:2023 Table 310.16, 90 °C column');
	});

	// NFPA 70 Table 310.15(B)(1)(1): 90 °C insulation at 46 to 50 °C, 0.82.
	test('an engine space is an ambient temperature', () => {
		expect(rv.ampacity(awg('4', { insulationC: 90, environment: 'engine-space' }), 12, MILD).currentA / 140).toBeCloseTo(0.82, 2);
	});

	test('18 and 16 AWG with cooler insulation than the table prints are lowered by its equation', () => {
		expect(rv.ampacity(awg('18', { insulationC: 60 }), 12, MILD).currentA).toBeCloseTo(18 * Math.sqrt(30 / 60), 9);
	});

	test('a small conductor has a device of its size, unverified; a thick one its ampacity', () => {
		for (const size of ['18', '16', '14', '12', '10']) {
			const device = deviceA(awg(size));
			expect(device, size).toMatchObject({ reason: 'size', unverified: true });
			expect(device.currentA).toBeLessThan(rv.ampacity(awg(size), 12, MILD).currentA);
		}
		expect(deviceA(awg('8'))).toMatchObject({ reason: 'factor', currentA: 80, unverified: false });
		// A device of 20 A would be more than a bundle may carry: the ampacity stays the limit.
		expect(deviceA(awg('12', { bundleCount: 41 })).reason).toBe('factor');
	});

	// NFPA 70:2020 552.10(E)(4): 18 in (450 mm).
	test('device within 18 in', () => {
		expect(rv.overcurrent.unsheathedM.value).toBeCloseTo(0.457, 3);
		expect(rv.overcurrent.unsheathedM.confidence).toBe('verified');
	});
});

describe('metric small craft', () => {
	const iso = profile('metric-small-craft');

	test('amperage is from memory and says so, for metric and AWG sizes alike', () => {
		for (const conditions of [metric('35'), awg('2'), metric('0.5')]) {
			const { unverified, table } = iso.ampacity(conditions, 12, MILD);
			expect(unverified).toBe(true);
			expect(table).toContain('ISO 13297 Annex A (small craft), from memory');
		}
		expect(iso.ampacity(awg('2'), 12, MILD).table).toContain('2 AWG taken as 25 mm²');
	});

	test('a thicker conductor never carries less, nor does hotter insulation', () => {
		const sizes = ['0.5', '0.75', '1', '1.5', '2.5', '4', '6', '10', '16', '25', '35', '50', '70', '95', '120'];
		for (const environment of ['outside', 'engine-space'] as const) {
			for (const insulationC of [60, 75, 80, 90, 105, 125, 200] as const) {
				const amps = sizes.map((size) => iso.ampacity(metric(size, { environment, insulationC }), 12, MILD).currentA);
				expect(amps).toEqual(amps.toSorted((a, b) => a - b));
			}
		}
	});

	// ISO 10133:2012 7.7: 1 mm² on its own, 0.75 mm² in a sheath.
	test('smallest sizes were seen', () => {
		expect(iso.smallestSeparateMm2).toMatchObject({ value: 1, confidence: 'verified' });
		expect(iso.smallestSheathedMm2).toMatchObject({ value: 0.75, confidence: 'verified' });
	});
});

test('caravan: a device is never above the amperage', () => {
	const caravan = profile('caravan');
	expect(greatestDevice(caravan, { currentA: 445, deviceBySize: null }, 12)).toMatchObject({
		currentA: 445,
		reason: 'factor',
		unverified: true
	});
});

describe('every profile', () => {
	test.each(PROFILE_IDS)('%s lists every number once, with a title, a unit and a source', (id) => {
		const { numbers } = PROFILES[id];
		expect(new Set(numbers.map(({ key }) => key)).size).toBe(numbers.length);
		for (const number of numbers) {
			expect(number.key).toMatch(/^[A-Za-z0-9.:/-]{1,64}$/);
			expect(number.title.length).toBeGreaterThan(5);
			expect(number.unit).not.toBe('');
			expect(number.source).not.toBe('');
			expect(Number.isFinite(number.value)).toBe(true);
			expect(number.changedFrom).toBeNull();
		}
		expect(numbers.length).toBeGreaterThan(90);
	});

	test.each(PROFILE_IDS)('%s names the table behind each amperage', (id) => {
		const { table, tableA } = PROFILES[id].ampacity(awg('4'), 12, MILD);
		expect(table).toMatch(/\d{2,3} °C column/);
		expect(tableA).toBeGreaterThan(0);
	});
});
