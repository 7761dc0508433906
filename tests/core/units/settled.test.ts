import { expect, test } from 'vitest';
import { settled } from '#core/units';

test('a settled figure is within one part in 10¹⁰ of the solved one, and hides its rounding', () => {
	for (const value of [0.1, 1 / 3, 123.456, 7675.332844734192, -2 / 7]) expect(Math.abs(settled(value) / value - 1)).toBeLessThan(1.2e-10);
	expect(settled(0.5 + 1e-13)).toBe(0.5);
	expect(settled(0.1 + 0.2)).toBe(settled(0.3));
});

test('what has few digits stays as it is', () => {
	for (const value of [0, 0.5, -12, 30, 1024.25, Infinity]) expect(settled(value)).toBe(value);
});
