import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { BAND_LOOKS, LENSES, lensValues } from '#core/explain';
import { circuit } from '../../support/circuit.ts';
import { example, near } from '../../support/examples/figures.ts';

/** Relative luminance of sRGB, WCAG 2.2. */
function luminance(hex: string): number {
	const [r, g, b] = [1, 3, 5].map((at) => {
		const c = parseInt(hex.slice(at, at + 2), 16) / 255;
		return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
const contrast = (a: string, b: string): number => {
	const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
	return (high! + 0.05) / (low! + 0.05);
};

describe('bands without colour', () => {
	const steps = BAND_LOOKS.slice(1).map((look, index) => [BAND_LOOKS[index]!, look] as const);

	test('each is clearly darker on light paper, and lighter on dark paper, than the one before', () => {
		for (const [before, after] of steps) {
			expect(luminance(after.colour.light)).toBeLessThan(luminance(before.colour.light));
			expect(luminance(after.colour.dark)).toBeGreaterThan(luminance(before.colour.dark));
			for (const paper of ['light', 'dark'] as const) expect(contrast(before.colour[paper], after.colour[paper])).toBeGreaterThan(1.45);
		}
	});
	test('each is wider, and drawn and tagged otherwise', () => {
		for (const [before, after] of steps) {
			expect(after.widthFactor).toBeGreaterThanOrEqual(before.widthFactor * 1.2);
			expect(after.dashMm).not.toEqual(before.dashMm);
		}
		expect(new Set(BAND_LOOKS.map(({ tag }) => tag)).size).toBe(5);
	});
	test('all stand out from their paper', () => {
		for (const { colour } of BAND_LOOKS) {
			expect(contrast(colour.light, '#f5efe3')).toBeGreaterThan(1.7);
			expect(contrast(colour.dark, '#1b2126')).toBeGreaterThan(1.7);
		}
	});
});

describe.each(LENSES)('%s', (lens) => {
	const diagram = example('otters-reach-before');
	const view = lensValues(diagram, checkDiagram(diagram), lens);

	test('has a legend in words without gaps, and puts every value into its band', () => {
		expect(view.legend.length).toBe(lens === 'polarity' ? 4 : 5);
		for (const { words, limits } of view.legend) expect(words && limits).not.toBe('');
		if (lens !== 'polarity') view.legend.slice(1).forEach(({ from }, index) => expect(from).toBe(view.legend[index]!.to));
		for (const value of [...Object.values(view.conductors), ...Object.values(view.studs)]) {
			if (value === null) continue;
			const band = view.legend.find(({ band }) => band === value.band)!;
			expect(value.value).toBeGreaterThanOrEqual(band.from);
			if (value.value !== Infinity) expect(value.value).toBeLessThan(band.to);
			expect(value.text).not.toMatch(/NaN|undefined|Infinity/);
		}
	});
	test('survives being sent as plain data', () => {
		expect(structuredClone(view)).toEqual(view);
	});
	test('says something of most conductors', () => {
		const values = Object.values(view.conductors);
		expect(values.filter((value) => value !== null).length).toBeGreaterThan(values.length / 3);
	});
});

describe('figures', () => {
	// 16 AWG, 25 A at 30 °C by 33 CFR 183.425 Table 5; 20 A is 80 %, and heats it by (105 − 30) × 0.8² = 48 K.
	const diagram = circuit(
		{ b: ['battery', { resistanceMilliohm: 1 }], f: ['inline-fuse', { fuseA: 30, family: 'blade-regular' }], l: ['load', { draw: 20 }], x: ['load'] }, // prettier-ignore
		[
			['b.pos', 'f.in', { gauge: '16', lengthM: 1 }],
			['f.out', 'l.pos', { gauge: '16', lengthM: 2 }],
			['l.neg', 'b.neg', { gauge: '16', lengthM: 2 }]
		]
	);
	const check = checkDiagram(diagram);
	const of = (lens: (typeof LENSES)[number], id: string) => lensValues(diagram, check, lens).conductors[id];
	const at = (lens: (typeof LENSES)[number], key: string) => lensValues(diagram, check, lens).studs[key];

	test('loading: 20 A of 25 A', () => expect(of('loading', 'W2')).toMatchObject({ value: expect.closeTo(80, 6) as number, text: '80 %' }));
	test('temperature rise: 48 K', () =>
		expect(of('temperature-rise', 'W2')).toMatchObject({ value: expect.closeTo(48, 6) as number, band: 3 }));
	test('volts lost along 2 m of 13.65 mΩ/m and two lugs of 0.2 mΩ: 554 mV', () => {
		// 33 CFR 183 does not give resistance; 0.01787 / 1.309 mm² (ASTM B258) = 13.65 mΩ/m.
		near(of('volts-lost', 'W2')!.value, 20 * (2 * 13.65 + 0.4));
		expect(of('volts-lost', 'W2')!.band).toBe(3);
	});
	test('volts lost at the load’s studs are those of all before it', () => {
		const lost = (id: string) => of('volts-lost', id)!.value;
		expect(at('volts-lost', 'l.neg')!.value).toBeCloseTo(lost('W3'), 6);
		// 0.08 V ÷ 30 A × 20 A in the fuse
		expect(at('volts-lost', 'l.pos')!.value).toBeCloseTo(lost('W1') + lost('W2') + (80 * 20) / 30, 6);
		expect(at('volts-lost', 'b.pos')!.value).toBeCloseTo(0, 9);
		expect(at('volts-lost', 'x.pos')).toBeNull();
	});
	test('protection: 30 A on a conductor that may have 1.5 × 25 A or less; nothing before the fuse', () => {
		const { greatestDeviceA } = check.conductors['W2']!;
		expect(of('protection', 'W2')!.value).toBeCloseTo((100 * 30) / greatestDeviceA, 6);
		expect(of('protection', 'W1')).toMatchObject({ value: Infinity, text: 'unlimited', band: 4 });
		expect(of('protection', 'W3')).toBeNull();
	});
	test('polarity', () => {
		expect([of('polarity', 'W1')!.text, of('polarity', 'W3')!.band, at('polarity', 'x.pos')!.band]).toEqual([
			'positive, with the midpoints of strings',
			0,
			1
		]);
	});
	test('fault current: that of the nearer end, the battery’s post', () => {
		expect(of('fault-current', 'W1')!.value).toBe(check.studFaultA['b.pos']);
		expect(of('fault-current', 'W3')).toBeNull();
	});
});

test('a starter’s supply is left out of loading, protection and temperature', () => {
	const diagram = circuit({ b: ['battery'], m: ['starter-motor'] }, [
		['b.pos', 'm.pos', { use: 'cranking' }],
		['m.neg', 'b.neg', { use: 'cranking' }]
	]);
	const check = checkDiagram(diagram);
	for (const lens of ['loading', 'protection', 'temperature-rise'] as const)
		expect(lensValues(diagram, check, lens).conductors['W1']).toBeNull();
	expect(lensValues(diagram, check, 'volts-lost').conductors['W1']).not.toBeNull();
});
