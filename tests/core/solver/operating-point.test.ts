import { describe, expect, test } from 'vitest';
import { solveCase } from '#core/solver';
import { allOn, battery, fuse, load, network, source, switchLink, wire } from '../../support/network.ts';

/** 12.8 V behind 20 mΩ. */
const weakSupply = (watts: number) =>
	network({ batteries: [battery('B', '+', '0', { resistanceOhm: 0.02 })], loads: [load('L', '+', '0', { watts })] });

describe('constant-power load', () => {
	// Derived: v = (E + √(E² − 4RP))/2, which exists only up to P = E²/4R = 2048 W.
	test('takes the higher of the two voltages at which the power balances', () => {
		const point = solveCase(weakSupply(600), 'on', allOn());
		expect(point.status).toBe('solved');
		expect(point.loadV[0]).toBeCloseTo(11.78145, 6);
		expect(point.loadA[0]).toBeCloseTo(50.927519, 6);
	});

	test.each([2000, 2040, 2047.9, 2047.999999])('is found at %d W, just below the limit of 2048 W', (watts) => {
		const point = solveCase(weakSupply(watts), 'on', allOn());
		expect(point.status).toBe('solved');
		expect(point.loadV[0]).toBeCloseTo((12.8 + Math.sqrt(12.8 ** 2 - 4 * 0.02 * watts)) / 2, 5);
		expect(point.loadV[0]! * point.loadA[0]!).toBeCloseTo(watts, 4);
	});

	test.each([2048.0001, 2049, 2100, 5000, 1e6, 1e300])('has no operating point at %d W', (watts) => {
		const point = solveCase(weakSupply(watts), 'on', allOn());
		expect(point.status).toBe('collapsed');
		expect(point.collapsedLoads).toEqual([0]);
		for (const values of [point.nodeV, point.branchA, point.batteryA, point.loadA, point.loadV]) {
			expect(values.every(Number.isFinite)).toBe(true);
		}
	});
});
