/**
 * Circuits whose answer is a formula of general physics (Ohm, Kirchhoff, Thévenin, Millman, Maxwell), worked with random
 * values. The formula stands beside each. Circuits with printed answers are in tests/core/published/circuits.ts.
 */
import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { battery, load, wire } from '../../support/network.ts';
import { IDEAL_OHM, solve } from '../../support/solve.ts';

vi.setConfig({ testTimeout: 60_000 });

const RUNS = { numRuns: 60 };
const ohm = fc.double({ min: 0.5, max: 500, noNaN: true });
const volt = fc.double({ min: 2, max: 60, noNaN: true });
const ideal = (part: string, positive: string, negative: string, emfV: number) =>
	battery(part, positive, negative, { emfV, resistanceOhm: IDEAL_OHM });
const parallel = (...ohms: number[]): number => 1 / ohms.reduce((sum, r) => sum + 1 / r, 0);

/** Relative to the greater of the two and to one: an ideal source's tenth of a micro-ohm is allowed for. */
const expectClose = (ours: number, theirs: number, relative = 1e-6): void => {
	expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(relative * Math.max(1, Math.abs(theirs)));
};

describe('a line fed from both ends', () => {
	/** Stretches between the ends and the loads, there and back in one. */
	const line = (volts: readonly [number, number], lengthM: number, ohmPerM: number, loads: readonly { atM: number; amps: number }[]) => {
		const places = [0, ...loads.map(({ atM }) => atM), lengthM];
		return solve({
			batteries: [ideal('A', '0m', '0', volts[0]), ideal('B', `${lengthM}m`, '0', volts[1])],
			branches: places.slice(1).map((to, i) => wire(`S${i + 1}`, `${places[i]}m`, `${to}m`, (to - places[i]!) * ohmPerM)),
			loads: loads.map(({ atM, amps }) => load(`L${atM}`, `${atM}m`, '0', { amps }))
		});
	};

	// A street main of 600 m, 220 V at both ends, 20, 40, 50 and 30 A at 100, 250, 400 and 500 m; 1 cm² at 1.7 µΩ·cm, there and
	// back. What end A gives is Σ i·(L − x)/L = 37,000/600 A, and the least voltage is at 400 m, where the feeds meet.
	test('gives each end its share by distance', () => {
		const { batteryA, amps, loadV } = line([220, 220], 600, 2 * 1.7e-4, [
			{ atM: 100, amps: 20 },
			{ atM: 250, amps: 40 },
			{ atM: 400, amps: 50 },
			{ atM: 500, amps: 30 }
		]);
		expectClose(batteryA[0]!, 37_000 / 600);
		expectClose(batteryA[1]!, 140 - 37_000 / 600);
		expectClose(amps('S3'), 37_000 / 600 - 60, 1e-5);
		expect(Math.min(...loadV)).toBe(loadV[2]);
		expectClose(loadV[2]!, 220 - 3.4e-4 * ((37_000 / 600) * 400 - 20 * 300 - 40 * 150));
	});

	// A ring of 300 m fed at one place is the same line with its ends joined: 120 A at 150 m, 80 A at 200 m, 0.03 Ω/100 m each way.
	test('a ring main of 240 V', () => {
		const { amps, loadV } = line([240, 240], 300, 6e-4, [
			{ atM: 150, amps: 120 },
			{ atM: 200, amps: 80 }
		]);
		const firstA = (120 * 150 + 80 * 100) / 300;
		expectClose(amps('S1'), firstA);
		expectClose(amps('S2'), firstA - 120);
		expectClose(loadV[0]!, 240 - firstA * 150 * 6e-4);
		expectClose(loadV[1]!, 240 - (200 - firstA) * 100 * 6e-4);
	});

	test('at different voltages sends the difference through as well: I = (U₁ − U₂)/R + Σ i·(L − x)/L', () => {
		const loads = fc
			.array(fc.record({ share: fc.double({ min: 0.02, max: 1, noNaN: true }), amps: fc.double({ min: 0.1, max: 20, noNaN: true }) }), {
				minLength: 1,
				maxLength: 6
			})
			.map((steps) => {
				const whole = steps.reduce((sum, { share }) => sum + share, 0.05);
				let atM = 0;
				return steps.map(({ share, amps }) => ({ atM: (atM += (100 * share) / whole), amps }));
			});
		fc.assert(
			fc.property(loads, fc.double({ min: 11.5, max: 14, noNaN: true }), fc.double({ min: 11.5, max: 14, noNaN: true }), (taken, a, b) => {
				const ohmPerM = 1e-3;
				const { batteryA } = line([a, b], 100, ohmPerM, taken);
				const shareA = taken.reduce((sum, { atM, amps }) => sum + (amps * (100 - atM)) / 100, 0);
				expectClose(batteryA[0]!, (a - b) / (100 * ohmPerM) + shareA, 1e-4);
			}),
			RUNS
		);
	});
});

