import { expect, test } from 'vitest';
import { THREADS, thread, type ThreadId } from '#core/tables';

/** ISO 4032 nut s and m max, ISO 7089 washer d2 and h, DIN 127 s and d2, ISO 273 fine hole: as printed. */
const METRIC: Record<string, number[]> = {
	M5: [8, 4.7, 10, 1.0, 1.2, 9.2, 5.3],
	M6: [10, 5.2, 12, 1.6, 1.6, 11.8, 6.4],
	M8: [13, 6.8, 16, 1.6, 2.0, 14.8, 8.4],
	M10: [16, 8.4, 20, 2.0, 2.2, 18.1, 10.5],
	M12: [18, 10.8, 24, 2.5, 2.5, 21.1, 13.0]
};

/** ASME B18.2.2 nut: nominal width across flats in inches, m max mm; ASME B18.21.1 type A narrow washer: d2, h max mm. */
const INCH: Record<string, number[]> = {
	'#8': [11 / 32, 3.137, 9.525, 1.016],
	'#10': [3 / 8, 3.137, 10.312, 1.016],
	'1/4': [7 / 16, 5.563, 12.7, 1.6],
	'5/16': [1 / 2, 6.744, 15.875, 1.6],
	'3/8': [9 / 16, 8.344, 18.644, 1.6]
};

test('metric hardware', () => {
	for (const [id, printed] of Object.entries(METRIC)) {
		const t = thread(id as ThreadId);
		const ours = [
			t.nutAcrossFlatsMm,
			t.nutHeightMm,
			t.washerDiameterMm,
			t.washerThicknessMm,
			t.lockWasherThicknessMm,
			t.lockWasherDiameterMm,
			t.holeMm
		];
		expect(ours, id).toEqual(printed);
		expect(t.majorMm).toBe(Number(id.slice(1)));
	}
	expect([thread('M4').nutAcrossFlatsMm, thread('M4').nutHeightMm]).toEqual([7, 3.2]);
});

test('inch hardware', () => {
	for (const [id, [flatsIn, nut, washer, washerH]] of Object.entries(INCH)) {
		const t = thread(id as ThreadId);
		expect(t.nutAcrossFlatsMm, id).toBeCloseTo(flatsIn! * 25.4, 3);
		expect([t.nutHeightMm, t.washerDiameterMm, t.washerThicknessMm], id).toEqual([nut, washer, washerH]);
	}
	expect(thread('1/2').nutHeightMm).toBe(11.113);
	// ASME B1.1: a numbered thread is 0.060 in + 0.013 in × number across.
	expect(thread('#8').majorMm).toBeCloseTo((0.06 + 0.013 * 8) * 25.4, 3);
	expect(thread('#10').majorMm).toBeCloseTo((0.06 + 0.013 * 10) * 25.4, 3);
	expect(thread('3/8').majorMm).toBeCloseTo(9.525, 6);
});

test('every thread passes its own hole, and nut, washers and torque grow with it', () => {
	for (const id of THREADS) {
		const t = thread(id);
		expect(t.holeMm, id).toBeGreaterThan(t.majorMm);
		expect(t.holeMm - t.majorMm, id).toBeLessThan(1.05);
		expect(t.washerDiameterMm, id).toBeGreaterThan(t.nutAcrossFlatsMm);
		expect(t.torqueNm[0], id).toBeLessThan(t.torqueNm[1]);
	}
	for (const family of [THREADS.slice(0, 6), THREADS.slice(6)]) {
		const nuts = family.map((id) => thread(id).nutAcrossFlatsMm);
		expect(nuts).toEqual([...nuts].sort((a, b) => a - b));
	}
});
