import { describe, expect, test } from 'vitest';
import { solveCase } from '#core/solver';
import { allOn, battery, fuse, load, network, source, switchLink, wire } from '../../support/network.ts';

/** 12.8 V behind 20 mΩ. */
const weakSupply = (watts: number) =>
	network({ batteries: [battery('B', '+', '0', { resistanceOhm: 0.02 })], loads: [load('L', '+', '0', { watts })] });

describe('constant-power load', () => {
	// Derived: v = (E + √(E² − 4RP))/2, which exists only up to P = E²/4R = 2048 W.
	test('takes the higher of the two voltages at which the power balances', () => {
		const point = solveCase(weakSupply(600), 'on', allOn());
		expect(point.status).toBe('solved');
		expect(point.loadV[0]).toBeCloseTo(11.78145, 6);
		expect(point.loadA[0]).toBeCloseTo(50.927519, 6);
	});

	test.each([2000, 2040, 2047.9, 2047.999999])('is found at %d W, just below the limit of 2048 W', (watts) => {
		const point = solveCase(weakSupply(watts), 'on', allOn());
		expect(point.status).toBe('solved');
		expect(point.loadV[0]).toBeCloseTo((12.8 + Math.sqrt(12.8 ** 2 - 4 * 0.02 * watts)) / 2, 5);
		expect(point.loadV[0]! * point.loadA[0]!).toBeCloseTo(watts, 4);
	});

	test.each([2048.0001, 2049, 2100, 5000, 1e6, 1e300])('has no operating point at %d W', (watts) => {
		const point = solveCase(weakSupply(watts), 'on', allOn());
		expect(point.status).toBe('collapsed');
		expect(point.collapsedLoads).toEqual([0]);
		for (const values of [point.nodeV, point.branchA, point.batteryA, point.loadA, point.loadV]) {
			expect(values.every(Number.isFinite)).toBe(true);
		}
	});
});

test('a source that has been idle comes to help, and a load beyond the battery alone is carried', () => {
	// Below 12.5 V the source gives its 30 A, as if the battery stood at 12.8 + 0.02 × 30 = 13.4 V.
	const net = network({
		batteries: [battery('B', '+', '0', { resistanceOhm: 0.02 })],
		sources: [source('S', '+', '0', { maxA: 30, setV: 12.5 })],
		loads: [load('L', '+', '0', { watts: 2100 })]
	});
	const point = solveCase(net, 'on', allOn());
	expect(point.status).toBe('solved');
	expect(point.loadV[0]).toBeCloseTo((13.4 + Math.sqrt(13.4 ** 2 - 4 * 0.02 * 2100)) / 2, 6);
	expect(point.sourceA[0]).toBeCloseTo(30, 9);
	expect(solveCase(net, 'no source', allOn({ sources: 0 })).status).toBe('collapsed');
});

test('collapse names the load that causes it, not those that share the system', () => {
	const net = network({
		batteries: [battery('B', '+', '0')],
		branches: [wire('W1', '+', 'a', 0.2), wire('W2', '+', 'b', 0.01)],
		loads: [load('BIG', 'a', '0', { watts: 500 }), load('SMALL', 'b', '0', { watts: 50 }), load('LAMP', 'a', '0', { watts: 2 })]
	});
	expect(solveCase(net, 'on', allOn())).toMatchObject({ status: 'collapsed', collapsedLoads: [0] });
	expect(solveCase(net, 'without', allOn({ levels: { BIG: 0 } }))).toMatchObject({ status: 'solved', collapsedLoads: [] });
});

