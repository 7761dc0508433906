import * as fc from 'fast-check';
import { LuDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, test, vi } from 'vitest';
import { faultsOf } from '#core/faults';
import { buildNetwork, type Network } from '#core/network';
import { planElimination } from '#core/solver';
import { circuit } from '../../support/circuit.ts';
import { battery, fuse, load, network, source, wire } from '../../support/network.ts';
import { anyNetwork } from '../../support/random-network.ts';

vi.setConfig({ testTimeout: 60_000 });

const faults = (net: Network) => faultsOf(net, {});

describe('textbook', () => {
	// Open textbook (Lessons in Electric Circuits), battery internal resistance: 10 V behind 0.2 Ω, shorted: 50 A.
	test('a battery across its own posts', () => {
		const net = network({ batteries: [battery('B', '+', '0', { emfV: 10, resistanceOhm: 0.2 })] });
		expect(faults(net).short(net.node('+'), 'greatest')!.currentA).toBeCloseTo(50, 9);
	});

	// The reprinted clause on interrupting capacity (ABYC E-11): six 6 V batteries of 2,400 A, three strings of two: 7,200 A.
	test('parallel short-circuit currents add, series ones do not', () => {
		const block = { emfV: 6, resistanceOhm: 6 / 2400 };
		const strings = ['a', 'b', 'c'].flatMap((id) => [battery(`${id}1`, '+', id, block), battery(`${id}2`, id, '0', block)]);
		const net = network({ batteries: strings, loads: [load('L', '+', '0', { watts: 10 })] });
		expect(faults(net).short(net.node('+'), 'greatest')!.currentA).toBeCloseTo(7200, 6);
	});

	// Lessons in Electric Circuits, specific resistance: 230 V over 2 × 5.651 Ω of 14 AWG: 20.352 A into a short.
	test('a short at the end of a run', () => {
		const net = network({
			batteries: [battery('B', '+', '0', { emfV: 230, resistanceOhm: 1e-9 })],
			branches: [wire('P', '+', 'l', 5.6506), wire('N', 'm', '0', 5.6506)],
			loads: [load('L', 'l', 'm', { ohms: 1000 })]
		});
		expect(faults(net).shortTo(net.node('l'), net.node('m'), 'greatest').currentA).toBeCloseTo(20.352, 2);
	});
});

/** Positive and negative matrix of the whole network, solved by ml-matrix: amps of a short, and through each branch. */
function dense(net: Network, at: number, to: number) {
	const size = net.nodeCount;
	const matrix = Matrix.zeros(size + 1, size + 1);
	const right = Matrix.zeros(size + 1, 1);
	const add = (row: number, column: number, value: number): void => void matrix.set(row, column, matrix.get(row, column) + value);
	const resistor = (a: number, b: number, ohm: number): void => {
		add(a, a, 1 / ohm);
		add(b, b, 1 / ohm);
		add(a, b, -1 / ohm);
		add(b, a, -1 / ohm);
	};
	for (const { a, b, resistanceOhm } of net.branches) resistor(a, b, resistanceOhm);
	for (const { positive, negative, faultEmfV, faultResistanceOhm } of net.batteries) {
		resistor(positive, negative, faultResistanceOhm);
		right.set(positive, 0, right.get(positive, 0) + faultEmfV / faultResistanceOhm);
		right.set(negative, 0, right.get(negative, 0) - faultEmfV / faultResistanceOhm);
	}
	for (const { positive, negative, maxA } of net.sources) {
		right.set(positive, 0, right.get(positive, 0) + maxA);
		right.set(negative, 0, right.get(negative, 0) - maxA);
	}
	// The short is an unknown current that keeps both nodes at one voltage; `to` is the reference.
	add(at, size, 1);
	add(to, size, -1);
	add(size, at, 1);
	add(size, to, -1);
	const kept = [...Array(size + 1).keys()].filter((row) => row !== to);
	const reduced = matrix.selection(kept, kept);
	const sources = right.selection(kept, [0]);
	const factors = new LuDecomposition(reduced);
	const first = factors.solve(sources);
	// Where sources nearly cancel, digits are lost: what is left over is solved for again.
	const solution = Matrix.add(first, factors.solve(Matrix.sub(sources, reduced.mmul(first))));
	const value = (row: number): number => (row === to ? 0 : solution.get(kept.indexOf(row), 0));
	return { currentA: value(size), branchA: net.branches.map(({ a, b, resistanceOhm }) => (value(a) - value(b)) / resistanceOhm) };
}

