import type { CaseId, OperatingCase } from '#core/diagram';
import type { Network } from '#core/network';
import { circuitOf, type Levels } from './circuit.ts';
import type { Connection } from './connection.ts';
import { demandsOf, type Demand } from './demand.ts';
import { operate, type Operation } from './operate.ts';
import { supplyOf, type Settled } from './supply.ts';
import { switchingOf, type Switching } from './switching.ts';
import type { OperatingPoint } from './types.ts';

/**
 * A load whose terminals are nearly at one voltage with all loads off is not across the poles, whatever it is
 * connected to: it is treated as not fed.
 */
const LEAST_SUPPLY_V = 0.5;

/** How each case of a network stands, in the order given. */
export const solveCases = (network: Network, cases: Readonly<Record<CaseId, OperatingCase>>): readonly OperatingPoint[] =>
	Object.entries(cases).map(([id, operatingCase]) => solveCase(network, id, operatingCase));

/** Never throws; every number in the answer is finite. */
export function solveCase(network: Network, caseId: CaseId, operatingCase: OperatingCase): OperatingPoint {
	const { levels, connectionWithout } = switchingOf(network, operatingCase);
	const { connection, settle, unloaded } = start(network, levels, connectionWithout);
	const unloadedV = loadVolts(network, connection, unloaded);
	const loadFed = network.loads.map(
		({ index, draw }) => connection.loadFed[index]! && (draw.kind === 'resistance' || Math.abs(unloadedV[index]!) >= LEAST_SUPPLY_V)
	);
	// A reversed load has its supply, but draws nothing: it is broken or blocked, not working backwards.
	const drawing = network.loads.map(({ index, followsSource }) => {
		const input = followsSource === null || connection.sourceOn[followsSource]!;
		return loadFed[index]! && unloadedV[index]! > 0 && input;
	});
	const demands = demandsOf(network, levels, drawing);
	const operation = operate(network, demands, settle, unloaded);
	return operatingPoint(network, caseId, levels, connection, loadFed, demands, operation, unloadedV);
}

/** The network with its loads off; a converter whose input turns out to be reversed is off for good. */
function start(network: Network, levels: Levels, connectionWithout: Switching['connectionWithout']) {
	const circuit = circuitOf(network);
	const barred = new Set<number>();
	for (;;) {
		const connection = connectionWithout(barred);
		const { settle } = supplyOf(network, circuit, levels, connection);
		const unloaded = settle(new Float64Array(network.loads.length));
		const volts = loadVolts(network, connection, unloaded);
		const starved = network.sources.filter(
			({ index, fedBy }) => connection.sourceOn[index] && fedBy !== null && !(volts[fedBy]! >= LEAST_SUPPLY_V)
		);
		if (starved.length === 0) return { connection, settle, unloaded };
		for (const { index } of starved) barred.add(index);
	}
}

/** Volts across each load; 0 where its terminals have no common reference. */
const loadVolts = ({ loads }: Network, { islands }: Connection, { nodeV }: Settled): Float64Array =>
	Float64Array.from(loads, ({ positive, negative }) => (islands.same(positive, negative) ? nodeV[positive]! - nodeV[negative]! : 0));

function operatingPoint(
	network: Network,
	caseId: CaseId,
	levels: Levels,
	connection: Connection,
	loadFed: readonly boolean[],
	demands: readonly Demand[],
	{ settled, loadA: drawnA, demandV, collapsed, iterations }: Operation,
	unloadedV: Float64Array
): OperatingPoint {
	const { branches, batteries, loads } = network;
	const { nodeV, sourceA, atRest } = settled;
	const loadV = loadVolts(network, connection, settled);
	const loadA = Float64Array.from(loads, ({ index, draw }) => {
		if (draw.kind !== 'resistance') return drawnA[index]!;
		return connection.loadFed[index] ? (loadV[index]! * levels.load[index]!) / Math.max(draw.ohms, 1e-6) : 0;
	});
	const branchA = Float64Array.from(branches, ({ index, a, b, resistanceOhm }) =>
		levels.closed[index] ? (nodeV[a]! - nodeV[b]!) / resistanceOhm : 0
	);
	const batteryA = Float64Array.from(batteries, ({ index, positive, negative, resistanceOhm }) =>
		levels.battery[index] ? (levels.emfV[index]! - (nodeV[positive]! - nodeV[negative]!)) / resistanceOhm : 0
	);
	const point = { nodeV, branchA, batteryA, sourceA, loadA };
	return {
		caseId,
		status: collapsed || !atRest ? 'collapsed' : 'solved',
		collapsedLoads: collapsed ? collapsedLoads(demands, demandV, unloadedV, drawnA) : [],
		...point,
		loadV,
		loadFed,
		residualA: residualA(network, point),
		iterations
	};
}

/**
 * At the point of collapse a load is at about half the voltage it had before it was switched on; loads that merely
 * share the system are higher, and small ones beside it are not to blame.
 */
function collapsedLoads(
	demands: readonly Demand[],
	demandV: Float64Array,
	unloadedV: Float64Array,
	drawnA: Float64Array
): readonly number[] {
	const share = demands.map(({ load }, i) => demandV[i]! / unloadedV[load]!);
	const lowest = Math.min(...share);
	const low = demands.filter((_, i) => share[i]! <= Math.max(0.6, lowest)).map(({ load }) => load);
	const mostA = Math.max(...low.map((load) => drawnA[load]!));
	return low.filter((load) => drawnA[load]! >= mostA / 10);
}

/** Greatest amount by which what flows into a node differs from what flows out. */
function residualA(
	{ nodeCount, branches, batteries, sources, loads }: Network,
	{ branchA, batteryA, sourceA, loadA }: Pick<OperatingPoint, 'branchA' | 'batteryA' | 'sourceA' | 'loadA'>
): number {
	const excessA = new Float64Array(nodeCount);
	const flow = (from: number, to: number, amps: number): void => {
		excessA[from]! -= amps;
		excessA[to]! += amps;
	};
	for (const { index, a, b } of branches) flow(a, b, branchA[index]!);
	for (const { index, positive, negative } of batteries) flow(negative, positive, batteryA[index]!);
	for (const { index, positive, negative } of sources) flow(negative, positive, sourceA[index]!);
	for (const { index, positive, negative } of loads) flow(positive, negative, loadA[index]!);
	return excessA.reduce((most, amps) => Math.max(most, Math.abs(amps)), 0);
}
