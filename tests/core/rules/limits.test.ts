/**
 * Limits of rules at the limit itself: what the tests by rule leave open. Figures are those of the tables named beside
 * them; where no source is named the limit is common practice, and only the side it falls on is tested.
 */
import { describe, expect, test } from 'vitest';
import type { Diagram } from '#core/diagram';
import { RULES } from '#core/rules';
import { exceeds, largestRatingA } from '../../../src/core/rules/conductor-words.ts';
import { figureName, numbersOf } from '../../../src/core/rules/numbers.ts';
import { listed } from '../../../src/core/rules/words.ts';
import { circuit } from '../../support/circuit.ts';
import { findings } from '../../support/rule-tester.ts';

const told = (id: string, diagram: Diagram) =>
	findings(
		RULES.find(({ meta }) => meta.id === id)!,
		diagram
	);
const says = (id: string, diagram: Diagram): string[] => told(id, diagram).map(({ message }) => message);
const mends = (id: string, diagram: Diagram): string[] => told(id, diagram).map(({ remedy }) => remedy);

describe('words and figures of all rules', () => {
	test('a limit is exceeded by more than rounding', () => {
		expect(exceeds(100, 100)).toBe(false);
		expect(exceeds(100 * (1 + 1e-6), 100)).toBe(false);
		expect(exceeds(100.001, 100)).toBe(true);
		expect(exceeds(99.99, 100)).toBe(false);
	});
	test('the largest standard rating within a limit (NFPA 70 240.6(A)); below the smallest the limit itself', () => {
		expect([100, 109.9, 110, 9].map(largestRatingA)).toEqual([100, 100, 110, 9]);
	});
	test('a list of more than six is cut', () => {
		const names = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];
		expect(listed(names.slice(0, 6))).toBe('a, b, c, d, e and f');
		expect(listed(names.slice(0, 7))).toBe('a, b, c, d, e and 2 more');
		expect(listed(names)).toBe('a, b, c, d, e and 3 more');
	});
	test('figures printed in a text are taken in the unit without prefix', () => {
		expect(numbersOf({ text: '1.25 kA after 40 ms through 2 mΩ' })).toEqual({ textA: 1250, textS: 0.04, textOhm: 0.002 });
	});
	test('figures are taken from data within data, three levels deep', () => {
		expect(numbersOf({ a: { b: { currentA: 1 } } })).toEqual({ 'a.b.currentA': 1 });
		expect(numbersOf({ a: { b: { c: { currentA: 1 } } } })).toEqual({});
	});
	test('a name that is a unit and nothing else keeps it', () => {
		expect(figureName('A')).toEqual({ name: 'A', unit: '' });
		expect(figureName('limitA')).toEqual({ name: 'limit', unit: 'A' });
	});
});