describe('Wheatstone bridge', () => {
	const bridge = (emfV: number, [a, b, c, d, g]: readonly number[]) =>
		solve({
			batteries: [ideal('B', '+', '0', emfV)],
			branches: [wire('A', '+', 'l', a), wire('C', '+', 'r', c), wire('B', 'l', '0', b), wire('D', 'r', '0', d), wire('G', 'l', 'r', g)]
		});

	test('unbalanced: by Thévenin, E·(b/(a+b) − d/(c+d)) behind a∥b + c∥d', () => {
		fc.assert(
			fc.property(volt, fc.array(ohm, { minLength: 5, maxLength: 5 }), (emfV, arms) => {
				const [a, b, c, d, g] = arms as [number, number, number, number, number];
				const openV = emfV * (b / (a + b) - d / (c + d));
				expectClose(bridge(emfV, arms).amps('G'), openV / (parallel(a, b) + parallel(c, d) + g));
			}),
			RUNS
		);
	});

	test('balanced when a·d = b·c: nothing flows across, whatever is there', () => {
		fc.assert(
			fc.property(volt, ohm, ohm, ohm, ohm, (emfV, a, b, c, g) => {
				expect(Math.abs(bridge(emfV, [a, b, c, (b * c) / a, g]).amps('G'))).toBeLessThan(1e-8);
			}),
			RUNS
		);
	});

	// 12 V; 100 Ω and 150 Ω on one side, 220 Ω and 270 Ω on the other, 50 Ω across. Thévenin: 7.2 − 6.612245 = 0.587755 V
	// behind 60 + 121.224490 Ω; with 50 Ω: 2.541924 mA.
	test('12 V; 100, 150, 220, 270 Ω, 50 Ω across: 2.542 mA', () => {
		expect(bridge(12, [100, 150, 220, 270, 50]).amps('G') * 1000).toBeCloseTo(2.541924, 5);
	});
});

describe('ladders', () => {
	// Seen from the far end each node has 2R on either side, so that the voltage halves from node to node.
	test.each([1, 4, 8, 12])('R-2R with %d rungs halves the voltage at each, and looks like 2R from its end', (rungs) => {
		const [r, emfV] = [10, 12];
		const { volts, batteryA } = solve({
			batteries: [ideal('B', 'n0', '0', emfV)],
			branches: [
				...Array.from({ length: rungs }, (_, i) => wire(`R${i}`, `n${i}`, `n${i + 1}`, r)),
				...Array.from({ length: rungs - 1 }, (_, i) => wire(`S${i}`, `n${i + 1}`, '0', 2 * r)),
				wire('END', `n${rungs}`, '0', r)
			]
		});
		for (let i = 0; i <= rungs; i++) expectClose(volts(`n${i}`), emfV / 2 ** i);
		expectClose(batteryA[0]!, emfV / (2 * r));
	});

	// A converter of n bits: branch k of 2R goes to the reference or to 0 V; the end of the ladder is at E·Σ bₖ·2⁻ᵏ.
	test('R-2R as a converter: the voltage at its end is the number on its switches', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 255 }), (code) => {
				const bits = Array.from({ length: 8 }, (_, k) => (code >> k) & 1);
				const { volts } = solve({
					batteries: [ideal('B', 'ref', '0', 5)],
					branches: [
						wire('T', 'b0', '0', 2000),
						...bits.map((bit, k) => wire(`K${k}`, `b${k}`, bit ? 'ref' : '0', 2000)),
						...Array.from({ length: 7 }, (_, k) => wire(`R${k}`, `b${k}`, `b${k + 1}`, 1000))
					]
				});
				expectClose(volts('b7'), (5 * code) / 256);
			}),
			RUNS
		);
	});

	test('a long ladder of equal resistances tends to the golden section', () => {
		const rungs = 30;
		const { batteryA } = solve({
			batteries: [ideal('B', 'n0', '0', 1)],
			branches: Array.from({ length: rungs }, (_, i) => [wire(`R${i}`, `n${i}`, `n${i + 1}`, 1), wire(`S${i}`, `n${i + 1}`, '0', 1)]).flat()
		});
		expect(1 / batteryA[0]!).toBeCloseTo((1 + Math.sqrt(5)) / 2, 6);
	});
});