test('any network: total and branch currents of a short agree with a dense solution by ml-matrix', () => {
	fc.assert(
		fc.property(anyNetwork({ sources: true, most: 12 }), fc.nat(), (net, pick) => {
			const positives = [...Array(net.nodeCount).keys()].filter((node) => faults(net).returnOf(node) !== null);
			const node = positives[pick % positives.length]!;
			const short = faults(net).short(node, 'greatest')!;
			const expected = dense(net, node, short.to);
			// Sources can hold a node near its return’s voltage: the short is then the small difference of large currents.
			const greatestA = Math.max(expected.currentA, ...expected.branchA.map(Math.abs));
			if (!(short.openV > 0)) {
				// Held below its return by a source: nothing flows into a short there, and the program says so.
				expect(short.currentA).toBe(0);
				expect(expected.currentA).toBeLessThan(1e-9 * greatestA);
				return;
			}
			expect(Math.abs(short.currentA - expected.currentA)).toBeLessThan(1e-9 * greatestA);
			for (const branch of net.branches) {
				expect(Math.abs(short.branchA(branch) - expected.branchA[branch.index]!)).toBeLessThan(1e-9 * greatestA);
			}
		}),
		{ numRuns: 80 }
	);
});

test('resistance between two nodes agrees with the inverse by ml-matrix', () => {
	const nodes = 12;
	const edge = fc.tuple(fc.nat({ max: nodes - 1 }), fc.nat({ max: nodes - 1 }), fc.double({ min: 1e-3, max: 1e3, noNaN: true }));
	fc.assert(
		fc.property(fc.array(edge, { maxLength: 20 }), fc.nat({ max: nodes - 1 }), fc.nat({ max: nodes - 1 }), (extra, a, b) => {
			const ring = Array.from({ length: nodes }, (_, i) => [i, (i + 1) % nodes, 1 + i] as const);
			const all = [...ring, ...extra];
			const pinned = new Uint8Array(nodes);
			pinned[0] = 1;
			const factors = planElimination({ nodeCount: nodes, edges: all.map(([x, y]) => [x, y] as const) }).factor(
				Float64Array.from(all, ([, , siemens]) => siemens),
				pinned
			);
			const matrix = Matrix.zeros(nodes, nodes);
			for (const [x, y, siemens] of all) {
				if (x === y) continue;
				for (const [row, column, sign] of [
					[x, x, 1],
					[y, y, 1],
					[x, y, -1],
					[y, x, -1]
				] as const) {
					matrix.set(row, column, matrix.get(row, column) + sign * siemens);
				}
			}
			const kept = [...Array(nodes).keys()].slice(1);
			const solved = new LuDecomposition(matrix.selection(kept, kept)).solve(
				Matrix.columnVector(kept.map((node) => Number(node === a) - Number(node === b)))
			);
			const volts = (node: number): number => (node === 0 ? 0 : solved.get(node - 1, 0));
			expect(Math.abs(factors.resistanceOhm(a, b) - (volts(a) - volts(b)))).toBeLessThan(1e-9 * (1 + volts(a) - volts(b)));
			// The work arrays are clean again.
			expect(factors.resistanceOhm(a, b)).toBe(factors.resistanceOhm(a, b));
		}),
		{ numRuns: 100 }
	);
});

describe('through a device', () => {
	const two = (ohm: number) =>
		network({
			batteries: [battery('A', 'a', '0', { emfV: 12, resistanceOhm: 0.002 }), battery('B', 'b', '0', { emfV: 12, resistanceOhm: 0.004 })],
			branches: [fuse('F', 'a', 'bus', 100, ohm), fuse('G', 'b', 'bus', 100, 0.001)],
			loads: [load('L', 'bus', '0', { watts: 10 })]
		});

	test('only what comes through it counts, and its own resistance does not', () => {
		for (const ohm of [1e-5, 0.001, 0.5]) {
			const net = two(ohm);
			const through = faults(net).throughDevice(net.branches[0]!);
			// Battery A alone: 12 V / 2 mΩ. Battery B feeds the short from the other side.
			expect(through.currentA).toBeCloseTo(6000, 4);
			expect(through.from).toBe(net.node('a'));
			expect(through.sourceOhm).toBeCloseTo(0.002, 9);
		}
	});

	test('the greater direction counts', () => {
		const net = network({
			batteries: [battery('A', 'a', '0', { emfV: 12, resistanceOhm: 0.2 }), battery('B', 'b', '0', { emfV: 12, resistanceOhm: 0.004 })],
			branches: [fuse('F', 'a', 'b', 100)]
		});
		const through = faults(net).throughDevice(net.branches[0]!);
		expect(through.currentA).toBeCloseTo(3000, 6);
		expect(through.from).toBe(net.node('b'));
	});
});

