/** Amperage tables against each other and against the equations behind them; their values are in tests/core/published. */
import { describe, expect, test } from 'vitest';
import { AWG_SIZES } from '#core/diagram';
import { ABYC_105, ambientFactor, ENGINE_SPACE_FACTOR, NEC_310_17, NEC_AMBIENT, table5A, type AwgSize } from '#core/tables';

const rows = (text: string): string[][] =>
	text
		.trim()
		.split('\n')
		.map((line) => line.trim().split(/\s+/));

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
