/** Networks of up to 5,000 nodes against mathjs (sparse LU): the same voltages within 1e-9 of the greatest one. */
import { describe, expect, test, vi } from 'vitest';
import { solveCase } from '#core/solver';
import { allOn, battery, load, network, wire, type TestNetwork } from '../../support/network.ts';
import { sparseVoltages } from '../../support/sparse.ts';

vi.setConfig({ testTimeout: 120_000 });

/** Small multiplicative generator (Park and Miller, 1988), so that a failure can be repeated. */
function randomNumbers(seed: number): () => number {
	let state = seed * 7919 + 1;
	return () => (state = (state * 48271) % 2147483647) / 2147483647;
}

/** Resistances over four decades, as between a bus bar and a long thin conductor. */
const ohmFrom = (random: () => number): number => 10 ** (-3 + 4 * random());

/** Loads that leave the voltages of the same order as the batteries': half of them resistances, half currents. */
const someLoads = (random: () => number, count: number, pair: () => readonly [string, string]) =>
	Array.from({ length: count }, (_, i) => {
		const [positive, negative] = pair();
		return load(`L${i}`, positive, negative, i % 2 === 0 ? { ohms: 500 + 5000 * random() } : { amps: 0.002 * random() });
	});

/** Two trees, of positive and of negative metal, whose branches are chains and stars, and 5 % loops. */
function treeLike(nodes: number, seed: number): TestNetwork {
	const random = randomNumbers(seed);
	const half = Math.floor(nodes / 2);
	const any = (below: number): number => Math.floor(random() * below);
	const tree = (pole: string) =>
		Array.from({ length: half - 1 }, (_, i) =>
			wire(
				`${pole}${i}`,
				`${pole}${i + 1}`,
				`${pole}${random() < 0.4 ? any(Math.max(1, Math.ceil((i + 1) / 10))) : i}`,
				ohmFrom(random) / 100
			)
		);
	return network({
		batteries: Array.from({ length: Math.max(2, Math.round(nodes / 200)) }, (_, i) => {
			const at = i === 0 ? 0 : any(half);
			return battery(`B${i}`, `p${at}`, `n${at}`, { emfV: 12 + random(), resistanceOhm: 0.002 + 0.02 * random() });
		}),
		branches: [
			...tree('p'),
			...tree('n'),
			...Array.from({ length: Math.round(nodes * 0.05) }, (_, i) => wire(`X${i}`, `p${any(half)}`, `p${any(half)}`, ohmFrom(random)))
		],
		loads: someLoads(random, Math.round(nodes * 0.15), () => {
			const at = any(half);
			return [`p${at}`, `n${at}`];
		})
	});
}

/** A square net of positive metal over one return, with batteries at its corners: far more loops than any wiring has. */
function mesh(nodes: number, seed: number): TestNetwork {
	const random = randomNumbers(seed);
	const side = Math.floor(Math.sqrt(nodes - 1));
	const at = (x: number, y: number): string => `m${x},${y}`;
	const branches = [];
	for (let x = 0; x < side; x++)
		for (let y = 0; y < side; y++) {
			if (x + 1 < side) branches.push(wire(`H${x},${y}`, at(x, y), at(x + 1, y), ohmFrom(random)));
			if (y + 1 < side) branches.push(wire(`V${x},${y}`, at(x, y), at(x, y + 1), ohmFrom(random)));
		}
	const end = side - 1;
	const corners = [at(0, 0), at(end, 0), at(0, end), at(end, end)];
	return network({
		batteries: corners.map((corner, i) => battery(`B${i}`, corner, '0', { emfV: 12.2 + 0.3 * i, resistanceOhm: 0.01 })),
		branches,
		loads: someLoads(random, Math.round(nodes * 0.1), () => [at(Math.floor(random() * side), Math.floor(random() * side)), '0'])
	});
}

function expectAgreement(net: TestNetwork): void {
	const reference = net.batteries[0]!.negative;
	const point = solveCase(net, 'on', allOn());
	expect(point.status).toBe('solved');
	const expected = sparseVoltages(net, reference);
	const greatestV = expected.reduce((most, volts) => Math.max(most, Math.abs(volts)), 0);
	expect(greatestV).toBeGreaterThan(10);
	const worstV = expected.reduce(
		(worst, volts, node) => Math.max(worst, Math.abs(point.nodeV[node]! - point.nodeV[reference]! - volts)),
		0
	);
	expect(worstV / greatestV).toBeLessThan(1e-9);
	// Not a network that stands still: current flows in most of it.
	expect(point.branchA.filter((amps) => Math.abs(amps) > 1e-6).length).toBeGreaterThan(net.branches.length / 3);
}

describe.each([
	['tree-like, 5 % loops', treeLike],
	['meshed', mesh]
] as const)('%s', (_, make) => {
	test.each([1, 2, 3, 4, 5, 6, 7, 8])('50 nodes, seed %d', (seed) => expectAgreement(make(50, seed)));
	test.each([1, 2])('500 nodes, seed %d', (seed) => expectAgreement(make(500, seed)));
	test('5,000 nodes', () => expectAgreement(make(5000, 1)));
});