describe('sources', () => {
	const charged = (maxA: number, setV: number) =>
		network({
			batteries: [battery('B', '+', '0', { emfV: 12.8, resistanceOhm: 0.01 })],
			sources: [source('MCH', 'c', '0', { maxA, setV })],
			branches: [wire('W', 'c', '+', 0.01)]
		});

	test('give their limit into a battery that is far below the set voltage', () => {
		const { sourceA, batteryA, nodeV } = solveCase(charged(30, 14.4), 'on', allOn());
		expect(sourceA[0]).toBeCloseTo(30, 9);
		expect(batteryA[0]).toBeCloseTo(-30, 9);
		expect(Math.max(...nodeV)).toBeCloseTo(12.8 + 30 * 0.02, 9);
	});

	test('hold the set voltage when less than the limit is wanted', () => {
		const { sourceA, nodeV } = solveCase(charged(30, 13), 'on', allOn());
		expect(sourceA[0]).toBeCloseTo(0.2 / 0.02, 1);
		expect(Math.max(...nodeV)).toBeCloseTo(13, 2);
	});

	test('give nothing, and take nothing, when the battery is higher', () => {
		const { sourceA, batteryA } = solveCase(charged(30, 12.5), 'on', allOn());
		expect(sourceA[0]).toBe(0);
		expect(batteryA[0]).toBeCloseTo(0, 9);
	});

	test('give the share that the case allows', () => {
		expect(solveCase(charged(30, 14.4), 'half', allOn({ sources: 0.5 })).sourceA[0]).toBeCloseTo(15, 9);
		expect(solveCase(charged(30, 14.4), 'set', allOn({ sources: 0, levels: { MCH: 0.1 } })).sourceA[0]).toBeCloseTo(3, 9);
		expect(solveCase(charged(30, 14.4), 'off', allOn({ sources: 0 })).sourceA[0]).toBe(0);
	});

	test('give nothing without a return', () => {
		const net = network({
			batteries: [battery('B', '+', '0')],
			sources: [source('MCH', '+', 'nowhere', { maxA: 30, setV: 14.4 })]
		});
		const { sourceA, status } = solveCase(net, 'on', allOn());
		expect(status).toBe('solved');
		expect(sourceA[0]).toBeCloseTo(0, 6);
	});

	test('several of them settle, whatever their set voltages', () => {
		const net = network({
			batteries: [battery('B', '+', '0', { resistanceOhm: 0.02 })],
			sources: [13.1, 13.2, 14.4, 12.9].map((setV, i) => source(`S${i}`, `s${i}`, '0', { maxA: 10, setV })),
			branches: [0, 1, 2, 3].map((i) => wire(`W${i}`, `s${i}`, '+', 0.005))
		});
		const { sourceA, batteryA, residualA } = solveCase(net, 'on', allOn());
		expect(sourceA[2]).toBeCloseTo(10, 9);
		expect(sourceA[0]).toBeLessThan(sourceA[1]!);
		expect(sourceA.reduce((sum, amps) => sum + amps, 0)).toBeCloseTo(-batteryA[0]!, 6);
		expect(residualA).toBeLessThan(1e-6);
	});
});

describe('converters', () => {
	/** 24 V battery, converter to a 12 V rail that shares the negative. */
	const converter = (railW: number, input = 'in', maxA = 20) =>
		network({
			batteries: [battery('B', '+', '0', { emfV: 25, resistanceOhm: 0.01 })],
			branches: [wire('IN', '+', 'in', 0.01), wire('OUT', 'out', 'rail', 0.01)],
			loads: [
				load('CNV', input, input === 'reversed' ? 'in' : '0', { watts: 0 }, { followsSource: 'CNV' }),
				load('RADIO', 'rail', '0', { watts: railW })
			],
			sources: [source('CNV', 'out', '0', { maxA, setV: 12, fedBy: 'CNV', efficiency: 0.9, alwaysOn: true })]
		});

	test('hold a rail of their own and draw what it takes, and the loss', () => {
		const { sourceA, loadA, loadV, nodeV } = solveCase(converter(60), 'on', allOn({ sources: 0 }));
		const outW = 12 * sourceA[0]!;
		expect(loadV[1]! * loadA[1]!).toBeCloseTo(60, 6);
		expect(loadV[1]).toBeCloseTo(12 - 0.01 * sourceA[0]!, 2);
		expect(loadV[0]! * loadA[0]!).toBeCloseTo(outW / 0.9, 1);
		expect(nodeV.every(Number.isFinite)).toBe(true);
	});

	test('collapse when the rail asks more than they can give, naming the load on the rail', () => {
		expect(solveCase(converter(400), 'on', allOn({ sources: 0 }))).toMatchObject({ status: 'collapsed', collapsedLoads: [1] });
	});

	test('are dead when their input is not fed: the rail is then not fed either', () => {
		const point = solveCase(converter(60, 'nowhere'), 'on', allOn());
		expect(point).toMatchObject({ status: 'solved', loadFed: [false, false] });
		expect([...point.loadA]).toEqual([0, 0]);
		expect(point.sourceA[0]).toBe(0);
	});

	test('are dead when their input is reversed', () => {
		const net = network({
			batteries: [battery('B', '+', '0', { emfV: 25 })],
			loads: [load('CNV', '0', '+', { watts: 0 }, { followsSource: 'CNV' }), load('RADIO', 'out', '0', { watts: 60 })],
			sources: [source('CNV', 'out', '0', { maxA: 20, setV: 12, fedBy: 'CNV', alwaysOn: true })]
		});
		const { sourceA, loadA, loadV } = solveCase(net, 'on', allOn());
		expect(loadV[0]).toBeCloseTo(-25, 9);
		expect([sourceA[0], ...loadA]).toEqual([0, 0, 0]);
	});

	test('carry charge from one battery to another, at their efficiency', () => {
		const net = network({
			batteries: [battery('START', 's', '0', { emfV: 13.8 }), battery('HOUSE', 'h', '0', { emfV: 12.8 })],
			loads: [load('DDC', 's', '0', { watts: 0 }, { followsSource: 'DDC' })],
			sources: [source('DDC', 'h', '0', { maxA: 40, setV: 14.4, fedBy: 'DDC', efficiency: 0.9 })]
		});
		const { sourceA, loadA, loadV, batteryA } = solveCase(net, 'on', allOn());
		expect(sourceA[0]).toBeCloseTo(40, 9);
		expect(loadV[0]! * loadA[0]!).toBeCloseTo((40 * (12.8 + 40 * 0.005)) / 0.9, 6);
		expect(batteryA[0]).toBeCloseTo(loadA[0]!, 9);
	});

	test('that feed only each other stay off', () => {
		const net = network({
			loads: [load('A', 'b', '0', { watts: 0 }, { followsSource: 'A' }), load('C', 'a', '0', { watts: 0 }, { followsSource: 'C' })],
			sources: [
				source('A', 'a', '0', { maxA: 20, setV: 12, fedBy: 'A', alwaysOn: true }),
				source('C', 'b', '0', { maxA: 20, setV: 12, fedBy: 'C', alwaysOn: true })
			]
		});
		expect([...solveCase(net, 'on', allOn()).sourceA]).toEqual([0, 0]);
	});
});

