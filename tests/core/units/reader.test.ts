/** What another reader sees, and what a field makes of what is typed. */
import { afterEach, describe, expect, test } from 'vitest';
import {
	ampsText,
	celsiusFromFahrenheit,
	celsiusText,
	compactNumber,
	fahrenheitFromCelsius,
	fieldUnit,
	fixedText,
	kelvinText,
	metresFromFeet,
	metresFromInches,
	metresFromText,
	metresText,
	millimetresText,
	PLAIN_READER,
	printFor,
	sizeText,
	tenthsText,
	type Reader
} from '#core/units';

const AMERICAN: Reader = { decimal: '.', long: 'ft', short: 'in', temperature: '°F', gauge: 'awg' };
const GERMAN: Reader = { decimal: ',', long: 'm', short: 'mm', temperature: '°C', gauge: 'iec' };
const readBy = (reader: Reader) => printFor(() => reader);
afterEach(() => readBy(PLAIN_READER));

// NIST Handbook 44, Appendix C: 1 ft = 0.3048 m and 1 in = 25.4 mm exactly. NIST SP 811: t/°C = (t/°F − 32)/1.8.
describe('feet, inches and degrees Fahrenheit', () => {
	test('lengths off the tape: inches below a yard, then feet and inches', () => {
		readBy(AMERICAN);
		expect([0.1778, metresFromInches(18), metresFromFeet(11.5), metresFromFeet(8), metresFromFeet(100)].map(metresText)).toEqual([
			'7 in',
			'18 in',
			'11 ft 6 in',
			'8 ft',
			'100 ft'
		]);
		// Half an inch below a foot is that foot, and never "11 ft 12 in".
		expect(metresText(metresFromFeet(12) - 0.005)).toBe('12 ft');
	});

	test('small lengths have the decimals of a calliper', () => {
		readBy(AMERICAN);
		expect([millimetresText(3.175), tenthsText(1.5), millimetresText(40)]).toEqual(['0.125 in', '0.059 in', '1.57 in']);
		expect(sizeText(120, 90)).toBe('4.72 × 3.54 in');
	});

	test('temperatures and their differences', () => {
		readBy(AMERICAN);
		expect([100, 30, -40].map(celsiusText)).toEqual(['212 °F', '86 °F', '−40 °F']);
		expect(kelvinText(30)).toBe('54 °F');
		for (const c of [-40, 0, 21.5, 100]) expect(celsiusFromFahrenheit(fahrenheitFromCelsius(c))).toBeCloseTo(c, 12);
	});
});

test('a comma stands wherever a point would', () => {
	readBy(GERMAN);
	expect([ampsText(0.034), ampsText(7460), metresText(3.5), millimetresText(3.14), fixedText(12, 1), compactNumber(128)]).toEqual([
		'0,034 A',
		'7,46 kA',
		'3,5 m',
		'3,14 mm',
		'12,0',
		'128'
	]);
});

describe('a field', () => {
	test('shows the reader’s unit and takes any', () => {
		readBy(AMERICAN);
		const length = fieldUnit('m');
		expect([length.unit, length.show(3.5052)]).toEqual(['ft', '11.5']);
		expect(['11.5', '11 ft 6 in', '11′ 6″', '3,5052 m', '138 in', '350.52 cm'].map((text) => length.read(text))).toEqual([
			3.5052, 3.5052, 3.5052, 3.5052, 3.5052, 3.5052
		]);
		const small = fieldUnit('mm');
		expect([small.unit, small.show(7.9375)]).toEqual(['in', '0.313']);
		expect(['5/16', '5/16 in', '1 1/2 in', '8 mm', '0.8 cm'].map((text) => small.read(text))).toEqual([7.94, 7.94, 38.1, 8, 8]);
		const warm = fieldUnit('°C');
		expect([warm.unit, warm.show(30)]).toEqual(['°F', '86']);
		expect(['86', '86 °F', '30 °C', '30c', '-40'].map((text) => warm.read(text))).toEqual([30, 30, 30, 30, -40]);
	});

	test('reads a bare number in the unit it shows, with a comma or a point', () => {
		readBy(GERMAN);
		expect(fieldUnit('m').show(3.5)).toBe('3,5');
		expect(['3,5', '3.5', '3,5 m', '11 ft 6 in'].map((text) => fieldUnit('m').read(text))).toEqual([3.5, 3.5, 3.5, 3.5052]);
		expect(['12,5', '12.5 A', '−3'].map((text) => fieldUnit('A').read(text))).toEqual([12.5, 12.5, -3]);
		expect(fieldUnit('').show(12.75)).toBe('12,75');
	});

	test('takes nothing that is in no unit it knows', () => {
		for (const [unit, text] of [
			['A', '12 V'],
			['A', ''],
			['m', '3 yd'],
			['mm', '1/0'],
			['°C', '300 K'],
			['', 'many']
		] as const)
			expect(fieldUnit(unit).read(text), `${text} in ${unit}`).toBeUndefined();
	});
});

test('a fraction without its denominator is no length', () => {
	for (const text of ['5/', '/16', '5/0 in', '1 1/', '1/2/3']) expect(metresFromText(text), text).toBeUndefined();
});
