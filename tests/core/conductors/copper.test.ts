/** Areas and resistances by the formulas behind ASTM B258 and IEC 60228; printed tables are in tests/core/published. */
import { describe, expect, test } from 'vitest';
import { areaMm2, awgDiameterMm, copperOhmPerM, jointOhm, resistanceAtC, resistanceOhm, workingTemperatureC } from '#core/conductors';
import { AWG_SIZES, IEC_SIZES, type Gauge } from '#core/diagram';
import { ABYC_K, COPPER_OHM_MM2_PER_M, copperOhmMm2PerM, IACS_OHM_MM2_PER_M, IEC_60228, IEC_60228_KT, type AwgSize } from '#core/tables';
import { metresFromFeet, squareMmFromCircularMils } from '#core/units';

const rows = (text: string): string[][] =>
	text
		.trim()
		.split('\n')
		.map((line) => line.trim().split(/\s+/));

const awg = (size: string): Gauge => ({ system: 'awg', size: size as AwgSize });

/** ASTM B258, worked out from its formula with a pocket calculator's digits: AWG, diameter mm, circular mils, mm². */
const B258 = rows(`
	18 1.0237 1624 0.823
	16 1.2908 2583 1.309
	14 1.6277 4107 2.081
	12 2.0525 6530 3.309
	10 2.5882 10383 5.261
	8 3.2636 16510 8.366
	6 4.1154 26251 13.302
	4 5.1894 41741 21.151
	3 5.8273 52635 26.67
	2 6.5437 66371 33.631
	1 7.3481 83693 42.408
	1/0 8.2515 105535 53.475
	2/0 9.2658 133077 67.431
	3/0 10.4049 167806 85.029
	4/0 11.684 211600 107.219
`);

/** By how many per cent the limits of IEC 60228 lie above ρ/A: mm², plain class 2, plain class 5. */
const ABOVE = rows(`
	0.5 4.4 13.1
	0.75 6.6 13.1
	1 5.0 13.1
	1.5 5.3 15.7
	2.5 7.4 15.7
	4 7.0 14.8
	6 7.2 14.8
	10 6.1 10.8
	16 6.7 12.3
	25 5.4 13.1
	35 6.4 12.5
	50 12.2 11.9
	70 8.8 10.4
	95 6.3 13.5
	120 6.5 12.1
`);

test('ASTM B258 diameters and areas', () => {
	expect(B258.map(([size]) => size)).toEqual([...AWG_SIZES]);
	for (const [size, diameterMm, circularMils, squareMm] of B258) {
		expect(awgDiameterMm(size as AwgSize), `${size} AWG`).toBeCloseTo(Number(diameterMm), 4);
		expect(areaMm2(awg(size!)), `${size} AWG`).toBeCloseTo(Number(squareMm), 3);
		expect(Math.abs(squareMmFromCircularMils(Number(circularMils)) / areaMm2(awg(size!)) - 1)).toBeLessThan(3e-4);
	}
	// The two sizes that define the series: 36 AWG is 0.005 in, 4/0 AWG 0.46 in.
	expect(awgDiameterMm('4/0')).toBeCloseTo(0.46 * 25.4, 10);
});

describe('IEC 60228', () => {
	test('the limits lie above ρ/A by the lay-up and tolerance printed: 4 to 13 % class 2, 10 to 16 % class 5', () => {
		expect(ABOVE.map(([size]) => size)).toEqual([...IEC_SIZES]);
		for (const [size, class2Percent, class5Percent] of ABOVE) {
			const gauge = { system: 'iec', size } as Extract<Gauge, { system: 'iec' }>;
			const ideal = (1000 * 0.017241) / areaMm2(gauge);
			const { class2, class5 } = IEC_60228.value[gauge.size];
			expect((class2 / ideal - 1) * 100, `${size} mm² class 2`).toBeCloseTo(Number(class2Percent), 0.9);
			expect((class5 / ideal - 1) * 100, `${size} mm² class 5`).toBeCloseTo(Number(class5Percent), 0.9);
		}
	});

	test('metric conductors lose what class 5 allows: the printed figure at 20 °C, 3.6 % more in service (29 °C)', () => {
		for (const size of IEC_SIZES) {
			const gauge = { system: 'iec', size } as const;
			expect(1000 * copperOhmPerM(gauge, 0.017241)).toBeCloseTo(IEC_60228.value[size].class5, 9);
			expect(copperOhmPerM(gauge) / copperOhmPerM(gauge, 0.017241)).toBeCloseTo(0.01787 / 0.017241, 9);
		}
		// By hand: 35 mm² class 5, 0.554 Ω/km at 20 °C, 2 m with two joints of 0.04 mΩ.
		expect(resistanceOhm({ gauge: { system: 'iec', size: '35' } }, 2, 0.017241)).toBeCloseTo(0.001108 + 0.00008, 9);
	});

	// IEC 60228 prints Kt = 250/(230 + t) in three digits; α = 0.00393 is the same within half a per cent.
	test('resistance at a temperature agrees with the factors Kt', () => {
		for (const { temperatureC, kt } of IEC_60228_KT.value) {
			expect(250 / (230 + temperatureC)).toBeCloseTo(kt, 3);
			for (const gauge of [awg('4'), { system: 'iec', size: '25' }] as const) {
				const joints = 2 * jointOhm(gauge);
				const hot = resistanceAtC({ gauge }, 10, temperatureC) - joints;
				expect((resistanceAtC({ gauge }, 10, 20) - joints) / hot / kt, `${temperatureC} °C`).toBeGreaterThan(0.995);
				expect((resistanceAtC({ gauge }, 10, 20) - joints) / hot / kt, `${temperatureC} °C`).toBeLessThan(1.005);
			}
		}
	});
});

describe('constants', () => {
	test('0.01787 Ω·mm²/m is the small-craft constant 10.75 Ω·cmil/ft, copper at about 29 °C', () => {
		const metric = (ABYC_K.value * squareMmFromCircularMils(1)) / metresFromFeet(1);
		expect(metric).toBeCloseTo(COPPER_OHM_MM2_PER_M.value, 5);
		expect(copperOhmMm2PerM(29.3)).toBeCloseTo(COPPER_OHM_MM2_PER_M.value, 5);
	});

	test('IACS copper is 10.371 Ω·cmil/ft: 0.15328 Ω·g/m² at 8.89 g/cm³', () => {
		expect(0.15328 / 8.89).toBeCloseTo(IACS_OHM_MM2_PER_M.value, 5);
		expect((IACS_OHM_MM2_PER_M.value * metresFromFeet(1)) / squareMmFromCircularMils(1)).toBeCloseTo(10.371, 2);
	});
});

describe('working temperature', () => {
	const at = (currentA: number) => workingTemperatureC({ ambientC: 30, insulationC: 105, currentA, ampacityA: 160 });

	test('is the ambient without current, the insulation’s at the amperage, a quarter of the rise at half of it', () => {
		expect(at(0)).toBe(30);
		expect(at(160)).toBe(105);
		expect(at(80)).toBeCloseTo(30 + 75 / 4, 9);
	});

	test('goes on above the amperage, and knows no rise where the surroundings are as hot as the insulation may be', () => {
		expect(at(320)).toBeCloseTo(330, 9);
		expect(workingTemperatureC({ ambientC: 60, insulationC: 60, currentA: 0, ampacityA: 0 })).toBe(60);
		expect(workingTemperatureC({ ambientC: 70, insulationC: 60, currentA: 5, ampacityA: 10 })).toBe(70);
	});
});
