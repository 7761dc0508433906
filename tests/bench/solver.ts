/**
 * Speed of the solver and of let-through, as ratios against general methods in the same run: mathjs's sparse LU
 * (slu with the order for symmetric matrices, then lusolve), and the plain textbook maximum flow for each conductor
 * end. Networks: 30 % of nodes on bus bars, the rest in chains, 3 % of branches closing loops, resistances from
 * 0.1 mΩ to 100 Ω, a battery for every 200 nodes, a load on 15 % of nodes.
 */
import { lusolve, matrix, slu, type Matrix } from 'mathjs';
import type { OperatingCase } from '#core/diagram';
import { letThroughBound, protectionOf } from '#core/protection';
import { planElimination, solveCase } from '#core/solver';
import { edmondsKarp } from '../support/edmonds-karp.ts';
import { battery, fuse, load, network, wire, type TestNetwork } from '../support/network.ts';

/** Small multiplicative generator (Park and Miller, 1988), so that every run sees the same networks. */
function randomNumbers(seed: number): () => number {
	let state = seed;
	return () => (state = (state * 48271) % 2147483647) / 2147483647;
}

function typical(size: number): TestNetwork {
	const random = randomNumbers(size);
	const any = (below: number): number => Math.floor(random() * below);
	const ohm = (): number => 10 ** (-4 + 6 * random());
	const half = Math.ceil(size / 2);
	const hubs = Math.max(1, Math.round(half / 20));
	const tree = (pole: string, fuses: number) =>
		Array.from({ length: half - 1 }, (_, i) => {
			const to = random() < 0.3 ? any(Math.min(hubs, i + 1)) : i;
			const [a, b] = [`${pole}${i + 1}`, `${pole}${to}`];
			return random() < fuses ? fuse(`${pole}F${i}`, a, b, 5 * (1 + any(40))) : wire(`${pole}${i}`, a, b, ohm());
		});
	const at = (): number => any(half);
	return network({
		batteries: Array.from({ length: Math.max(1, Math.round(size / 200)) }, (_, i) => {
			const node = i === 0 ? 0 : at();
			return battery(`B${i}`, `p${node}`, `n${node}`, { resistanceOhm: 0.01 });
		}),
		branches: [
			...tree('p', 0.18),
			...tree('n', 0),
			...Array.from({ length: Math.round(size * 0.03) }, (_, i) => wire(`X${i}`, `p${at()}`, `p${at()}`, ohm()))
		],
		// Faint loads, so that chains of 100 Ω do not collapse: the work is the same.
		loads: Array.from({ length: Math.round(size * 0.15) }, (_, i) => {
			const node = at();
			return load(`L${i}`, `p${node}`, `n${node}`, { watts: 1e-5 });
		})
	});
}

/** Median milliseconds of as many runs as fit into the time, at least three, after one to warm up. */
function milliseconds(run: () => unknown, budgetMs = 400): number {
	run();
	const times: number[] = [];
	for (const start = performance.now(); times.length < 3 || (performance.now() - start < budgetMs && times.length < 2000);) {
		const before = performance.now();
		run();
		times.push(performance.now() - before);
	}
	return times.sort((a, b) => a - b)[times.length >> 1]!;
}

const text = (ms: number): string => ms.toPrecision(3);
const ratio = (theirs: number, ours: number): string => `${(theirs / ours).toPrecision(2)}×`;

const EVERYTHING_ON: OperatingCase = { label: '', order: 0, duration: 'continuous', loads: 1, sources: 1, levels: {} };

