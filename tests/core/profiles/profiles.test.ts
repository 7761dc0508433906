import { describe, expect, test } from 'vitest';
import type { Conductor } from '#core/diagram';
import { greatestDevice, isProfileId, profile, PROFILE_IDS, PROFILES } from '#core/profiles';

type Conditions = Pick<Conductor, 'gauge' | 'insulationC' | 'environment' | 'bundleCount'>;

const conditions = (rest: Partial<Conditions> = {}): Conditions => ({
	gauge: { system: 'awg', size: '4' },
	insulationC: 105,
	environment: 'outside',
	bundleCount: 1,
	...rest
});

const plain = (currentA: number) => ({ currentA, deviceBySize: null });

const MILD = { outsideC: 30, engineSpaceC: 50 };
const law = profile('us-small-craft');
const practice = profile('common-practice');

test('profiles are found by id; an unknown id gives common practice and can be told apart', () => {
	for (const id of PROFILE_IDS) {
		expect(profile(id)).toBe(PROFILES[id]);
		expect(profile(id).id).toBe(id);
		expect(isProfileId(id)).toBe(true);
	}
	for (const id of ['somewhere-else', 'toString', '']) {
		expect(isProfileId(id)).toBe(false);
		expect(profile(id)).toBe(practice);
	}
});

/** 33 CFR 183.425 Table 5, note 2, as printed; the law applies it from 50 V, common practice at every voltage. */
test('note 2: 3 conductors 0.70, 4 to 6 0.60, 7 to 24 0.50, 25 and above 0.40', () => {
	const factorOf = (of: typeof law, nominalV: number) => (bundleCount: number) =>
		of.ampacity(conditions({ bundleCount }), nominalV, MILD).factors.reduce((product, { factor }) => product * factor, 1);
	for (const factor of [factorOf(law, 50), factorOf(practice, 12)]) {
		expect([1, 2, 3, 4, 6, 7, 24, 25, 200].map(factor)).toEqual([1, 1, 0.7, 0.6, 0.6, 0.5, 0.5, 0.4, 0.4]);
	}
});

test('every limit names its source, and habits of the trade say that they are', () => {
	for (const { overcurrent, drop, ...rest } of Object.values(PROFILES)) {
		const limits = [
			overcurrent.factor(12),
			overcurrent.unsheathedM,
			overcurrent.sheathedM,
			overcurrent.batteryM,
			overcurrent.nextStandardUpTo,
			...Object.values(drop),
			rest.dropResistivity,
			rest.fuseLoadShare,
			rest.smallestSeparateMm2,
			rest.smallestSheathedMm2
		];
		for (const { source, confidence } of limits) {
			expect(source).not.toBe('');
			expect(source.startsWith('common practice')).toBe(confidence === 'common-practice');
			expect(source.includes('from memory')).toBe(confidence === 'memory');
		}
	}
});

