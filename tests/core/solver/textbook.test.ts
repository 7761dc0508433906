/**
 * Circuits with printed answers from two open textbooks: OpenStax, "College Physics" (chapter 21, circuits), and
 * T. Kuphaldt, "Lessons In Electric Circuits", volume I, DC. Tolerances are half of the last printed digit.
 */
import { describe, expect, test } from 'vitest';
import { solveCase } from '#core/solver';
import { allOn, battery, load, network, wire, type NetworkSpec } from '../../support/network.ts';

/** An ideal source: no book circuit here notices a tenth of a micro-ohm. */
const IDEAL = 1e-7;

function solve(spec: NetworkSpec) {
	const net = network(spec);
	const point = solveCase(net, 'on', allOn());
	expect(point.status).toBe('solved');
	return { ...point, volts: (a: string, b = '0') => point.nodeV[net.node(a)]! - point.nodeV[net.node(b)]! };
}

const within = (value: number | undefined, expected: number, half: number) => expect(Math.abs(value! - expected)).toBeLessThanOrEqual(half);

describe('OpenStax College Physics', () => {
	// Section 21.2, "Electromotive force: terminal voltage", worked example.
	test.each([
		{ internal: 0.1, ohms: 10, amps: [1.188, 0.0005], volts: [11.9, 0.05] },
		{ internal: 0.1, ohms: 0.5, amps: [20.0, 0.05], volts: [10.0, 0.05] },
		{ internal: 0.5, ohms: 0.5, amps: [12.0, 0.05], volts: [6.0, 0.005] }
	] as const)('12 V with $internal Ω inside feeding $ohms Ω', ({ internal, ohms, amps, volts }) => {
		const { loadA, loadV } = solve({
			batteries: [battery('B', '+', '0', { emfV: 12, resistanceOhm: internal })],
			loads: [load('R', '+', '0', { ohms })]
		});
		within(loadA[0], amps[0]!, amps[1]!);
		within(loadV[0], volts[0]!, volts[1]!);
	});

	// College Physics 2e, section 21.3, "Kirchhoff's rules", worked example (Figure 21.25).
	test('18 V with 3 Ω and 45 V with 2 Ω feed 6 Ω: the weaker one is charged', () => {
		const { loadA, batteryA, loadV } = solve({
			batteries: [battery('E1', '+', '0', { emfV: 18, resistanceOhm: 3 }), battery('E2', '+', '0', { emfV: 45, resistanceOhm: 2 })],
			loads: [load('R', '+', '0', { ohms: 6 })]
		});
		within(loadA[0], 4.75, 0.005);
		within(batteryA[0], -3.5, 0.005);
		within(batteryA[1], 8.25, 0.005);
		within(loadV[0], 28.5, 0.05);
	});
});

describe('Lessons In Electric Circuits, volume I', () => {
	// Chapter "Physics of conductors and insulators", temperature coefficient of resistance. The book gives the drops
	// at 20 °C (12.5 V at the load, 0.75 V on each 15 Ω wire), from which source and load follow: 14 V and 250 Ω.
	test.each([
		{ celsius: 20, loadV: [12.5, 0.05], wireV: [0.75, 0.005] },
		{ celsius: 35, loadV: [12.42, 0.005], wireV: [0.79, 0.005] }
	] as const)('wires at $celsius °C', ({ celsius, loadV, wireV }) => {
		const ohm = 15 * (1 + 0.004041 * (celsius - 20));
		const point = solve({
			batteries: [battery('B', '+', '0', { emfV: 14, resistanceOhm: IDEAL })],
			branches: [wire('W1', '+', 'l', ohm), wire('W2', 'm', '0', ohm)],
			loads: [load('R', 'l', 'm', { ohms: 250 })]
		});
		within(point.loadV[0], loadV[0]!, loadV[1]!);
		within(point.volts('+', 'l'), wireV[0]!, wireV[1]!);
		within(point.volts('m'), wireV[0]!, wireV[1]!);
	});

	// Chapter "Batteries and power systems": internal resistance.
	test('10 V with 0.2 Ω inside: 8.333 A into 1 Ω, 50 A into a short', () => {
		const supply = { batteries: [battery('B', '+', '0', { emfV: 10, resistanceOhm: 0.2 })] };
		within(solve({ ...supply, loads: [load('R', '+', '0', { ohms: 1 })] }).loadA[0], 8.333, 0.0005);
		within(solve({ ...supply, branches: [wire('S', '+', '0', IDEAL)] }).branchA[0], 50, 0.0005);
	});

	// Chapter "DC network analysis", the circuit used for branch current, mesh current, superposition, Thevenin.
	test('28 V behind 4 Ω and 7 V behind 1 Ω feed 2 Ω', () => {
		const { loadV, loadA, batteryA } = solve({
			batteries: [battery('B1', '+', '0', { emfV: 28, resistanceOhm: 4 }), battery('B2', '+', '0', { emfV: 7, resistanceOhm: 1 })],
			loads: [load('R2', '+', '0', { ohms: 2 })]
		});
		within(loadV[0], 8, 1e-9);
		within(loadA[0], 4, 1e-9);
		within(batteryA[0], 5, 1e-9);
		within(batteryA[1], -1, 1e-9);
	});

	// Same chapter, unbalanced bridge.
	test('24 V unbalanced bridge', () => {
		const { volts, branchA, batteryA } = solve({
			batteries: [battery('B', '1', '0', { emfV: 24, resistanceOhm: IDEAL })],
			branches: [
				wire('R1', '1', '2', 150),
				wire('R2', '1', '3', 50),
				wire('R3', '3', '2', 100),
				wire('R4', '2', '0', 300),
				wire('R5', '3', '0', 250)
			]
		});
		within(volts('2'), 17.655, 0.0005);
		within(volts('3'), 19.31, 0.0005);
		within(volts('1', '2'), 6.345, 0.0005);
		within(volts('1', '3'), 4.69, 0.0005);
		within(volts('3', '2'), 1.655, 0.0005);
		[42.299, 93.793, 16.552, 58.851, 77.241].forEach((milliamps, i) => within(branchA[i]! * 1000, milliamps, 0.0006));
		within(batteryA[0]! * 1000, 136.092, 0.0006);
	});

	// Same chapter, delta-wye conversion.
	test('10 V bridge', () => {
		const { volts } = solve({
			batteries: [battery('B', '1', '0', { emfV: 10, resistanceOhm: IDEAL })],
			branches: [
				wire('R1', '1', '2', 12),
				wire('R2', '1', '3', 18),
				wire('R3', '3', '2', 6),
				wire('R4', '2', '0', 18),
				wire('R5', '3', '0', 12)
			]
		});
		within(volts('1', '2'), 4.706, 0.0005);
		within(volts('1', '3'), 5.294, 0.0005);
		within(volts('2', '3'), 0.5882, 0.00005);
		within(volts('2'), 5.294, 0.0005);
		within(volts('3'), 4.706, 0.0005);
	});

	// Same chapter, node voltage method.
	test('ladder with two sources of opposite sign', () => {
		const { volts } = solve({
			batteries: [battery('E1', 'a', '0', { emfV: 10, resistanceOhm: IDEAL }), battery('E2', '0', 'b', { emfV: 4, resistanceOhm: IDEAL })],
			branches: [
				wire('R1', 'a', '1', 2),
				wire('R2', '1', '0', 4),
				wire('R3', '1', '2', 2.5),
				wire('R4', '2', '0', 5),
				wire('R5', '2', 'b', 1)
			]
		});
		within(volts('1'), 3.809524, 5e-7);
		within(volts('2'), -1.547619, 5e-7);
	});
});