describe('protection', () => {
	const fused = (gauge: string, fuseA: number) =>
		circuit({ b: ['battery'], f: ['inline-fuse', { fuseA, family: 'strip-sf51' }], l: ['load'] }, [
			['b.pos', 'f.in', { gauge: '4/0', lengthM: 0.1 }],
			['f.out', 'l.pos', { gauge }],
			['l.neg', 'b.neg', { gauge: '4/0' }]
		]);
	// 33 CFR 183.425 Table 5, 105 °C: 6 AWG 120 A.
	test('a conductor for exactly the rating is thick enough', () => {
		expect(mends('oversized-protection', fused('8', 120))).toEqual(['Fit at most 80 A, or use at least 6 AWG (120 A).']);
	});
	test('by the law, where no next rating is allowed: 90 A on 10 AWG, 1.5 × 60 A (33 CFR 183.455(c)(1))', () => {
		expect(mends('oversized-protection', { ...fused('12', 90), profile: 'us-small-craft' })).toEqual([
			'Fit at most 60 A, or use at least 10 AWG (60 A).'
		]);
	});
	test('six that feed in parallel are summed in words, seven are named alone', () => {
		const parallel = (count: number) => {
			const ids = Array.from({ length: count }, (_, index) => index + 1);
			return circuit(
				{
					...Object.fromEntries(ids.map((n) => [`b${n}`, ['battery'] as const])),
					...Object.fromEntries(ids.map((n) => [`f${n}`, ['inline-fuse', { fuseA: 100, family: 'strip-sf51' }] as const])),
					p: ['positive-bus', { studs: 8 }],
					l: ['load']
				},
				[
					...ids.map((n) => [`b${n}.pos`, `f${n}.in`, { gauge: '4/0', lengthM: 0.1 }] as const),
					...ids.map((n) => [`f${n}.out`, 'p.1', { gauge: '4/0', lengthM: 0.1 }] as const),
					['p.2', 'l.pos', { id: 'W', gauge: '10' }],
					...ids.map((n) => ['l.neg', `b${n}.neg`, { gauge: '4/0' }] as const)
				]
			);
		};
		expect(says('oversized-protection', parallel(6))[0]).toContain('100 A + 100 A + 100 A + 100 A + 100 A + 100 A = 600 A');
		expect(says('oversized-protection', parallel(7))[0]).toContain('and 2 more (700 A)');
	});
	test('a fuse of which the next rating up is the one needed: 12 A at 80 % are 15 A', () => {
		const load = (draw: number) =>
			circuit({ b: ['battery'], f: ['inline-fuse', { fuseA: 10 }], l: ['load', { draw }] }, [
				['b.pos', 'f.in'],
				['f.out', 'l.pos'],
				['l.neg', 'b.neg']
			]);
		expect(mends('fuse-below-load', load(12))[0]).toContain('15 A');
		expect(mends('fuse-below-load', load(12.1))[0]).toContain('20 A');
	});
	test('the largest of several fuses in a holder too small for them', () => {
		const panel = circuit({ p: ['blade-panel', { ways: 3, fuseA: [25, 30, 20], wayRatedA: 20 }] });
		expect(says('holder-limit', panel)).toEqual(['P way 1 and P way 2 hold fuses of up to 30 A; the holder is made for 20 A.']);
	});
	test('the thickest of several conductors in a holder', () => {
		const holder = circuit({ b: ['battery'], p: ['positive-bus'], f: ['inline-fuse', { fuseA: 30, holderGauge: '8' }] }, [
			['b.pos', 'f.in', { gauge: '6' }],
			['f.out', 'p.1', { gauge: '4' }]
		]);
		expect(says('holder-limit', holder)).toEqual(['W1 and W2 (4 AWG) end in F, which takes conductors up to 8 AWG.']);
	});
	test('values that are not made are listed in ascending order', () => {
		expect(says('fuse-value-not-standard', circuit({ d: ['fused-bus', { fuseA: [70, 20, 40, 60] }] }))[0]).toContain('20 A or 70 A');
	});
	test('a conductor before a fuse, which nothing protects, sets no limit to its rating', () => {
		const diagram = circuit({ b: ['battery'], f: ['inline-fuse', { family: 'strip-sf51', fuseA: 50 }], l: ['load'] }, [
			['b.pos', 'f.in', { gauge: '16', lengthM: 0.1 }],
			['f.out', 'l.pos', { gauge: '4/0' }],
			['l.neg', 'b.neg', { gauge: '4/0' }]
		]);
		expect(mends('fuse-value-not-standard', diagram)[0]).toContain('40 A or 60 A in the type fitted');
	});
	describe('while a load starts', () => {
		const pump = (load: Record<string, string | number | null>, other: Record<string, string | number | null> = { draw: 0.001 }) =>
			circuit(
				{
					b: ['battery', { emfV: 12, resistanceMilliohm: 0.01 }],
					f: ['inline-fuse', { fuseA: 10 }],
					l: ['load', load],
					m: ['load', other]
				},
				[
					['b.pos', 'f.in', { lengthM: 0.1 }],
					['f.out', 'l.pos'],
					['f.out', 'm.pos'],
					['l.neg', 'b.neg'],
					['m.neg', 'b.neg']
				]
			);
		test('a load that draws no more at start than otherwise has no start', () => {
			expect(says('fuse-opens-on-start', pump({ draw: 20, startTimes: 1, startS: 10 }))).toEqual([]);
		});
		test('power and resistance count at the volts of the load at rest', () => {
			// 60 W ÷ 12 V = 5 A; 12 V ÷ 2.4 Ω = 5 A; four times that 20 A.
			expect(says('fuse-opens-on-start', pump({ drawAs: 'power', draw: 60, startTimes: 4, startS: 0.16 }))[0]).toContain('at the 20 A');
			expect(says('fuse-opens-on-start', pump({ drawAs: 'resistance', draw: 2.4, startTimes: 4, startS: 0.16 }))[0]).toContain(
				'at the 20 A'
			);
		});
		test('of two that may open it the greater start is told', () => {
			const both = pump({ draw: 3, startTimes: 5, startS: 2 }, { draw: 4, startTimes: 5, startS: 2 });
			expect(told('fuse-opens-on-start', both)[0]!.subjects.map(({ id }) => id)).toEqual(['f', 'm']);
		});
	});
	describe('a short at the far end', () => {
		const run = (gauge: string, lengthM: number, fuseA: number) =>
			circuit(
				{
					b: ['battery', { emfV: 12.6, resistanceMilliohm: 5 }],
					f: ['inline-fuse', { fuseA }],
					p: ['positive-bus'],
					l: ['load'],
					m: ['load']
				},
				[
					['b.pos', 'f.in', { gauge: '8', lengthM: 0.1 }],
					['f.out', 'p.1', { gauge: '8', lengthM: 0.1 }],
					['p.2', 'l.pos', { id: 'near', gauge, lengthM }],
					['p.3', 'm.pos', { id: 'far', gauge, lengthM: lengthM + 1 }],
					['l.neg', 'b.neg', { gauge, lengthM }],
					['m.neg', 'b.neg', { gauge, lengthM: lengthM + 1 }]
				]
			);
		test('of several conductors behind one fuse the worst is told, the others with it', () => {
			const [found] = told('no-fast-clearing', run('16', 10, 25));
			expect(found!.subjects[0]!.id).toBe('far');
			expect(found!.message).toContain('The same goes for near.');
		});
		test('of two fuses side by side the one that takes longer counts, if it has its share', () => {
			const beside = (first: number, second: number, secondM = 0.1) =>
				circuit(
					{
						b: ['battery', { emfV: 12.6, resistanceMilliohm: 5 }],
						f: ['inline-fuse', { fuseA: first }],
						g: ['inline-fuse', { fuseA: second }],
						p: ['link-post'],
						l: ['load']
					},
					[
						['b.pos', 'f.in', { gauge: '8', lengthM: 0.1 }],
						['b.pos', 'g.in', { gauge: '8', lengthM: secondM }],
						['f.out', 'p.stud', { gauge: '8', lengthM: 0.1 }],
						['g.out', 'p.stud', { gauge: '8', lengthM: 0.1 }],
						['p.stud', 'l.pos', { id: 'W', gauge: '10', lengthM: 14 }],
						['l.neg', 'b.neg', { gauge: '10', lengthM: 14 }]
					]
				);
			const at = (diagram: Diagram) => told('no-fast-clearing', diagram).some(({ subjects }) => subjects[0]!.id === 'W');
			expect(at(beside(20, 20))).toBe(false);
			// With some more lead before the larger one each has half, 50 A: 2.5 times 20 A, and 1.25 times 40 A, at which it need not open.
			expect(at(beside(20, 40, 1.1))).toBe(true);
			expect(at(beside(40, 20))).toBe(true);
			// 10 mΩ against 40 mΩ and more: less than a fifth comes through the larger one, and it sees all when the other has opened.
			expect(at(beside(20, 40, 20))).toBe(false);
		});
	});
	test('of several fuses before one the quickest leads, of several behind one the slowest', () => {
		const strip = (fuseA: number) => ['inline-fuse', { family: 'strip-sf51', fuseA }] as const;
		const diagram = circuit(
			{
				b: ['battery', { capacityAh: 200 }],
				m: strip(150),
				f: strip(100),
				p: ['positive-bus'],
				g: strip(80),
				h: strip(125),
				l: ['load'],
				n: ['load']
			},
			[
				['b.pos', 'm.in', { gauge: '2/0', lengthM: 0.1 }],
				['m.out', 'f.in', { gauge: '2/0', lengthM: 0.1 }],
				['f.out', 'p.1', { gauge: '2/0', lengthM: 0.1 }],
				['p.2', 'g.in', { gauge: '2', lengthM: 0.1 }],
				['g.out', 'l.pos', { gauge: '2', lengthM: 2 }],
				['l.neg', 'b.neg', { gauge: '2', lengthM: 2 }],
				['p.3', 'h.in', { gauge: '2', lengthM: 0.1 }],
				['h.out', 'n.pos', { gauge: '2', lengthM: 2 }],
				['n.neg', 'b.neg', { gauge: '2', lengthM: 2 }]
			]
		);
		const found = told('selectivity-lost', diagram);
		expect(found.map(({ message }) => message.slice(0, message.indexOf('.')))).toEqual(['M and F may open before G and H']);
	});
});