describe('what is not connected', () => {
	test('parts that hang on nothing, and islands of their own, do not disturb one another', () => {
		const net = network({
			batteries: [battery('B1', 'a+', 'a-'), battery('B2', 'b+', 'b-', { emfV: 25.6 })],
			branches: [wire('W', 'x', 'y')],
			loads: [
				load('L1', 'a+', 'a-', { ohms: 10 }),
				load('L2', 'b+', 'b-', { ohms: 10 }),
				load('ACROSS', 'a+', 'b-', { ohms: 10 }),
				load('ONE POLE', 'a+', 'x', { watts: 50 }),
				load('SHORTED', 'x', 'y', { watts: 50 })
			]
		});
		const point = solveCase(net, 'on', allOn());
		expect(point.status).toBe('solved');
		expect(point.loadFed).toEqual([true, true, false, false, false]);
		expect(point.loadV[0]).toBeCloseTo((12.8 * 10) / 10.005, 9);
		expect(point.loadV[1]).toBeCloseTo((25.6 * 10) / 10.005, 9);
		expect([...point.loadA.slice(2)]).toEqual([0, 0, 0]);
		expect([point.nodeV[net.node('a-')], point.nodeV[net.node('b-')], point.nodeV[net.node('x')]]).toEqual([0, 0, 0]);
	});

	test('a load behind an open switch is not fed; the level of the switch closes it again', () => {
		const net = network({
			batteries: [battery('B', '+', '0')],
			branches: [switchLink('SW', '+', 'a'), fuse('F', 'a', 'b', 10)],
			loads: [load('L', 'b', '0', { watts: 60 })]
		});
		expect(solveCase(net, 'open', allOn({ levels: { SW: 0 } }))).toMatchObject({ status: 'solved', loadFed: [false] });
		expect(solveCase(net, 'closed', allOn({ levels: { SW: 1 } })).loadFed).toEqual([true]);
		expect(solveCase(net, 'off', allOn({ levels: { L: 0 } })).loadV[0]).toBeCloseTo(12.8, 9);
	});

	test('a reversed load shows its reversed voltage and draws nothing; a load between two positives is not fed', () => {
		const net = network({
			batteries: [battery('B1', '+', '0'), battery('B2', 'x', '0', { emfV: 12.9 })],
			loads: [load('R', '0', '+', { watts: 60 }), load('P', 'x', '+', { watts: 60 })]
		});
		const { status, loadV, loadA, loadFed } = solveCase(net, 'on', allOn());
		expect(status).toBe('solved');
		expect(loadV[0]).toBeCloseTo(-12.8, 9);
		expect([...loadA]).toEqual([0, 0]);
		expect(loadFed).toEqual([true, false]);
	});

	test('an empty network has an operating point', () => {
		expect(solveCase(network({}), 'on', allOn())).toMatchObject({ status: 'solved', residualA: 0 });
	});
});

test('voltages of a series string count from its lowest negative terminal', () => {
	const net = network({
		batteries: [battery('TOP', '24', '12'), battery('BOTTOM', '12', '0')],
		loads: [load('L', '24', '0', { ohms: 10 }), load('TAP', '12', '0', { ohms: 10 })]
	});
	const { nodeV, loadFed } = solveCase(net, 'on', allOn());
	expect(nodeV[net.node('0')]).toBe(0);
	expect(nodeV[net.node('24')]).toBeCloseTo(25.57, 1);
	expect(loadFed).toEqual([true, true]);
});

test('one of two parallel batteries with a lower voltage is charged by the other', () => {
	const net = network({ batteries: [battery('B1', '+', '0', { emfV: 13 }), battery('B2', '+', '0', { emfV: 12.6 })] });
	const { batteryA } = solveCase(net, 'rest', allOn());
	expect(batteryA[0]).toBeCloseTo(40, 9);
	expect(batteryA[1]).toBeCloseTo(-40, 9);
});
