/** Amperage tables against a second transcription of the published tables, and against the equations behind them. */
import { describe, expect, test } from 'vitest';
import { AWG_SIZES } from '#core/diagram';
import {
	ABYC_105,
	ambientFactor,
	ENGINE_SPACE_FACTOR,
	NEC_310_16,
	NEC_310_17,
	NEC_AMBIENT,
	NEC_BUNDLE_PERCENT,
	TABLE_5,
	table5A,
	type AwgSize,
	type Table5InsulationC
} from '#core/tables';

const INSULATION_C: readonly Table5InsulationC[] = [60, 75, 80, 90, 105, 125, 200];

const rows = (text: string): string[][] =>
	text
		.trim()
		.split('\n')
		.map((line) => line.trim().split(/\s+/));

/** 33 CFR 183.425 Table 5 as printed: AWG, then 60, 75, 80, 90, 105, 125 and 200 °C. */
const CFR_TABLE_5 = rows(`
	18 10 10 15 20 20 25 25
	16 15 15 20 25 25 30 35
	14 20 20 25 30 35 40 45
	12 25 25 35 40 45 50 55
	10 40 40 50 55 60 70 70
	8 55 65 70 70 80 90 100
	6 80 95 100 100 120 125 135
	4 105 125 130 135 160 170 180
	3 120 145 150 155 180 195 210
	2 140 170 175 180 210 225 240
	1 165 195 210 210 245 265 280
	1/0 195 230 245 245 285 305 325
	2/0 225 265 285 285 330 355 370
	3/0 260 310 330 330 385 410 430
	4/0 300 360 385 385 445 475 510
`);

/** NFPA 70:2023 Tables 310.16 and 310.17, copper: AWG, then 60, 75 and 90 °C of each. */
const NEC = rows(`
	18 - - 14 - - 18
	16 - - 18 - - 24
	14 15 20 25 25 30 35
	12 20 25 30 30 35 40
	10 30 35 40 40 50 55
	8 40 50 55 60 70 80
	6 55 65 75 80 95 105
	4 70 85 95 105 125 140
	3 85 100 115 120 145 165
	2 95 115 130 140 170 190
	1 110 130 145 165 195 220
	1/0 125 150 170 195 230 260
	2/0 145 175 195 225 265 300
	3/0 165 200 225 260 310 350
	4/0 195 230 260 300 360 405
`);

/** ABYC E-11, 105 °C: the column for engine spaces as one reprint truncates it. */
const ABYC_INSIDE = rows(`
	18 17
	16 21
	14 29
	12 38
	10 51
	8 68
	6 102
	4 136
	3 153
	2 178
	1 208
	1/0 242
	2/0 280
	3/0 327
	4/0 378
`);

describe('33 CFR 183.425', () => {
	test('all of Table 5', () => {
		expect(CFR_TABLE_5.map(([size]) => size)).toEqual([...AWG_SIZES]);
		for (const [size, ...amps] of CFR_TABLE_5) {
			expect(
				INSULATION_C.map((c) => table5A(size as AwgSize, c)),
				`${size} AWG`
			).toEqual(amps.map(Number));
		}
		expect(Object.keys(TABLE_5.value)).toHaveLength(15);
	});

	test('note 1 is the square-root rule from 30 to 50 °C, rounded; the law prints 0.85 and 1.00 at 105 and 200 °C', () => {
		for (const c of [60, 75, 80, 90, 125] as const) {
			expect(Math.abs(ENGINE_SPACE_FACTOR.value[c] - Math.sqrt((c - 50) / (c - 30)))).toBeLessThanOrEqual(0.0056);
		}
		expect(ENGINE_SPACE_FACTOR.value[105]).toBe(0.85);
		expect(Math.sqrt(55 / 75)).toBeCloseTo(0.856, 3);
		expect(ENGINE_SPACE_FACTOR.value[200]).toBe(1);
	});
});

describe('NFPA 70', () => {
	test('Tables 310.16 and 310.17', () => {
		for (const [size, ...amps] of NEC) {
			const raceway = NEC_310_16.value[size as AwgSize];
			const freeAir = NEC_310_17.value[size as AwgSize];
			const ours = [raceway[60], raceway[75], raceway[90], freeAir[60], freeAir[75], freeAir[90]];
			expect(ours, `${size} AWG`).toEqual(amps.map((a) => (a === '-' ? null : Number(a))));
		}
	});

	test('the 60 °C free-air column equals Table 5 except at 14, 12 and 8 AWG', () => {
		const differing = AWG_SIZES.filter((size) => NEC_310_17.value[size][60] !== null && NEC_310_17.value[size][60] !== table5A(size, 60));
		expect(differing).toEqual(['14', '12', '8']);
	});

	test('the ambient table is Equation 310.15(B)(1) at each row’s upper temperature, within rounding', () => {
		for (const row of NEC_AMBIENT.value) {
			for (const c of [60, 75, 90] as const) {
				const printed = row[c];
				if (printed === null) continue;
				const byEquation = Math.sqrt((c - row.upToC) / (c - 30));
				expect(Math.abs(printed - byEquation), `${row.upToC} °C, ${c} °C`).toBeLessThanOrEqual(0.0051);
				expect(ambientFactor(c, row.upToC)).toBeCloseTo(byEquation, 12);
			}
		}
	});

	test('ambient rows stop where the insulation’s temperature is reached', () => {
		const last = (c: 60 | 75 | 90) => NEC_AMBIENT.value.findLast((row) => row[c] !== null)?.upToC;
		expect([last(60), last(75), last(90)]).toEqual([55, 70, 85]);
		expect(ambientFactor(60, 60)).toBe(0);
		expect(ambientFactor(60, 90)).toBe(0);
	});

	test('Table 310.15(C)(1): 4–6 80, 7–9 70, 10–20 50, 21–30 45, 31–40 40, 41 and above 35 %', () => {
		expect(NEC_BUNDLE_PERCENT.value.map(({ from, percent }) => [from, percent])).toEqual([
			[4, 80],
			[7, 70],
			[10, 50],
			[21, 45],
			[31, 40],
			[41, 35]
		]);
	});
});

describe('ABYC E-11, 105 °C', () => {
	test('inside engine spaces is 0.85 of outside, and outside equals Table 5', () => {
		for (const size of AWG_SIZES) {
			const { outsideA, engineSpaceA } = ABYC_105.value[size];
			expect(outsideA).toBe(table5A(size, 105));
			expect(Math.abs(engineSpaceA - 0.85 * outsideA), `${size} AWG`).toBeLessThanOrEqual(0.0501);
		}
	});

	test('inside engine spaces agrees with the reprint that truncates', () => {
		for (const [size, amps] of ABYC_INSIDE) expect(Math.trunc(ABYC_105.value[size as AwgSize].engineSpaceA)).toBe(Number(amps));
	});
});