describe('a battery with resistance inside', () => {
	test('gives most to a load of its own resistance, E²/4r, at half its voltage', () => {
		const watts = (emfV: number, inside: number, ohms: number): number => {
			const { loadA, loadV } = solve({
				batteries: [battery('B', '+', '0', { emfV, resistanceOhm: inside })],
				loads: [load('R', '+', '0', { ohms })]
			});
			return loadA[0]! * loadV[0]!;
		};
		fc.assert(
			fc.property(volt, ohm, fc.double({ min: 1.01, max: 20, noNaN: true }), (emfV, inside, off) => {
				const most = watts(emfV, inside, inside);
				expectClose(most, emfV ** 2 / (4 * inside), 1e-9);
				expect(watts(emfV, inside, inside * off)).toBeLessThan(most);
				expect(watts(emfV, inside, inside / off)).toBeLessThan(most);
				// R and r²/R take the same.
				expectClose(watts(emfV, inside, inside * off), watts(emfV, inside, inside / off), 1e-9);
			}),
			RUNS
		);
	});

	// Millman: U = Σ(E/r) / (Σ(1/r) + 1/R).
	test('several in parallel, each on its own leads: Millman', () => {
		const supplies = fc.array(fc.record({ emfV: fc.double({ min: 11, max: 14, noNaN: true }), ohms: ohm }), { minLength: 1, maxLength: 6 });
		fc.assert(
			fc.property(supplies, ohm, (all, ohms) => {
				const { loadV, batteryA } = solve({
					batteries: all.map(({ emfV }, i) => battery(`B${i}`, `b${i}`, '0', { emfV, resistanceOhm: 0.01 })),
					branches: all.map(({ ohms }, i) => wire(`W${i}`, `b${i}`, '+', ohms)),
					loads: [load('R', '+', '0', { ohms })]
				});
				const short = all.reduce((sum, { emfV, ohms }) => sum + emfV / (ohms + 0.01), 0);
				const volts = short / (all.reduce((sum, { ohms }) => sum + 1 / (ohms + 0.01), 0) + 1 / ohms);
				expectClose(loadV[0]!, volts, 1e-9);
				all.forEach(({ emfV, ohms }, i) => expectClose(batteryA[i]!, (emfV - volts) / (ohms + 0.01), 1e-9));
			}),
			RUNS
		);
	});
});

test('a voltage divider gives way under its load: E·(b∥R)/(a + b∥R)', () => {
	fc.assert(
		fc.property(volt, ohm, ohm, ohm, (emfV, a, b, ohms) => {
			const { loadV } = solve({
				batteries: [ideal('B', '+', '0', emfV)],
				branches: [wire('A', '+', 'm', a)],
				loads: [load('R', 'm', '0', { ohms }), load('B', 'm', '0', { ohms: b })]
			});
			expectClose(loadV[0]!, (emfV * parallel(b, ohms)) / (a + parallel(b, ohms)));
		}),
		RUNS
	);
});

