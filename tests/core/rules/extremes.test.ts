import { expect, test } from 'vitest';
import { greatest, least } from '../../../src/core/rules/extremes.ts';

const items = [
	{ name: 'a', amps: 3 },
	{ name: 'b', amps: 7 },
	{ name: 'c', amps: 7 },
	{ name: 'd', amps: 3 }
];
const amps = (item: (typeof items)[number]) => item.amps;

test('greatest and least, the first of equals', () => {
	expect(greatest(items, amps)?.name).toBe('b');
	expect(least(items, amps)?.name).toBe('a');
});
test('of one, of none', () => {
	expect(greatest([items[2]!], amps)?.name).toBe('c');
	expect(least([], amps)).toBeUndefined();
});
test('an unlimited figure is one as well', () => {
	expect(greatest([-Infinity, -Infinity], (x) => x)).toBe(-Infinity);
	expect(greatest([5, Infinity, Infinity], (x) => x)).toBe(Infinity);
	expect(least([Infinity, 5], (x) => x)).toBe(5);
});
