/**
 * Circuits with printed answers from two open textbooks: OpenStax, "College Physics" (circuits), and T. Kuphaldt,
 * "Lessons In Electric Circuits", volume I, DC. Tolerances are half of the last printed digit.
 */
import { faultsOf } from '#core/faults';
import { battery, load, network, wire } from '../../support/network.ts';
import type { PublishedTable, PublishedValue } from '../../support/published.ts';
import { IDEAL_OHM, solve } from '../../support/solve.ts';

const value = (what: string, printed: number, ours: number, within: number): PublishedValue => ({ what, printed, ours, within });
const ideal = (part: string, positive: string, negative: string, emfV: number) =>
	battery(part, positive, negative, { emfV, resistanceOhm: IDEAL_OHM });

const openStax = (clause: string, values: readonly PublishedValue[]): PublishedTable => ({
	source: 'OpenStax, College Physics',
	clause,
	seen: 'verified',
	way: 'computed',
	values
});
const lessons = (clause: string, values: readonly PublishedValue[]): PublishedTable => ({
	source: 'Lessons In Electric Circuits, volume I',
	clause,
	seen: 'verified',
	way: 'computed',
	values
});

function terminalVoltage(internal: number, ohms: number) {
	const { loadA, loadV } = solve({
		batteries: [battery('B', '+', '0', { emfV: 12, resistanceOhm: internal })],
		loads: [load('R', '+', '0', { ohms })]
	});
	return { amps: loadA[0]!, volts: loadV[0]!, watts: loadA[0]! * loadV[0]! };
}

function terminalVoltages(): PublishedTable {
	const [light, heavy, old] = [terminalVoltage(0.1, 10), terminalVoltage(0.1, 0.5), terminalVoltage(0.5, 0.5)];
	return openStax('21.2, terminal voltage: 12.0 V with 0.100 Ω inside', [
		value('10.0 Ω, A', 1.188, light.amps, 0.0005),
		value('10.0 Ω, V', 11.9, light.volts, 0.05),
		value('0.500 Ω, A', 20.0, heavy.amps, 0.05),
		value('0.500 Ω, V', 10.0, heavy.volts, 0.05),
		value('0.500 Ω, W', 200, heavy.watts, 0.5),
		value('0.500 Ω inside and out, A', 12.0, old.amps, 0.05),
		value('0.500 Ω inside and out, V', 6.0, old.volts, 0.005),
		value('0.500 Ω inside and out, W', 72.0, old.watts, 0.05)
	]);
}

function twoSources(): PublishedTable {
	const { loadA, batteryA, loadV } = solve({
		batteries: [battery('E1', '+', '0', { emfV: 18, resistanceOhm: 3 }), battery('E2', '+', '0', { emfV: 45, resistanceOhm: 2 })],
		loads: [load('R', '+', '0', { ohms: 6 })]
	});
	return openStax('2e, 21.3, Kirchhoff’s rules, Figure 21.25: 18 V with 3 Ω and 45 V with 2 Ω feed 6 Ω', [
		value('load, A', 4.75, loadA[0]!, 0.005),
		value('18 V source, charged, A', -3.5, batteryA[0]!, 0.005),
		value('45 V source, A', 8.25, batteryA[1]!, 0.005),
		value('load, V', 28.5, loadV[0]!, 0.05)
	]);
}

/** At 20 °C 12.5 V at the load and 0.75 V on each 15 Ω wire: so the source has 14 V and the load 250 Ω. */
function warmWires(): PublishedTable {
	const at = (celsius: number) => {
		const ohm = 15 * (1 + 0.004041 * (celsius - 20));
		return solve({
			batteries: [ideal('B', '+', '0', 14)],
			branches: [wire('W1', '+', 'l', ohm), wire('W2', 'm', '0', ohm)],
			loads: [load('R', 'l', 'm', { ohms: 250 })]
		});
	};
	const [cool, warm] = [at(20), at(35)];
	return lessons('temperature coefficient of resistance: 15 Ω wires, 14 V, α 0.004041', [
		value('20 °C, load, V', 12.5, cool.loadV[0]!, 0.05),
		value('20 °C, each wire, V', 0.75, cool.volts('+', 'l'), 0.005),
		value('35 °C, load, V', 12.42, warm.loadV[0]!, 0.005),
		value('35 °C, wire out, V', 0.79, warm.volts('+', 'l'), 0.005),
		value('35 °C, wire back, V', 0.79, warm.volts('m'), 0.005)
	]);
}

function insideABattery(): PublishedTable {
	const supply = { batteries: [battery('B', '+', '0', { emfV: 10, resistanceOhm: 0.2 })] };
	const net = network(supply);
	return lessons('batteries, internal resistance: 10 V with 0.2 Ω inside', [
		value('into 1 Ω, A', 8.333, solve({ ...supply, loads: [load('R', '+', '0', { ohms: 1 })] }).loadA[0]!, 0.0005),
		value('into a short, A', 50, solve({ ...supply, branches: [wire('S', '+', '0', IDEAL_OHM)] }).branchA[0]!, 0.0005),
		value('prospective short-circuit current, A', 50, faultsOf(net, {}).short(net.node('+'), 'greatest')!.currentA, 1e-9)
	]);
}

