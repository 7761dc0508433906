import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { buildNetwork } from '#core/network';
import { letThroughBound, protectionOf } from '#core/protection';
import { circuit } from '../../support/circuit.ts';
import { edmondsKarp } from '../../support/edmonds-karp.ts';
import { battery, fuse, load, network, segment, source, switchLink, wire, type TestNetwork } from '../../support/network.ts';
import { anyNetwork } from '../../support/random-network.ts';

// Many random systems: a busy machine must not make them fail.
vi.setConfig({ testTimeout: 60_000 });

/** Two batteries with a fuse each, joined at a post, a main conductor, a bus with two fused circuits, all returns. */
const twoStrings = (ratingA = 225) =>
	network({
		batteries: [battery('B1', 'b1', 'n1'), battery('B2', 'b2', 'n2')],
		branches: [
			fuse('FB1', 'b1', 's1', ratingA),
			fuse('FB2', 'b2', 's2', ratingA),
			wire('W1', 's1', 'post'),
			wire('W2', 's2', 'post'),
			wire('W3', 'post', 'sw'),
			switchLink('SW', 'sw', 'swOut'),
			wire('W4', 'swOut', 'bus'),
			fuse('F1', 'bus', 'f1', 100),
			wire('C1', 'f1', 'l1'),
			fuse('F2', 'bus', 'f2', 40),
			wire('C2', 'f2', 'l2'),
			wire('C1n', 'l1n', 'nbus'),
			wire('C2n', 'l2n', 'nbus'),
			wire('W5', 'nbus', 'npost'),
			wire('W1n', 'npost', 'n1'),
			wire('W2n', 'npost', 'n2')
		],
		loads: [load('L1', 'l1', 'l1n', { watts: 600 }), load('L2', 'l2', 'l2n', { watts: 200 })]
	});

const devices = (of: readonly { part: string }[]) => of.map(({ part }) => part).sort();

describe('positive conductors', () => {
	test('two fuses in parallel let their sum through', () => {
		const { from, currentA } = protectionOf(twoStrings(), 'W3');
		expect(currentA).toBe(450);
		expect(devices(from.limitedBy)).toEqual(['FB1', 'FB2']);
	});

	test('of two in series the smaller limits, and is named', () => {
		const { from, to } = protectionOf(twoStrings(), 'C1');
		expect(from.currentA).toBe(100);
		expect(devices(from.limitedBy)).toEqual(['F1']);
		expect(to.currentA).toBe(0);
	});

	test('each end of a conductor between two supplies is judged by what lies behind it', () => {
		const net = network({
			batteries: [battery('B', '+', '0')],
			sources: [source('SOL', 'sol', '0', { maxA: 30, setV: 14.2 })],
			branches: [fuse('F', '+', 'f', 40), wire('C', 'f', 'sol')]
		});
		const { from, to, currentA } = protectionOf(net, 'C');
		expect([from.currentA, to.currentA, currentA]).toEqual([40, 30, 40]);
		expect(to.limitedBy).toEqual([{ part: 'SOL', link: 'output', currentA: 30 }]);
	});

	test('without a device the current is unlimited, and the unprotected conductors are named in order', () => {
		const net = network({
			batteries: [battery('B', '+', '0')],
			branches: [wire('A', '+', 'a'), switchLink('SW', 'a', 'b'), wire('M', 'b', 'm'), wire('C', 'm', 'c')],
			loads: [load('L', 'c', '0', { watts: 60 })]
		});
		const { from, to } = protectionOf(net, 'C');
		expect(from).toEqual({ currentA: Infinity, limitedBy: [], unprotectedPath: ['A', 'M'] });
		expect(to.currentA).toBe(0);
	});

	test('in a series string the lower battery supplies and the upper one passes on', () => {
		const string = (fuseAt: 'link' | 'top') =>
			network({
				batteries: [battery('B1', 'b1', '0'), battery('B2', 'b2', 'm')],
				branches: [
					...(fuseAt === 'link' ? [fuse('F', 'b1', 'x', 100), wire('X', 'x', 'm')] : [wire('X', 'b1', 'm')]),
					...(fuseAt === 'top' ? [fuse('F', 'b2', 'f', 100)] : [wire('F', 'b2', 'f')]),
					wire('C', 'f', 'c')
				]
			});
		expect(protectionOf(string('link'), 'C').from.currentA).toBe(100);
		expect(protectionOf(string('top'), 'C').from.currentA).toBe(100);
		expect(protectionOf(string('top'), 'X').from.currentA).toBe(Infinity);
		expect(protectionOf(string('top'), 'X').to.currentA).toBe(0);
	});

	test('a converter that does not block lets its output battery feed a fault at its input', () => {
		const net = (blocksReverse: boolean) =>
			network({
				batteries: [battery('START', 's', '0'), battery('HOUSE', 'h', '0')],
				branches: [fuse('FS', 's', 'f', 60), wire('IN', 'f', 'in'), wire('OUT', 'out', 'g'), fuse('FH', 'g', 'h', 80)],
				loads: [load('DDC', 'in', '0', { watts: 0 }, { followsSource: 'DDC' })],
				sources: [source('DDC', 'out', '0', { maxA: 40, setV: 14.4, fedBy: 'DDC', blocksReverse })]
			});
		expect(protectionOf(net(true), 'IN').to.currentA).toBe(0);
		expect(protectionOf(net(false), 'IN').to.currentA).toBe(80 + 40);
		expect(protectionOf(net(true), 'OUT').from.currentA).toBe(40);
		expect(protectionOf(net(true), 'OUT').to.currentA).toBe(80);
	});

	test('a floating conductor and one from a stud to itself let nothing through', () => {
		const net = network({ batteries: [battery('B', '+', '0')], branches: [wire('X', 'x', 'y'), wire('O', '+', '+')] });
		expect(protectionOf(net, 'X').currentA).toBe(0);
		expect(protectionOf(net, 'O').currentA).toBe(0);
	});
});

