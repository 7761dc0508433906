/** Areas and resistances against ASTM B258, NFPA 70 Chapter 9 Table 8 and IEC 60228. */
import { describe, expect, test } from 'vitest';
import { areaMm2, awgDiameterMm, copperOhmPerM, jointOhm, resistanceAtC, resistanceOhm, workingTemperatureC } from '#core/conductors';
import { AWG_SIZES, IEC_SIZES, type Gauge } from '#core/diagram';
import {
	ABYC_K,
	COPPER_OHM_MM2_PER_M,
	copperOhmMm2PerM,
	IACS_OHM_MM2_PER_M,
	IEC_60228,
	IEC_60228_KT,
	NEC_CHAPTER_9_TABLE_8,
	type AwgSize
} from '#core/tables';
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

/** NFPA 70 Chapter 9 Table 8: AWG, strands, circular mils, overall diameter in, Ω/kft at 75 °C uncoated and coated. */
const NEC_TABLE_8 = rows(`
	18 1 1620 0.04 7.77 8.08
	18 7 1620 0.046 7.95 8.45
	16 1 2580 0.051 4.89 5.08
	16 7 2580 0.058 4.99 5.29
	14 1 4110 0.064 3.07 3.19
	14 7 4110 0.073 3.14 3.26
	12 1 6530 0.081 1.93 2.01
	12 7 6530 0.092 1.98 2.05
	10 1 10380 0.102 1.21 1.26
	10 7 10380 0.116 1.24 1.29
	8 1 16510 0.128 0.764 0.786
	8 7 16510 0.146 0.778 0.809
	6 7 26240 0.184 0.491 0.51
	4 7 41740 0.232 0.308 0.321
	3 7 52620 0.26 0.245 0.254
	2 7 66360 0.292 0.194 0.201
	1 19 83690 0.332 0.154 0.16
	1/0 19 105600 0.372 0.122 0.127
	2/0 19 133100 0.418 0.0967 0.101
	3/0 19 167800 0.47 0.0766 0.0797
	4/0 19 211600 0.528 0.0608 0.0626
`);

/** IEC 60228, Ω/km at 20 °C: mm², class 2 plain and coated, class 5 plain and coated, then % over ρ/A for plain 2 and 5. */
const IEC = rows(`
	0.5 36.0 36.7 39.0 40.1 4.4 13.1
	0.75 24.5 24.8 26.0 26.7 6.6 13.1
	1 18.1 18.2 19.5 20.0 5.0 13.1
	1.5 12.1 12.2 13.3 13.7 5.3 15.7
	2.5 7.41 7.56 7.98 8.21 7.4 15.7
	4 4.61 4.7 4.95 5.09 7.0 14.8
	6 3.08 3.11 3.3 3.39 7.2 14.8
	10 1.83 1.84 1.91 1.95 6.1 10.8
	16 1.15 1.16 1.21 1.24 6.7 12.3
	25 0.727 0.734 0.78 0.795 5.4 13.1
	35 0.524 0.529 0.554 0.565 6.4 12.5
	50 0.387 0.391 0.386 0.393 12.2 11.9
	70 0.268 0.27 0.272 0.277 8.8 10.4
	95 0.193 0.195 0.206 0.21 6.3 13.5
	120 0.153 0.154 0.161 0.164 6.5 12.1
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

describe('NFPA 70 Chapter 9 Table 8', () => {
	test('is transcribed whole', () => {
		const ours = NEC_CHAPTER_9_TABLE_8.value.map((row) => [
			row.size,
			...[row.strands, row.circularMils, row.overallDiameterIn, row.ohmPerKft, row.coatedOhmPerKft].map(String)
		]);
		expect(ours).toEqual(NEC_TABLE_8.map((row) => [row[0], ...row.slice(1).map((text) => String(Number(text)))]));
	});

	test('areas agree with ASTM B258 within 0.3 %', () => {
		for (const [size, , circularMils] of NEC_TABLE_8) {
			const difference = areaMm2(awg(size!)) / squareMmFromCircularMils(Number(circularMils)) - 1;
			expect(Math.abs(difference), `${size} AWG`).toBeLessThan(0.003);
		}
	});

	test('at 75 °C solid resistance agrees within 0.4 %, stranded lies 1.8 to 2.5 % above (lay of the strands)', () => {
		for (const [size, strands, , , ohmPerKft] of NEC_TABLE_8) {
			const solid = (copperOhmMm2PerM(75) * metresFromFeet(1000)) / areaMm2(awg(size!));
			const above = Number(ohmPerKft) / solid - 1;
			if (strands === '1') expect(Math.abs(above), `${size} AWG solid`).toBeLessThan(0.0041);
			else {
				expect(above, `${size} AWG stranded`).toBeGreaterThan(0.0175);
				expect(above, `${size} AWG stranded`).toBeLessThan(0.0255);
			}
		}
	});
});

describe('IEC 60228', () => {
	test('all sizes, classes 2 and 5, plain and coated', () => {
		expect(IEC.map(([size]) => size)).toEqual([...IEC_SIZES]);
		for (const [size, ...ohmPerKm] of IEC) {
			const { class2, class2Coated, class5, class5Coated } = IEC_60228.value[size as Extract<Gauge, { system: 'iec' }>['size']];
			expect([class2, class2Coated, class5, class5Coated], `${size} mm²`).toEqual(ohmPerKm.slice(0, 4).map(Number));
		}
	});

	test('the limits lie above ρ/A by the lay-up and tolerance printed: 4 to 13 % class 2, 10 to 16 % class 5', () => {
		for (const [size, , , , , class2Percent, class5Percent] of IEC) {
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