describe('conductors', () => {
	test('a thicker size is found for what runs close to the amperage: 46 A at 80 % ask for 57.5 A, 10 AWG', () => {
		const near = circuit({ b: ['battery'], l: ['load', { draw: 44 }] }, [
			['b.pos', 'l.pos', { gauge: '12' }],
			['l.neg', 'b.neg', { gauge: '4/0' }]
		]);
		// 33 CFR 183.425 Table 5, 105 °C: 12 AWG 45 A, 10 AWG 60 A.
		expect(mends('undersized-conductor', near)[0]).toContain('10 AWG (60 A)');
	});
	test('unlabelled conductors: the one that carries most says how grave it is', () => {
		const diagram = circuit({ b: ['battery'], l: ['load', { draw: 5 }], m: ['load', { draw: 0.1 }] }, [
			['b.pos', 'l.pos', { label: '' }],
			['l.neg', 'b.neg'],
			['b.pos', 'm.pos', { label: '' }],
			['m.neg', 'b.neg']
		]);
		expect(told('missing-label', diagram).map(({ severity }) => severity)).toEqual(['warning']);
	});
});

describe('poles', () => {
	const against = (emfV: number) =>
		circuit({ b: ['battery', { emfV }], l: ['load'] }, [
			['b.pos', 'l.neg'],
			['l.pos', 'b.neg']
		]);
	test('half a volt apart is one pole still', () => {
		expect(says('reversed-polarity', against(0.5))).toEqual([]);
		expect(says('reversed-polarity', against(0.51))).toHaveLength(1);
	});
	const along = (emfV: number) =>
		circuit({ b: ['battery', { emfV }], l: ['load'] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'b.neg']
		]);
	test('and more than that the right way round is fed', () => {
		expect(says('no-return', along(0.5))).not.toEqual(says('no-return', along(0.51)));
	});
});

