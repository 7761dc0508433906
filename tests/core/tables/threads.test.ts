import { expect, test } from 'vitest';
import { THREADS, thread } from '#core/tables';

/** Nuts, washers and holes are compared with the standards in tests/core/published/fasteners.ts. */
test('a thread is as thick as its name says', () => {
	for (const id of THREADS.filter((id) => id.startsWith('M'))) expect(thread(id).majorMm).toBe(Number(id.slice(1)));
	// ASME B1.1: a numbered thread is 0.060 in + 0.013 in × number across.
	expect(thread('#8').majorMm).toBeCloseTo((0.06 + 0.013 * 8) * 25.4, 3);
	expect(thread('#10').majorMm).toBeCloseTo((0.06 + 0.013 * 10) * 25.4, 3);
	for (const [id, inches] of [
		['1/4', 1 / 4],
		['5/16', 5 / 16],
		['3/8', 3 / 8],
		['1/2', 1 / 2]
	] as const)
		expect(thread(id).majorMm).toBeCloseTo(inches * 25.4, 6);
});

test('nuts have the nominal widths of ASME B18.2.2', () => {
	for (const [id, inches] of [
		['#8', 11 / 32],
		['#10', 3 / 8],
		['1/4', 7 / 16],
		['5/16', 1 / 2],
		['3/8', 9 / 16],
		['1/2', 3 / 4]
	] as const)
		expect(thread(id).nutAcrossFlatsMm).toBeCloseTo(inches * 25.4, 6);
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
