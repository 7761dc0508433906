/**
 * From an edit to its findings: the whole check of large systems (tree-like, 5 % of conductors closing loops), from
 * nothing and after edits of several kinds, and what its stages take. For comparison in the same run:
 * mathjs's sparse LU for the solving, and one plain maximum flow for each conductor end for let-through.
 *
 * Wall times on a shared machine say little: milliseconds of processor time stand beside them. `pipeline.ts 300`
 * runs another size.
 */
import { lusolve, matrix, slu, type Matrix } from 'mathjs';
import { checkDiagram } from '#core/check';
import { AWG_SIZES, type Conductor, type Diagram } from '#core/diagram';
import { createMemory } from '#core/memory';
import { buildNetwork, type Network } from '#core/network';
import { letThroughBound, protectionOf } from '#core/protection';
import { buildStudy, RULES, runRules } from '#core/rules';
import { planElimination } from '#core/solver';
import { changesBetween } from '../../src/editor/changes.ts';
import { answering } from '../../src/editor/check-link.ts';
import { largeDiagram } from '../support/large-diagram.ts';

/** Aims for the 95th percentile of an edit, milliseconds by conductors. */
const AIMS: Readonly<Record<number, number>> = { 100: 8, 1000: 16, 10_000: 100 };
const BUDGET_MS = 8000;

interface Times {
	readonly wall: number[];
	readonly processor: number[];
}

const processorMs = (): number => {
	const { user, system } = process.cpuUsage();
	return (user + system) / 1000;
};

function timed(run: () => unknown, into: Times): void {
	const [wall, processor] = [performance.now(), processorMs()];
	run();
	into.wall.push(performance.now() - wall);
	into.processor.push(processorMs() - processor);
}

/** As often as the budget allows, at least three times after one to warm up. */
function repeat(run: (round: number) => unknown, budgetMs = BUDGET_MS): Times {
	run(0);
	const times: Times = { wall: [], processor: [] };
	for (const start = performance.now(); times.wall.length < 3 || (performance.now() - start < budgetMs && times.wall.length < 200);) {
		timed(() => run(times.wall.length + 1), times);
	}
	return times;
}

const share = (values: readonly number[], part: number): number =>
	[...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(part * values.length))]!;
const median = (values: readonly number[]): number => share(values, 0.5);
const text = (ms: number): string => ms.toPrecision(3);
const ratio = (theirs: number, ours: number): string => `${(theirs / ours).toPrecision(2)}×`;

/** Edits by kind. What is not touched keeps its identity, as in the editor. */
const EDITS: Readonly<Record<string, (diagram: Diagram, round: number) => Diagram>> = {
	'another length': (diagram, round) => withConductor(diagram, round, { lengthM: 0.3 + (round % 20) / 10 }),
	'another size': (diagram, round) => withConductor(diagram, round, { gauge: { system: 'awg', size: AWG_SIZES[round % 10]! } }),
	'a part moved': (diagram, round) => {
		const id = any(diagram.parts, round);
		return { ...diagram, parts: { ...diagram.parts, [id]: { ...diagram.parts[id]!, at: { x: round, y: -round } } } };
	},
	'a conductor more': (diagram, round) => ({
		...diagram,
		conductors: { ...diagram.conductors, [`N${round}`]: { ...diagram.conductors[any(diagram.conductors, round)]!, label: `N${round}` } }
	}),
	'a conductor less': (diagram, round) => {
		const { [any(diagram.conductors, round)]: _, ...conductors } = diagram.conductors;
		return { ...diagram, conductors };
	}
};

/** Spread over the whole of a record. */
const any = (record: object, round: number): string => Object.keys(record)[(7919 * round) % Object.keys(record).length]!;

const withConductor = (diagram: Diagram, round: number, change: Partial<Conductor>): Diagram => {
	const id = any(diagram.conductors, round);
	return { ...diagram, conductors: { ...diagram.conductors, [id]: { ...diagram.conductors[id]!, ...change } } };
};

const edited = EDITS['another length']!;

/** Nothing remembered from earlier checks. */
const afresh = (diagram: Diagram): Diagram => structuredClone(diagram);

/** Edits one after another, each checked with what is remembered of the one before it. */
function checkedEdits(diagram: Diagram, edit: (diagram: Diagram, round: number) => Diagram, budgetMs: number): Times {
	const memory = createMemory();
	checkDiagram(diagram, memory);
	const times: Times = { wall: [], processor: [] };
	for (const start = performance.now(); times.wall.length < 4 || (performance.now() - start < budgetMs && times.wall.length < 200);) {
		const next = edit(diagram, times.wall.length + 1);
		timed(() => checkDiagram(next, memory), times);
	}
	return { wall: times.wall.slice(1), processor: times.processor.slice(1) };
}