describe('batteries', () => {
	test('the worst of those over their limits comes first, by how many times it is over', () => {
		// 110 A divided in halves: 55 A of 20 A is worse than 55 A of 50 A.
		const diagram = circuit({ a: ['battery', { continuousA: 50 }], b: ['battery', { continuousA: 20 }], l: ['load', { draw: 110 }] }, [
			['a.pos', 'l.pos', { gauge: '4/0' }],
			['a.neg', 'l.neg', { gauge: '4/0' }],
			['b.pos', 'l.pos', { gauge: '4/0' }],
			['b.neg', 'l.neg', { gauge: '4/0' }]
		]);
		expect(told('battery-discharge-limit', diagram)[0]!.subjects.map(({ id }) => id)).toEqual(['b', 'a']);
	});
	test('charging in the cold: the highest of their limits', () => {
		const diagram = circuit(
			{ a: ['battery', { coldestC: -25, minChargeC: -10 }], b: ['battery', { coldestC: -25, minChargeC: -20 }], c: ['mains-charger'] },
			[
				['a.pos', 'b.pos'],
				['a.neg', 'b.neg'],
				['c.pos', 'b.pos'],
				['c.neg', 'b.neg']
			]
		);
		expect(says('cold-charging', diagram)[0]).toContain('below the −10 °C');
	});
	test('capacitors of two inverters: the smaller is told', () => {
		const diagram = circuit({ b: ['battery'], i: ['inverter', { watts: 3000 }], j: ['inverter', { watts: 2000 }] }, [
			['b.pos', 'i.pos'],
			['b.neg', 'i.neg'],
			['b.pos', 'j.pos'],
			['b.neg', 'j.neg']
		]);
		expect(says('no-precharge', diagram)[0]).toContain('I and J (2000 W and more)');
	});
});

