import { expect, test } from 'vitest';
import {
	ampsText,
	compactNumber,
	metresFromFeet,
	metresFromInches,
	metresFromText,
	metresText,
	millimetresFromInches,
	ohmsText,
	percentText,
	squareMmFromCircularMils,
	voltsText,
	wattsText
} from '#core/units';

// The international inch is 25.4 mm by definition; 1,000,000 circular mils are a circle of one inch.
test('inches, feet and circular mils', () => {
	expect(millimetresFromInches(7)).toBeCloseTo(177.8, 10);
	expect(metresFromInches(72)).toBeCloseTo(1.8288, 10);
	expect(metresFromFeet(1)).toBeCloseTo(0.3048, 10);
	expect(squareMmFromCircularMils(1e6)).toBeCloseTo((Math.PI / 4) * 25.4 ** 2, 8);
	// ASTM B258: 4/0 AWG, 211,600 circular mils, is 107.2 mm².
	expect(squareMmFromCircularMils(211600)).toBeCloseTo(107.219, 3);
});

// NIST Handbook 44, Appendix C: 1 ft = 0.3048 m and 1 in = 2.54 cm, exactly.
test('lengths are read with the unit they are written in', () => {
	const read = ['2.5', '2,5', '2.5 m', '250 cm', '2500mm', '8 ft', '18 in', '8 ft 6 in', '8′ 6″', '.5', '0,5 m'].map((text) =>
		metresFromText(text)
	);
	expect(read).toEqual([2.5, 2.5, 2.5, 2.5, 2.5, 2.4384, 0.4572, 2.5908, 2.5908, 0.5, 0.5]);
});

test('what is no length is not read as one', () => {
	for (const text of ['', 'two', '-1', '1e9', '3 yd', '2.5.1', '8 ft 6', 'm', '1 m 20', 'NaN', 'constructor', '5 constructor'])
		expect(metresFromText(text), text).toBeUndefined();
});

test('figures are printed with the digits that matter', () => {
	expect([ampsText(127.72), ampsText(7460), ampsText(0.034), ampsText(9.999)]).toEqual(['128 A', '7.46 kA', '0.034 A', '10 A']);
	expect([voltsText(0.027), voltsText(12.049), voltsText(0)]).toEqual(['27 mV', '12.05 V', '0 V']);
	expect([ohmsText(0.00182), ohmsText(10.2)]).toEqual(['1.82 mΩ', '10.2 Ω']);
	expect([metresText(0.1778), percentText(3.556), wattsText(2000)]).toEqual(['0.18 m', '3.6 %', '2000 W']);
	expect(compactNumber(Infinity)).toBe('unlimited');
});
