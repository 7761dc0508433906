import type { Conductor, ConductorId } from '#core/diagram';
import { formOf, usedLengthM, type Branch, type Network, type NodeIndex, type Wire } from '#core/network';
import { faultCircuit, type Condition, type FaultCircuit } from './fault-circuit.ts';
import { returnPoints } from './return-point.ts';
import { shortBetween, throughDevice, type Short } from './short.ts';

/** Shorts anywhere in a network. What costs something is done on first use and kept. */
export interface Faults {
	/** Node of the return a fault at this node goes to; null for nodes that are not positive, or have no way back. */
	returnOf(node: NodeIndex): NodeIndex | null;
	/** A dead short from a positive node to its return; null where there is none. */
	short(node: NodeIndex, condition: Condition): Short | null;
	/**
	 * Another number when a short at this node, or what branches at it carry in one elsewhere, may be another than in the
	 * faults these were told to follow. Where numbers are the same, so are all answers, to the last bit.
	 */
	version(node: NodeIndex, condition: Condition): number;
	/** The same to a given node. */
	shortTo(node: NodeIndex, to: NodeIndex, condition: Condition): Short;
	/** Amps through a branch without a short, positive from a to b: what flows between batteries. */
	atRestA(branch: Pick<Branch, 'index' | 'a' | 'b'>, condition: Condition): number;
	/** Greatest amps through a device into a short just behind it, its own resistance not counted. */
	throughDevice(branch: Wire): DeviceFault;
}

export interface DeviceFault {
	/** Greater of both directions, amps; 0 where no fault can be. */
	readonly currentA: number;
	/** Side it comes from. */
	readonly from: NodeIndex;
	/** Volts on that side against the return before the short, and what limits the current, ohms. */
	readonly openV: number;
	readonly sourceOhm: number;
}

/**
 * @param conductors of the diagram, by id
 * @param earlier of a state before, for `version`
 */
export function faultsOf(network: Network, conductors: Readonly<Record<ConductorId, Conductor>>, earlier?: Faults): Faults {
	const before = earlier ? (workings.get(earlier) ?? null) : null;
	// Each follows the one before it, and no chain of all of them grows.
	if (before) before.before = null;
	const returns = once(() => {
		const lengthM = lengthsM(network, conductors);
		const { before } = own;
		const known = before && formOf(before.network) === formOf(network) ? before.returns() : null;
		return known && isSame(known.lengthM, lengthM) ? known : { lengthM, returnOf: memo(returnPoints(network, lengthM)) };
	});
	const returnOf = (node: NodeIndex): NodeIndex | null => returns().returnOf(node);
	const circuits = {
		greatest: once(() => faultCircuit(network, conductors, 'greatest')),
		least: once(() => faultCircuit(network, conductors, 'least'))
	};
	const versionsIn = (condition: Condition) =>
		once(() => versions(network.nodeCount, circuits[condition](), own.before?.circuits[condition](), own.before?.versions[condition]()));
	const versionsBy = { greatest: versionsIn('greatest'), least: versionsIn('least') };
	const shortTo = (node: NodeIndex, to: NodeIndex, condition: Condition): Short => shortBetween(circuits[condition](), node, to);
	const shorts = (condition: Condition) =>
		memo((node: NodeIndex): Short | null => {
			const to = returnOf(node);
			return to === null ? null : shortTo(node, to, condition);
		});
	const short = { greatest: shorts('greatest'), least: shorts('least') };
	const throughDevice = memo((branch: Wire) => deviceFault(circuits.greatest(), branch, returnOf(branch.b) ?? returnOf(branch.a)));
	const faults: Faults = {
		returnOf,
		version: (node, condition) => versionsBy[condition]()[node]!,
		shortTo,
		short: (node, condition) => short[condition](node),
		atRestA({ index, a, b }, condition) {
			const { nodeV, branchOhm } = circuits[condition]();
			return (nodeV[a]! - nodeV[b]!) / branchOhm[index]!;
		},
		throughDevice
	};
	const own: Workings = { network, returns, circuits, versions: versionsBy, before };
	workings.set(faults, own);
	return faults;
}

interface Workings {
	readonly network: Network;
	returns(): { readonly lengthM: Float64Array; returnOf(node: NodeIndex): NodeIndex | null };
	readonly circuits: Readonly<Record<Condition, () => FaultCircuit>>;
	readonly versions: Readonly<Record<Condition, () => Float64Array>>;
	before: Workings | null;
}

const workings = new WeakMap<Faults, Workings>();

let latest = 0;

function versions(nodeCount: number, circuit: FaultCircuit, before?: FaultCircuit, known?: Float64Array): Float64Array {
	const version = ++latest;
	const isChanged = before && circuit.changedSince(before);
	return Float64Array.from({ length: nodeCount }, (_, node) => (!isChanged || isChanged[node] ? version : known![node]!));
}

const lengthsM = ({ branches }: Network, conductors: Readonly<Record<ConductorId, Conductor>>): Float64Array =>
	Float64Array.from(branches, ({ origin }) => {
		const conductor = origin.kind === 'conductor' ? conductors[origin.id] : undefined;
		return conductor ? usedLengthM(conductor).lengthM : 0;
	});

function deviceFault(circuit: FaultCircuit, { a, b }: Wire, to: NodeIndex | null): DeviceFault {
	if (to === null) return { currentA: 0, from: a, openV: 0, sourceOhm: Infinity };
	const { fromA, fromB } = throughDevice(circuit, { a, b }, to);
	const [currentA, from] = fromA >= fromB ? [fromA, a] : [fromB, b];
	const openV = circuit.isOneIsland(from, to) ? circuit.nodeV[from]! - circuit.nodeV[to]! : 0;
	return { currentA, from, openV, sourceOhm: currentA > 0 ? openV / currentA : Infinity };
}

function once<Value>(make: () => Value): () => Value {
	let made: { value: Value } | null = null;
	return () => (made ??= { value: make() }).value;
}

function memo<Key, Value>(make: (key: Key) => Value): (key: Key) => Value {
	const known = new Map<Key, Value>();
	return (key) => {
		if (!known.has(key)) known.set(key, make(key));
		return known.get(key)!;
	};
}

function isSame(a: Float64Array, b: Float64Array): boolean {
	return a.length === b.length && a.every((value, i) => value === b[i]);
}