describe('studs', () => {
	test('of several lugs that touch the tightest pair is told, by the widest lug of each stud', () => {
		const diagram = circuit({ b: ['battery'], n: ['negative-bus', { pitchMm: 20 }], l: ['load', { connection: 'studs' }], m: ['load'] }, [
			['b.pos', 'l.pos'],
			['b.neg', 'n.1', { gauge: '2' }],
			['l.neg', 'n.2', { gauge: '2/0' }],
			['m.neg', 'n.2', { gauge: '16' }],
			['b.neg', 'n.3', { gauge: '4/0' }]
		]);
		const [found] = told('lugs-clash', diagram);
		expect(found!.subjects.map(({ id }) => id)).toEqual(['n.2', 'n.3']);
		expect(found!.message).toContain('of W3 and W5');
	});
	test('on a bus of two circuits both orders are tried; of equally good ones the one that moves least', () => {
		const bus = (draws: readonly (number | null)[]) => {
			const used = draws.flatMap((draw, index) => (draw === null ? [] : [{ id: String(index + 1), draw }]));
			return circuit(
				{
					b: ['battery', { resistanceMilliohm: 0.01 }],
					d: ['fused-bus', { positions: draws.length, fuseA: draws.map(() => 250), ratedA: 500 }],
					...Object.fromEntries(used.map(({ id, draw }) => [`l${id}`, ['load', { draw }] as const]))
				},
				[
					['b.pos', 'd.L', { gauge: '4/0' }],
					...used.flatMap(({ id }) => [
						[`d.${id}`, `l${id}.pos`, { id: `C${id}`, gauge: '2' }] as const,
						[`l${id}.neg`, 'b.neg', { gauge: '2' }] as const
					])
				]
			);
		};
		expect(mends('bus-order', bus([20, null, null, 140]))).toEqual(['From the first position on: C4 and C1.']);
		// 30 % of the bar's 500 A, and no less.
		expect(says('bus-order', bus([10, null, null, 140]))).toHaveLength(1);
		expect(says('bus-order', bus([10, null, null, 139.9]))).toEqual([]);
		expect(mends('bus-order', bus([10, 10, 10, 140]))).toEqual(['From the first position on: C4, C1, C2 and C3.']);
		// Orders of seven are tried, of eight there are too many.
		expect(says('bus-order', bus([10, 10, 10, 10, 10, 10, 140]))).toHaveLength(1);
		expect(says('bus-order', bus([10, 10, 10, 10, 10, 10, 10, 140]))).toEqual([]);
	});
});