function shortedFeeder(): PublishedTable {
	const net = network({
		batteries: [battery('B', '+', '0', { emfV: 230, resistanceOhm: 1e-9 })],
		branches: [wire('P', '+', 'l', 5.6506), wire('N', 'm', '0', 5.6506)],
		loads: [load('L', 'l', 'm', { ohms: 1000 })]
	});
	return lessons('specific resistance: 230 V over 5.651 Ω of 14 AWG each way', [
		value('into a short at the end, A', 20.352, faultsOf(net, {}).shortTo(net.node('l'), net.node('m'), 'greatest').currentA, 0.001)
	]);
}

function twoBatteries(): PublishedTable {
	const { loadV, loadA, batteryA, nodeV, net } = solve({
		batteries: [battery('B1', '+', '0', { emfV: 28, resistanceOhm: 4 }), battery('B2', '+', '0', { emfV: 7, resistanceOhm: 1 })],
		loads: [load('R2', '+', '0', { ohms: 2 })]
	});
	const node = nodeV[net.node('+')]! - nodeV[net.node('0')]!;
	return lessons('DC network analysis: 28 V behind 4 Ω and 7 V behind 1 Ω feed 2 Ω', [
		value('load, V', 8, loadV[0]!, 1e-9),
		value('load, A', 4, loadA[0]!, 1e-9),
		value('28 V battery, A', 5, batteryA[0]!, 1e-9),
		value('7 V battery, charged, A', -1, batteryA[1]!, 1e-9),
		value('4 Ω, V', 20, 28 - node, 1e-9),
		value('1 Ω, V', 1, node - 7, 1e-9)
	]);
}

function unbalancedBridge(): PublishedTable {
	const { volts, branchA, batteryA } = solve({
		batteries: [ideal('B', '1', '0', 24)],
		branches: [
			wire('R1', '1', '2', 150),
			wire('R2', '1', '3', 50),
			wire('R3', '3', '2', 100),
			wire('R4', '2', '0', 300),
			wire('R5', '3', '0', 250)
		]
	});
	const milliamps = branchA.map((amps) => amps * 1000);
	return lessons('DC network analysis, unbalanced bridge: 24 V; 150, 50, 100, 300, 250 Ω', [
		value('node 2, V', 17.655, volts('2'), 0.0005),
		value('node 3, V', 19.31, volts('3'), 0.0005),
		value('R1, V', 6.345, volts('1', '2'), 0.0005),
		value('R2, V', 4.69, volts('1', '3'), 0.0005),
		value('R3, V', 1.655, volts('3', '2'), 0.0005),
		...[42.299, 93.793, 16.552, 58.851, 77.241].map((printed, i) => value(`R${i + 1}, mA`, printed, milliamps[i]!, 0.0006)),
		value('source, mA', 136.092, batteryA[0]! * 1000, 0.0006)
	]);
}

function deltaWyeBridge(): PublishedTable {
	const { volts } = solve({
		batteries: [ideal('B', '1', '0', 10)],
		branches: [
			wire('R1', '1', '2', 12),
			wire('R2', '1', '3', 18),
			wire('R3', '3', '2', 6),
			wire('R4', '2', '0', 18),
			wire('R5', '3', '0', 12)
		]
	});
	return lessons('DC network analysis, Δ-Y conversion: 10 V; 12, 18, 6, 18, 12 Ω', [
		value('R1, V', 4.706, volts('1', '2'), 0.0005),
		value('R2, V', 5.294, volts('1', '3'), 0.0005),
		value('R3, V', 0.5882, volts('2', '3'), 0.00005),
		value('R4, V', 5.294, volts('2'), 0.0005),
		value('R5, V', 4.706, volts('3'), 0.0005)
	]);
}

function nodeVoltages(): PublishedTable {
	const { volts } = solve({
		batteries: [ideal('E1', 'a', '0', 10), ideal('E2', '0', 'b', 4)],
		branches: [
			wire('R1', 'a', '1', 2),
			wire('R2', '1', '0', 4),
			wire('R3', '1', '2', 2.5),
			wire('R4', '2', '0', 5),
			wire('R5', '2', 'b', 1)
		]
	});
	return lessons('node voltage method: a ladder with 10 V at one end and −4 V at the other', [
		value('V(1)', 3.809524, volts('1'), 5e-7),
		value('V(2)', -1.547619, volts('2'), 5e-7)
	]);
}

/** Six 6 V batteries of 2,400 A each, as three strings of two. */
function parallelStrings(): PublishedTable {
	const block = { emfV: 6, resistanceOhm: 6 / 2400 };
	const strings = ['a', 'b', 'c'].flatMap((id) => [battery(`${id}1`, '+', id, block), battery(`${id}2`, id, '0', block)]);
	const net = network({ batteries: strings, loads: [load('L', '+', '0', { watts: 10 })] });
	return {
		source: 'ABYC E-11, quotation on interrupting capacity',
		clause: 'six 6 V batteries of 2,400 A in series-parallel for 12 V',
		seen: 'verified',
		way: 'computed',
		values: [value('short-circuit current, A', 7200, faultsOf(net, {}).short(net.node('+'), 'greatest')!.currentA, 1e-6)]
	};
}

export const CIRCUITS: readonly PublishedTable[] = [
	terminalVoltages(),
	twoSources(),
	warmWires(),
	insideABattery(),
	shortedFeeder(),
	twoBatteries(),
	unbalancedBridge(),
	deltaWyeBridge(),
	nodeVoltages(),
	parallelStrings()
];