function linear(size: number) {
	const net = typical(size);
	const edges = [
		...net.branches.map(({ a, b }) => [a, b] as const),
		...net.batteries.map(({ positive, negative }) => [positive, negative] as const)
	];
	const conductanceS = Float64Array.from([...net.branches, ...net.batteries], ({ resistanceOhm }) => 1 / resistanceOhm);
	const reference = net.batteries[0]!.negative;
	const pinned = new Uint8Array(net.nodeCount);
	pinned[reference] = 1;
	const injectionA = new Float64Array(net.nodeCount);
	for (const { positive, negative, emfV, resistanceOhm } of net.batteries) {
		injectionA[positive]! += emfV / resistanceOhm;
		injectionA[negative]! -= emfV / resistanceOhm;
	}
	const plan = planElimination({ nodeCount: net.nodeCount, edges });
	const factors = plan.factor(conductanceS, pinned);

	const row = (node: number): number => (node > reference ? node - 1 : node);
	const sums = new Map<string, number>();
	const add = (a: number, b: number, value: number): void => {
		if (a === reference || b === reference) return;
		const key = `${row(a)},${row(b)}`;
		sums.set(key, (sums.get(key) ?? 0) + value);
	};
	edges.forEach(([a, b], i) => {
		if (a === b) return;
		for (const [x, y, sign] of [
			[a, a, 1],
			[b, b, 1],
			[a, b, -1],
			[b, a, -1]
		] as const) {
			add(x, y, sign * conductanceS[i]!);
		}
	});
	const sparse = matrix('sparse') as Matrix;
	sparse.resize([net.nodeCount - 1, net.nodeCount - 1]);
	for (const [key, value] of sums) sparse.set(key.split(',').map(Number), value);
	const right = [...injectionA].filter((_, node) => node !== reference).map((amps) => [amps]);

	const own = {
		plan: milliseconds(() => planElimination({ nodeCount: net.nodeCount, edges })),
		factor: milliseconds(() => plan.factor(conductanceS, pinned)),
		solve: milliseconds(() => factors.solve(injectionA))
	};
	const general = milliseconds(() => lusolve(slu(sparse as never, 1, 0.001) as never, right as never));
	const expected = (lusolve(slu(sparse as never, 1, 0.001) as never, right as never) as unknown as Matrix).valueOf() as number[][];
	const volts = factors.solve(injectionA);
	const difference = Math.max(...expected.map(([v], i) => Math.abs(v! - volts[i < reference ? i : i + 1]!)));
	const operatingPoint = milliseconds(() => solveCase(net, 'on', EVERYTHING_ON));
	const { status, iterations } = solveCase(net, 'on', EVERYTHING_ON);
	return {
		nodes: net.nodeCount,
		'plan ms': text(own.plan),
		'factor ms': text(own.factor),
		'solve ms': text(own.solve),
		'mathjs slu + lusolve ms': text(general),
		'new topology': ratio(general, own.plan + own.factor + own.solve),
		'new values': ratio(general, own.factor + own.solve),
		'difference V': difference.toExponential(1),
		'operating point ms': `${text(operatingPoint)} (${status}, ${iterations} rounds)`
	};
}

function flows(size: number) {
	const net = typical(size);
	const ids = [...net.branchOfConductor.keys()].filter((id) => net.poles[net.nodeOfEnd.get(id)!.from] === 'positive');
	/** A fresh object: answers are kept with the network they belong to. */
	const fresh = (): TestNetwork => ({ ...net });
	const exact = milliseconds(() => {
		const again = fresh();
		return ids.map((id) => protectionOf(again, id));
	});
	const bound = milliseconds(() => {
		const again = fresh();
		return ids.map((id) => letThroughBound(again, id));
	});

	const few = ids.filter((_, i) => i % Math.ceil(ids.length / 10) === 0);
	const HUGE = 1e9;
	const plainly = (id: string, end: 'from' | 'to'): number => {
		const arcs = net.branches
			.filter(({ index }) => index !== net.branchOfConductor.get(id))
			.flatMap(({ a, b, device }) => [
				{ from: a, to: b, capacity: device?.ratingA ?? HUGE },
				{ from: b, to: a, capacity: device?.ratingA ?? HUGE }
			]);
		for (const { positive } of net.batteries) arcs.push({ from: net.nodeCount, to: positive, capacity: HUGE });
		return edmondsKarp(net.nodeCount + 1, arcs, net.nodeCount, net.nodeOfEnd.get(id)![end]);
	};
	const plain = (milliseconds(() => few.map((id) => [plainly(id, 'from'), plainly(id, 'to')]), 200) * ids.length) / few.length;
	const worst = Math.max(
		...few.flatMap((id) =>
			(['from', 'to'] as const).map((end) => {
				const expected = plainly(id, end);
				const found = protectionOf(net, id)[end].currentA;
				return expected >= HUGE ? (found === Infinity ? 0 : Infinity) : Math.abs(found - expected);
			})
		)
	);
	const above = ids.filter((id) => letThroughBound(net, id) > protectionOf(net, id).currentA).length;
	return {
		conductors: ids.length,
		'exact, all ms': text(exact),
		'bound, all ms': text(bound),
		'plain maximum flow, all ms': text(plain),
		exact: ratio(plain, exact),
		bound: ratio(plain, bound),
		'difference A': worst,
		'bound above exact': `${above} of ${ids.length}`
	};
}

console.log('Operating point: one network of conductances');
console.table([50, 200, 500, 2000].map(linear));
console.log('Let-through of all positive conductors (plain maximum flow is measured on about ten and scaled up)');
console.table([100, 400, 1000].map(flows));
