import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { fixedPoint } from '../../../src/core/readings/fixed-point.ts';

test('x = cos x: the Dottie number, 0.7390851332 (OEIS A003957)', () => {
	expect(fixedPoint(Math.cos, 1)).toBeCloseTo(0.7390851332, 4);
	expect(fixedPoint(Math.cos, 0.01)).toBeCloseTo(0.7390851332, 4);
});

test('a / x meets x at its square root, however steep', () => {
	fc.assert(
		fc.property(fc.double({ min: 1e-8, max: 1e4, noNaN: true }), fc.double({ min: 0.01, max: 100, noNaN: true }), (a, times) => {
			const root = Math.sqrt(a);
			expect(Math.abs(fixedPoint((x) => a / x, root * times) / root - 1)).toBeLessThan(1e-4);
		})
	);
});

test('nothing for a start that is not positive', () => {
	expect(fixedPoint(() => 1, 0)).toBe(0);
	expect(fixedPoint(() => 1, -1)).toBe(0);
});