function stages(diagram: Diagram): { stage: string; ms: number }[] {
	const times = new Map<string, Times>();
	const rounds = Object.keys(diagram.conductors).length > 5000 ? 4 : 12;
	const alone = RULES.map((rule) => [rule]);
	const memory = createMemory();
	for (let round = 0; round < rounds; round++) {
		const study = buildStudy(edited(diagram, round), memory);
		const stage = (name: string, run: () => unknown): void => {
			if (!times.has(name)) times.set(name, { wall: [], processor: [] });
			timed(run, times.get(name)!);
		};
		stage('network', () => study.network);
		stage('solving all cases', () => [study.cases, study.atRest]);
		stage('parts and conductors', () => [study.parts, study.conductors, study.nets]);
		stage('stacks', () => study.stacks);
		stage('bounds of let-through', () => study.conductors.map(({ id }) => letThroughBound(study.network, id)));
		stage('exact let-through of all', () => study.conductors.map(({ id }) => study.protection(id)));
		for (const [i, rule] of RULES.entries()) stage(`rule ${rule.meta.id}`, () => runRules(study, alone[i], memory));
	}
	return [...times].map(([stage, { processor }]) => ({ stage, ms: median(processor.slice(1)) })).sort((a, b) => b.ms - a.ms);
}

/** Milliseconds of processor time to solve the network's conductances once, by the program and by mathjs. */
function solving(network: Network): { own: number; general: number } {
	const { nodeCount, branches, batteries, poles } = network;
	const edges = [
		...branches.map(({ a, b }) => [a, b] as const),
		...batteries.map(({ positive, negative }) => [positive, negative] as const),
		// Loose metal needs a tie for a general solver not to fail.
		...poles.flatMap((pole, node) => (pole === 'floating' ? [[node, batteries[0]!.negative] as const] : []))
	];
	const conductanceS = Float64Array.from(edges, (_, i) => 1 / (i < branches.length ? branches[i]!.resistanceOhm : 0.01));
	const reference = batteries[0]!.negative;
	const pinned = new Uint8Array(nodeCount);
	pinned[reference] = 1;
	const injectionA = new Float64Array(nodeCount);
	for (const { positive, negative } of batteries) {
		injectionA[positive]! += 1000;
		injectionA[negative]! -= 1000;
	}
	const own = repeat(() => planElimination({ nodeCount, edges }).factor(conductanceS, pinned).solve(injectionA), 1000);

	const row = (node: number): number => (node > reference ? node - 1 : node);
	const sums = new Map<string, number>();
	edges.forEach(([a, b], i) => {
		for (const [x, y, sign] of a === b
			? []
			: ([
					[a, a, 1],
					[b, b, 1],
					[a, b, -1],
					[b, a, -1]
				] as const)) {
			if (x === reference || y === reference) continue;
			const key = `${row(x)},${row(y)}`;
			sums.set(key, (sums.get(key) ?? 0) + sign * conductanceS[i]!);
		}
	});
	const entries = [...sums].map(([key, value]) => ({ at: key.split(',').map(Number) as [number, number], value }));
	const right = [...injectionA].filter((_, node) => node !== reference).map((amps) => [amps]);
	const sparse = sparseMatrix(nodeCount - 1, entries);
	const general: Times = { wall: [], processor: [] };
	for (let i = 0; i < (nodeCount > 5000 ? 1 : 3); i++)
		timed(() => lusolve(slu(sparse as never, 1, 0.001) as never, right as never), general);
	return { own: median(own.processor), general: median(general.processor) };
}

/** Filled column by column: setting entries one by one would cost the square. */
function sparseMatrix(size: number, entries: readonly { at: [number, number]; value: number }[]): Matrix {
	const sorted = [...entries].sort((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0]);
	const ptr = new Array<number>(size + 1).fill(0);
	for (const { at } of sorted) ptr[at[1] + 1]!++;
	for (let column = 0; column < size; column++) ptr[column + 1]! += ptr[column]!;
	const data = {
		mathjs: 'SparseMatrix',
		values: sorted.map(({ value }) => value),
		index: sorted.map(({ at }) => at[0]),
		ptr,
		size: [size, size]
	};
	return (matrix('sparse').constructor as unknown as { fromJSON(json: object): Matrix }).fromJSON(data);
}

/** Edmonds and Karp (1972) over lists of arcs: augment along shortest paths until there is none. */
function plainFlow(
	nodeCount: number,
	arcs: readonly { from: number; to: number; capacity: number }[],
	source: number,
	sink: number
): number {
	const room = arcs.flatMap(({ capacity }) => [capacity, 0]);
	const to = arcs.flatMap((arc) => [arc.to, arc.from]);
	const at: number[][] = Array.from({ length: nodeCount }, () => []);
	arcs.forEach((arc, i) => {
		at[arc.from]!.push(2 * i);
		at[arc.to]!.push(2 * i + 1);
	});
	for (let flow = 0; ;) {
		const cameBy = new Int32Array(nodeCount).fill(-1);
		const queue = [source];
		for (const node of queue) {
			if (node === sink) break;
			for (const arc of at[node]!) {
				if (room[arc]! <= 0 || to[arc] === source || cameBy[to[arc]!]! >= 0) continue;
				cameBy[to[arc]!] = arc;
				queue.push(to[arc]!);
			}
		}
		if (cameBy[sink]! < 0) return flow;
		let least = Infinity;
		for (let node = sink; node !== source; node = to[cameBy[node]! ^ 1]!) least = Math.min(least, room[cameBy[node]!]!);
		for (let node = sink; node !== source; node = to[cameBy[node]! ^ 1]!) {
			room[cameBy[node]!]! -= least;
			room[cameBy[node]! ^ 1]! += least;
		}
		flow += least;
	}
}