describe('negative conductors, with loads taken as shorted', () => {
	test.each([
		['C1n', 100, ['F1']],
		['C2n', 40, ['F2']],
		['W5', 140, ['F1', 'F2']],
		// The current of one battery passes that battery's own fuse.
		['W1n', 140, ['F1', 'F2']]
	])('%s carries at most %d A', (id, currentA, by) => {
		const { from, to } = protectionOf(twoStrings(), id);
		expect(from.currentA).toBe(currentA);
		expect(devices(from.limitedBy)).toEqual(by);
		expect(to.currentA).toBe(0);
	});

	test("a battery's own return is limited by its own fuse, not by the sum of all", () => {
		expect(protectionOf(twoStrings(60), 'W5').currentA).toBe(120);
		expect(protectionOf(twoStrings(60), 'W1n').currentA).toBe(60);
	});

	test('the return of a charger counts its limit, or the fuse through which the battery feeds a fault in it', () => {
		const net = network({
			batteries: [battery('B', '+', '0')],
			sources: [source('MCH', 'c', 'cn', { maxA: 30, setV: 14.4 })],
			branches: [fuse('F', '+', 'f', 40), wire('C', 'f', 'c'), wire('Cn', 'cn', '0')]
		});
		const { from, to } = protectionOf(net, 'Cn');
		expect(from.currentA).toBe(40);
		expect(to.currentA).toBe(30);
	});

	test('an unfused load leaves its return unprotected', () => {
		const net = network({
			batteries: [battery('B', '+', '0')],
			branches: [wire('C', '+', 'c'), wire('Cn', 'cn', '0')],
			loads: [load('L', 'c', 'cn', { watts: 60 })]
		});
		expect(protectionOf(net, 'Cn').from).toEqual({ currentA: Infinity, limitedBy: [], unprotectedPath: ['C'] });
	});
});

/** Larger than any sum of ratings in these networks: stands for infinity in the reference. */
const HUGE = 1e9;

