import { describe, expect, test } from 'vitest';
import { unprotectedRun } from '#core/protection';
import { battery, fuse, load, network, segment, source, switchLink, wire, type NetworkSpec } from '../../support/network.ts';

/** Conductors are named by their length in metres and their limit in amps: "A 0.5m 100A". */
function run(spec: NetworkSpec, conductor: string, end: 'from' | 'to' = 'from') {
	const number = (id: string, unit: string): number => Number(new RegExp(`([\\d.]+)${unit}`).exec(id)?.[1] ?? Infinity);
	const net = network(spec);
	return unprotectedRun(net, conductor, end, { lengthM: (id) => number(id, 'm'), limitA: (id) => number(id, 'A') });
}

const B = battery('B', '+', '0');

describe('where the run starts', () => {
	test("at a battery's terminal, the conductor counted, a fuse at its end", () => {
		const net = {
			batteries: [B],
			branches: [wire('A 0.15m 100A', '+', 'a'), fuse('F', 'a', 'b', 100), wire('C 2m 100A', 'b', 'c')],
			loads: [load('L', 'c', '0', { watts: 60 })]
		};
		expect(run(net, 'A 0.15m 100A')).toMatchObject({
			startsAt: 'battery',
			lengthM: 0.15,
			toDeviceM: 0.15,
			deviceBeyond: true,
			beyondA: 100
		});
	});

	test('unprotected conductors before it belong to the run, a switch has no length', () => {
		const net = {
			batteries: [B],
			branches: [
				wire('A 0.5m 100A', '+', 'a'),
				switchLink('SW', 'a', 'b'),
				wire('C 0.25m 100A', 'b', 'c'),
				wire('D 0.125m 100A', 'c', 'd'),
				fuse('F', 'd', 'e', 80)
			],
			loads: [load('L', 'e', '0', { watts: 60 })]
		};
		expect(run(net, 'C 0.25m 100A')).toMatchObject({
			startsAt: 'battery',
			lengthM: 0.75,
			toDeviceM: 0.875,
			deviceBeyond: true,
			beyondA: 80
		});
	});

	test('at the tap off a bus that its own feeder is protected for', () => {
		const net = {
			batteries: [B],
			branches: [
				fuse('F', '+', 'f', 300),
				wire('M 1m 445A', 'f', 's1'),
				segment('D', 's1', 's2'),
				wire('C 2.5m 160A', 's2', 'p'),
				fuse('P', 'p', 'q', 100)
			],
			loads: [load('L', 'q', '0', { watts: 60 })]
		};
		expect(run(net, 'C 2.5m 160A')).toMatchObject({ startsAt: 'tap', lengthM: 2.5, toDeviceM: 2.5, deviceBeyond: true, beyondA: 100 });
	});

	test('at a splice into a thinner conductor', () => {
		const net = {
			batteries: [B],
			branches: [fuse('F', '+', 'f', 40), wire('C 4m 45A', 'f', 's'), wire('T 2.5m 20A', 's', 't')],
			loads: [load('L', 't', '0', { watts: 10 })]
		};
		expect(run(net, 'T 2.5m 20A')).toMatchObject({
			startsAt: 'tap',
			lengthM: 2.5,
			toDeviceM: null,
			deviceBeyond: false,
			beyondA: Infinity
		});
	});

	test('at the stud of a conductor that needs no protection', () => {
		const net = {
			batteries: [B],
			branches: [wire('CRANK 2m', '+', 's'), wire('HORN 0.5m 20A', 's', 'h')],
			loads: [load('M', 's', '0', { watts: 2000 }), load('H', 'h', '0', { watts: 60 })]
		};
		expect(run(net, 'HORN 0.5m 20A')).toMatchObject({ startsAt: 'tap', lengthM: 0.5, deviceBeyond: false });
	});

	test('farther off than a feed too weak to matter', () => {
		const net = {
			batteries: [B],
			sources: [source('SOL', 'x', '0', { maxA: 10, setV: 14 })],
			branches: [wire('A 3m 100A', '+', 'x'), wire('C 0.1m 100A', 'x', 'c'), fuse('F', 'c', 'd', 50)],
			loads: [load('L', 'd', '0', { watts: 60 })]
		};
		expect(run(net, 'C 0.1m 100A')).toMatchObject({ startsAt: 'battery', lengthM: 3.1 });
	});

	test('at the house end of a conductor fused only at the other one', () => {
		const net = {
			batteries: [battery('START', 's', '0'), battery('HOUSE', 'h', '0')],
			branches: [fuse('FS', 's', 'f', 60), wire('C 6m 120A', 'f', 'd'), fuse('FH', 'h', 'd', 450)]
		};
		expect(run(net, 'C 6m 120A', 'to')).toMatchObject({ startsAt: 'tap', lengthM: 6, toDeviceM: 6, deviceBeyond: true });
	});
});

describe('what is beyond', () => {
	test('every way onward must meet a device', () => {
		const net = {
			batteries: [B],
			branches: [wire('A 0.1m 100A', '+', 'a'), fuse('F', 'a', 'b', 50), wire('X 1m 20A', 'a', 'x')],
			loads: [load('L', 'b', '0', { watts: 60 }), load('BARE', 'x', '0', { watts: 60 })]
		};
		expect(run(net, 'A 0.1m 100A')).toMatchObject({ toDeviceM: 0.1, deviceBeyond: false, beyondA: Infinity });
	});

	test('ratings of several circuits add up; a spare way counts nothing', () => {
		const net = {
			batteries: [B],
			branches: [
				wire('A 0.1m 100A', '+', 'a'),
				segment('D', 'a', 'b'),
				fuse('F1', 'a', 'f1', 50),
				fuse('F2', 'b', 'f2', 30),
				fuse('SPARE', 'b', 'f3', 100)
			],
			loads: [load('L1', 'f1', '0', { watts: 60 }), load('L2', 'f2', '0', { watts: 60 })]
		};
		expect(run(net, 'A 0.1m 100A')).toMatchObject({ deviceBeyond: true, beyondA: 80 });
	});
});

test('a negative conductor has no run: its protection is in the positive', () => {
	const net = {
		batteries: [B],
		branches: [wire('C 1m 20A', '+', 'c'), wire('N 1m 20A', 'n', '0')],
		loads: [load('L', 'c', 'n', { watts: 60 })]
	};
	expect(run(net, 'N 1m 20A')).toBeNull();
});