describe('three-wire supply: two batteries in series, the middle wire brought out', () => {
	/** Outer wires `outer`, middle wire `middle`, loads on the upper and on the lower half. */
	const threeWire = (emfV: number, outer: number, middle: number, upper: number, lower: number) =>
		solve({
			batteries: [ideal('TOP', '+', 'm', emfV), ideal('LOW', 'm', '0', emfV)],
			branches: [wire('P', '+', 'a', outer), wire('M', 'n', 'm', middle), wire('N', 'b', '0', outer)],
			loads: [load('U', 'a', 'n', { ohms: upper }), load('L', 'n', 'b', { ohms: lower })]
		});

	// Meshes: E = I₁·(o + U + m) − I₂·m and E = I₂·(o + L + m) − I₁·m.
	test('each half by Maxwell’s meshes; the middle wire carries the difference', () => {
		fc.assert(
			fc.property(volt, ohm, ohm, ohm, ohm, (emfV, outer, middle, upper, lower) => {
				const [a, b] = [outer + upper + middle, outer + lower + middle];
				const determinant = a * b - middle ** 2;
				const [upperA, lowerA] = [(emfV * (b + middle)) / determinant, (emfV * (a + middle)) / determinant];
				const { loadA, amps } = threeWire(emfV, outer, middle, upper, lower);
				expectClose(loadA[0]!, upperA);
				expectClose(loadA[1]!, lowerA);
				expectClose(amps('M'), upperA - lowerA);
			}),
			RUNS
		);
	});

	test('equal halves leave the middle wire idle', () => {
		expect(Math.abs(threeWire(12, 0.05, 0.05, 3, 3).amps('M'))).toBeLessThan(1e-9);
	});

	// Open middle wire: 24 V over 1 + 5 Ω: the lightly loaded half gets 20 V of 24.
	test('a broken middle wire puts the halves in series: the lighter load gets too much', () => {
		const { loadV } = threeWire(12, 1e-6, 1e9, 1, 5);
		expectClose(loadV[0]!, 4, 1e-5);
		expectClose(loadV[1]!, 20, 1e-5);
	});
});

describe('any network', () => {
	// Reciprocity: a source in one branch drives through another what it would drive the other way round.
	test('is reciprocal: source and ammeter may change places', () => {
		fc.assert(
			fc.property(volt, fc.array(ohm, { minLength: 6, maxLength: 6 }), (emfV, r) => {
				const mesh = (sourceAt: 'first' | 'second') =>
					solve({
						batteries: [
							battery('S', 'a', 's', { emfV: sourceAt === 'first' ? emfV : 0, resistanceOhm: r[0]! }),
							battery('T', 'b', 't', { emfV: sourceAt === 'second' ? emfV : 0, resistanceOhm: r[1]! })
						],
						branches: [wire('1', 'a', 'b', r[2]!), wire('2', 's', 't', r[3]!), wire('3', 'a', 't', r[4]!), wire('4', 's', 'b', r[5]!)]
					}).batteryA;
				expectClose(mesh('first')[1]!, mesh('second')[0]!, 1e-9);
			}),
			RUNS
		);
	});

	// A star of a, b, c is a triangle of ab + bc + ca over the opposite arm.
	test('does not notice a star put in the place of a triangle', () => {
		fc.assert(
			fc.property(volt, ohm, ohm, ohm, ohm, ohm, (emfV, a, b, c, ohms, other) => {
				const around = { batteries: [battery('B', 'x', '0', { emfV, resistanceOhm: 1 })] };
				const loads = [load('R', 'y', '0', { ohms }), load('Q', 'z', '0', { ohms: other })];
				const star = solve({ ...around, loads, branches: [wire('a', 'x', '*', a), wire('b', 'y', '*', b), wire('c', 'z', '*', c)] });
				const sum = a * b + b * c + c * a;
				const triangle = solve({
					...around,
					loads,
					branches: [wire('ab', 'x', 'y', sum / c), wire('bc', 'y', 'z', sum / a), wire('ca', 'z', 'x', sum / b)]
				});
				for (const i of [0, 1]) expectClose(star.loadV[i]!, triangle.loadV[i]!, 1e-10);
			}),
			RUNS
		);
	});
});