describe('amperage', () => {
	// 33 CFR 183.425: 4 AWG, 105 °C is 160 A; engine space 0.85 → 136 A; 75 °C, 125 × 0.75 = 93.75 A.
	test('engine space, from Table 5 and note 1', () => {
		for (const p of [law, practice]) {
			expect(p.ampacity(conditions(), 12, MILD).currentA).toBe(160);
			expect(p.ampacity(conditions({ environment: 'engine-space' }), 12, MILD).currentA).toBeCloseTo(136, 9);
			expect(p.ampacity(conditions({ environment: 'engine-space', insulationC: 75 }), 12, MILD).currentA).toBeCloseTo(93.75, 9);
		}
	});

	// 33 CFR 183.435(b): note 2 holds for circuits of 50 V or more.
	test('bundling is law from 50 V, and practice at any voltage', () => {
		const bundle = conditions({ bundleCount: 4 });
		expect(law.ampacity(bundle, 48, MILD).currentA).toBe(160);
		expect(law.ampacity(bundle, 60, MILD).currentA).toBeCloseTo(96, 9);
		const byPractice = practice.ampacity(bundle, 12, MILD);
		expect(byPractice.currentA).toBeCloseTo(96, 9);
		expect(byPractice.factors).toEqual([
			{ name: '4 conductors bundled', factor: 0.6, source: expect.stringContaining('common practice') as string }
		]);
	});

	// NFPA 70 Equation 310.15(B)(1): 75 °C insulation at 45 °C ambient, √(30/45) = 0.8165, printed 0.82.
	test('ambient outside engine spaces, in practice only', () => {
		const at75 = conditions({ insulationC: 75 });
		const hot = { outsideC: 45, engineSpaceC: 50 };
		expect(practice.ampacity(at75, 12, hot).currentA).toBeCloseTo(125 * Math.sqrt(30 / 45), 9);
		expect(practice.ampacity(at75, 12, { outsideC: 10, engineSpaceC: 50 }).currentA).toBe(125);
		expect(law.ampacity(at75, 12, hot).currentA).toBe(125);
	});

	test('an engine space has one temperature factor, never two', () => {
		const inEngineSpace = conditions({ environment: 'engine-space' });
		for (const outsideC of [20, 30, 45]) {
			expect(practice.ampacity(inEngineSpace, 12, { outsideC, engineSpaceC: 50 }).factors).toHaveLength(1);
			expect(practice.ampacity(inEngineSpace, 12, { outsideC, engineSpaceC: 50 }).currentA).toBeCloseTo(136, 9);
		}
		// Hotter than the 50 °C that note 1 stands for: the equation, on its own.
		const hotter = practice.ampacity(inEngineSpace, 12, { outsideC: 30, engineSpaceC: 70 });
		expect(hotter.factors).toHaveLength(1);
		expect(hotter.currentA).toBeCloseTo(160 * Math.sqrt((105 - 70) / (105 - 30)), 9);
	});

	test('no amperage is left where the surroundings are as hot as the insulation may be', () => {
		const at60 = conditions({ insulationC: 60, environment: 'engine-space' });
		expect(practice.ampacity(at60, 12, { outsideC: 30, engineSpaceC: 60 }).currentA).toBe(0);
	});

	test('a metric size takes the figure of the AWG within it, and says so', () => {
		const { currentA, table, unverified } = law.ampacity(conditions({ gauge: { system: 'iec', size: '35' } }), 12, MILD);
		expect(currentA).toBe(210);
		expect(table).toContain('35 mm² taken as 2 AWG');
		expect(unverified).toBe(false);
	});

	test('sizes thinner than 18 AWG are shown as unverified, and thinner is never more', () => {
		const amps = (['0.5', '0.75', '1'] as const).map((size) => practice.ampacity(conditions({ gauge: { system: 'iec', size } }), 12, MILD));
		expect(amps.map(({ unverified }) => unverified)).toEqual([true, true, false]);
		expect(amps[0]!.currentA).toBeLessThan(amps[1]!.currentA);
		expect(amps[1]!.currentA).toBeLessThan(amps[2]!.currentA);
		expect(amps[0]!.currentA).toBeGreaterThan(0);
	});
});

describe('greatest device', () => {
	test('33 CFR 183.455(c): 150 % under 50 V; from 50 V the amperage or the next standard rating up to 150 %', () => {
		expect(greatestDevice(law, plain(45), 12)).toMatchObject({ currentA: 67.5, reason: 'factor' });
		expect(greatestDevice(law, plain(445), 24).currentA).toBe(667.5);
		expect(greatestDevice(law, plain(445), 120)).toMatchObject({ currentA: 450, reason: 'next-standard' });
		expect(greatestDevice(law, plain(6), 120).currentA).toBe(6);
	});

	test('practice: the amperage, or the next standard rating up to 125 % of it', () => {
		expect(greatestDevice(practice, plain(445), 12)).toMatchObject({ currentA: 450, reason: 'next-standard' });
		expect(greatestDevice(practice, plain(285), 24).currentA).toBe(300);
		expect(greatestDevice(practice, plain(120), 12).currentA).toBe(125);
		expect(greatestDevice(practice, plain(80), 12)).toMatchObject({ currentA: 80, reason: 'factor' });
		// 15 A would be 167 % of 9 A.
		expect(greatestDevice(practice, plain(9), 12).currentA).toBe(10);
		expect(greatestDevice(practice, plain(7), 12).currentA).toBe(7);
		expect(greatestDevice(practice, plain(0), 12).currentA).toBe(0);
	});
});

test('metric limits of 33 CFR: 16 AWG on its own, 18 AWG in a sheath', () => {
	expect(law.smallestSeparateMm2.value).toBeCloseTo(1.309, 3);
	expect(law.smallestSheathedMm2.value).toBeCloseTo(0.823, 3);
});