describe('conditions', () => {
	const diagram = circuit({ b: ['battery', { capacityAh: 100, resistanceMilliohm: 5 }], l: ['load'], s: ['mains-charger', { maxA: 30 }] }, [
		['b.pos', 'l.pos', { gauge: '6', lengthM: 5 }],
		['l.neg', 'b.neg', { gauge: '6', lengthM: 5 }],
		['s.pos', 'b.pos', { gauge: '6', lengthM: 1 }],
		['s.neg', 'b.neg', { gauge: '6', lengthM: 1 }]
	]);
	const net = buildNetwork(diagram);
	const found = faultsOf(net, diagram.conductors);
	const end = net.nodeOf.get('l.pos')!;
	// 6 AWG: 13.30 mm² (ASTM B258). Joints 4 × 0.04 mΩ.
	const areaMm2 = (Math.PI / 4) * (0.127 * 92 ** (30 / 39)) ** 2;

	test('greatest: 13.6 V behind 2.5 mΩ, copper of 0.017241 Ω·mm²/m (IACS at 20 °C), the charger’s 30 A shared', () => {
		const runOhm = (0.017241 * 10) / areaMm2 + 4 * 0.04e-3;
		// The charger’s current divides between the battery and the short.
		expect(found.short(end, 'greatest')!.currentA).toBeCloseTo((13.6 + 30 * 0.0025) / (0.0025 + runOhm), 3);
	});

	test('least: 13.2 V behind 5 mΩ, copper 1.2 × 0.01787 Ω·mm²/m, no charger', () => {
		const runOhm = (1.2 * 0.01787 * 10) / areaMm2 + 4 * 0.04e-3;
		expect(found.short(end, 'least')!.currentA).toBeCloseTo(13.2 / (0.005 + runOhm), 3);
	});
});

describe('a rail fed by a converter alone', () => {
	const net = network({
		batteries: [battery('B', '+', '0')],
		branches: [wire('N', '0', 'n', 0.001), fuse('F', 'rail', 'l', 10)],
		loads: [load('IN', '+', '0', { watts: 1 }, { followsSource: 'C' }), load('L', 'l', 'n', { watts: 1 })],
		sources: [source('C', 'rail', 'n', { maxA: 20, setV: 12, fedBy: 'IN', alwaysOn: true })]
	});

	test('gives what the converter can, and no battery’s current', () => {
		expect(faults(net).short(net.node('l'), 'greatest')!.currentA).toBe(20);
		expect(faults(net).throughDevice(net.branches[1]!).currentA).toBe(20);
	});
});

describe('the return', () => {
	const diagram = circuit({ b: ['battery'], p: ['positive-bus'], n: ['negative-bus'], l: ['load'] }, [
		['b.pos', 'p.1', { gauge: '4', lengthM: 1 }],
		['p.2', 'l.pos', { gauge: '12', lengthM: 3 }],
		['l.neg', 'n.2', { gauge: '12', lengthM: 3 }],
		['n.1', 'b.neg', { gauge: '4', lengthM: 1 }]
	]);
	const net = buildNetwork(diagram);
	const found = faultsOf(net, diagram.conductors);
	const returnOf = (stud: string): number | null => found.returnOf(net.nodeOf.get(stud)!);

	test('is the load’s own terminal at the end of a run, the bus for the bus, the battery’s post for its post', () => {
		expect(returnOf('l.pos')).toBe(net.nodeOf.get('l.neg'));
		expect(returnOf('p.2')).toBe(net.nodeOf.get('n.2'));
		expect(returnOf('b.pos')).toBe(net.nodeOf.get('b.neg'));
	});

	test('is none for what is not positive', () => {
		expect(returnOf('n.1')).toBeNull();
		expect(found.short(net.nodeOf.get('l.neg')!, 'greatest')).toBeNull();
	});
});

test('the return does not follow a circuit that begins at another battery’s post', () => {
	// The charger beside the second battery is nearer to the bus than the load is.
	const diagram = circuit({ b: ['battery'], c: ['battery'], p: ['positive-bus'], n: ['negative-bus'], l: ['load'], s: ['mains-charger'] }, [
		['b.pos', 'p.1', { lengthM: 1 }],
		['c.pos', 'p.2', { lengthM: 2 }],
		['s.pos', 'c.pos', { lengthM: 0.5 }],
		['s.neg', 'c.neg', { lengthM: 0.5 }],
		['c.neg', 'n.2', { lengthM: 2 }],
		['p.3', 'l.pos', { lengthM: 10 }],
		['l.neg', 'n.3', { lengthM: 10 }],
		['n.1', 'b.neg', { lengthM: 1 }]
	]);
	const net = buildNetwork(diagram);
	expect(faultsOf(net, diagram.conductors).returnOf(net.nodeOf.get('p.3')!)).toBe(net.nodeOf.get('n.3'));
});