/** The positive side written out again, plainly, for the reference. */
function reference(net: TestNetwork, id: string, end: 'from' | 'to'): number {
	const supply = net.nodeCount;
	const arcs = net.branches
		.filter((branch) => branch.index !== net.branchOfConductor.get(id))
		.flatMap(({ a, b, device }) => {
			const capacity = device?.ratingA ?? HUGE;
			return [
				{ from: a, to: b, capacity },
				{ from: b, to: a, capacity }
			];
		});
	for (const { positive } of net.batteries) arcs.push({ from: supply, to: positive, capacity: HUGE });
	for (const { positive, maxA } of net.sources) arcs.push({ from: supply, to: positive, capacity: maxA });
	const flow = edmondsKarp(net.nodeCount + 1, arcs, supply, net.nodeOfEnd.get(id)![end]);
	return flow >= HUGE ? Infinity : flow;
}

const conductorsOf = (net: TestNetwork, pole: string) =>
	[...net.nodeOfEnd].filter(([, { from, to }]) => from !== to && net.poles[from] === pole).map(([id]) => id);

describe('on random networks', () => {
	test('let-through equals the textbook maximum flow', () => {
		fc.assert(
			fc.property(anyNetwork({ sources: true }), (net) => {
				for (const id of conductorsOf(net, 'positive')) {
					const { from, to } = protectionOf(net, id);
					for (const [found, end] of [
						[from, 'from'],
						[to, 'to']
					] as const) {
						const expected = reference(net, id, end);
						if (expected === Infinity) expect(found.currentA).toBe(Infinity);
						else expect(found.currentA).toBeCloseTo(expected, 6);
					}
				}
			}),
			{ numRuns: 80 }
		);
	});

	test('what is named as the limit adds up to the let-through', () => {
		fc.assert(
			fc.property(anyNetwork({ sources: true }), (net) => {
				for (const id of [...conductorsOf(net, 'positive'), ...conductorsOf(net, 'negative')]) {
					for (const end of ['from', 'to'] as const) {
						const { currentA, limitedBy } = protectionOf(net, id)[end];
						const sumA = limitedBy.reduce((sum, { currentA: a }) => sum + a, 0);
						if (currentA === Infinity) expect(limitedBy).toEqual([]);
						else expect(sumA).toBeCloseTo(currentA, 6);
					}
				}
			}),
			{ numRuns: 60 }
		);
	});

	test('the quick bound is never below the exact value', () => {
		fc.assert(
			fc.property(anyNetwork({ sources: true, loads: ['watts'] }), (net) => {
				for (const id of net.branchOfConductor.keys()) {
					expect(letThroughBound(net, id)).toBeGreaterThanOrEqual(protectionOf(net, id).currentA - 1e-9);
				}
			}),
			{ numRuns: 80 }
		);
	});
});

test.each([
	[['fuse', 'W1', 'washer', 'nut'], 100],
	[['W1', 'fuse', 'washer', 'nut'], Infinity]
])('on a fuse block with the stack %j the conductor carries at most %d A', (stack, currentA) => {
	const diagram = circuit({ b: ['battery'], f: ['fuse-block', { fuseA: 100 }], l: ['load'] }, [['f.post', 'l.pos']], {
		mounts: { f: 'b.pos' },
		stacks: { 'f.post': stack }
	});
	expect(protectionOf(buildNetwork(diagram), 'W1').currentA).toBe(currentA);
});

test('a bus bar joins without limiting', () => {
	const net = network({
		batteries: [battery('B', '+', '0')],
		branches: [fuse('F', '+', 'l', 150), wire('M', 'l', 's1'), segment('D', 's1', 's2'), wire('C', 's2', 'c')]
	});
	expect(protectionOf(net, 'C').from.currentA).toBe(150);
});

test('asking for a conductor that is not there is a mistake of the caller', () => {
	expect(() => protectionOf(network({}), 'C9')).toThrow('C9');
});