/** Exact let-through of all conductors, and one plain flow for each end of each, measured on a few and scaled up. */
function flows(network: Network): { own: number; plain: number; difference: number } {
	const HUGE = 1e9;
	const ids = [...network.branchOfConductor.keys()];
	const positive = ids.filter((id) => network.poles[network.nodeOfEnd.get(id)!.from] === 'positive');
	const own = repeat(() => {
		const again = { ...network };
		return ids.map((id) => protectionOf(again, id));
	}, 1500);
	const few = positive.filter((_, i) => i % Math.ceil(positive.length / 6) === 0);
	const plainly = (id: string, end: 'from' | 'to'): number => {
		const arcs = network.branches
			.filter(({ index }) => index !== network.branchOfConductor.get(id))
			.flatMap(({ a, b, device }) => [
				{ from: a, to: b, capacity: device?.ratingA ?? HUGE },
				{ from: b, to: a, capacity: device?.ratingA ?? HUGE }
			]);
		for (const { positive: post } of network.batteries) arcs.push({ from: network.nodeCount, to: post, capacity: HUGE });
		return plainFlow(network.nodeCount + 1, arcs, network.nodeCount, network.nodeOfEnd.get(id)![end]);
	};
	const plain: Times = { wall: [], processor: [] };
	let difference = 0;
	for (const id of few) {
		for (const end of ['from', 'to'] as const) {
			let expected = 0;
			timed(() => (expected = plainly(id, end)), plain);
			difference = Math.max(difference, Math.abs(expected - protectionOf(network, id)[end].currentA));
		}
	}
	return {
		own: median(own.processor),
		plain: (plain.processor.reduce((a, b) => a + b) / plain.processor.length) * 2 * ids.length,
		difference
	};
}

const sizes = process.argv.length > 2 ? process.argv.slice(2).map(Number) : [100, 1000, 10_000];
const rows: { conductors: number; edit: number }[] = [];
for (const size of sizes) {
	const diagram = largeDiagram(size);
	const again = repeat(() => checkDiagram(afresh(diagram)), BUDGET_MS / 2);
	const kinds = Object.entries(EDITS).map(([kind, make]) => [kind, checkedEdits(diagram, make, BUDGET_MS / 2)] as const);
	const edit = kinds[0]![1];
	// As by way of the worker: what changed is copied there, and what changed of the result is copied back.
	const memory = createMemory();
	const answer = answering((received) => checkDiagram(received, memory));
	let sent: Diagram | null = null;
	const received = repeat((round) => {
		const next = edited(diagram, round);
		const request = structuredClone({ serial: round, changes: changesBetween(sent, next) });
		sent = next;
		return structuredClone(answer(request));
	});
	const network = buildNetwork(diagram);
	const solve = solving(network);
	const flow = flows(network);
	console.log(`\n${size} conductors, ${Object.keys(diagram.parts).length} parts, ${checkDiagram(diagram).findings.length} findings`);
	console.table({
		'from nothing (with a copy)': row(again, null),
		...Object.fromEntries(kinds.map(([kind, times]) => [kind, row(times, AIMS[size] ?? null)])),
		'another length, by way of the worker': row(received, AIMS[size] ?? null)
	});
	console.table({
		'solving once: mathjs slu + lusolve': {
			'own ms': text(solve.own),
			'theirs ms': text(solve.general),
			ratio: ratio(solve.general, solve.own)
		},
		'let-through of all: one plain flow each': {
			'own ms': text(flow.own),
			'theirs ms': text(flow.plain),
			ratio: ratio(flow.plain, flow.own),
			'difference A': flow.difference
		}
	});
	const all = stages(diagram);
	console.log('Stages after an edit, processor ms (each with what it is the first to need)');
	console.log(
		all
			.slice(0, 14)
			.map(({ stage, ms }) => `  ${text(ms).padStart(7)}  ${stage}`)
			.join('\n')
	);
	rows.push({ conductors: size, edit: Math.min(...edit.processor) });
}

function row({ wall, processor }: Times, aim: number | null) {
	return {
		runs: wall.length,
		'wall p50 ms': text(median(wall)),
		'wall p95 ms': text(share(wall, 0.95)),
		'processor least ms': text(Math.min(...processor)),
		p50: text(median(processor)),
		p95: text(share(processor, 0.95)),
		'aim p95 ms': aim ?? ''
	};
}

/** Slope of log time over log size: 1 is linear, 2 the square. */
for (let i = 1; i < rows.length; i++) {
	const [a, b] = [rows[i - 1]!, rows[i]!];
	const exponent = Math.log(b.edit / a.edit) / Math.log(b.conductors / a.conductors);
	console.log(`Growth of an edit from ${a.conductors} to ${b.conductors} conductors: exponent ${exponent.toFixed(2)}`);
}
