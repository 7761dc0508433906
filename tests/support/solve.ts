/** Solves a network of named nodes with everything on, and reads it by those names. */
import { solveCase, type OperatingPoint } from '#core/solver';
import { allOn, network, type NetworkSpec, type TestNetwork } from './network.ts';

/** An ideal source: no circuit of a book notices a tenth of a micro-ohm. */
export const IDEAL_OHM = 1e-7;

export interface Solved extends OperatingPoint {
	readonly net: TestNetwork;
	/** Volts of a node against another, or against the node "0". */
	volts(a: string, b?: string): number;
	/** Amps through a wire from its first node to its second. */
	amps(wire: string): number;
}

/** @throws when no operating point exists */
export function solve(spec: NetworkSpec): Solved {
	const net = network(spec);
	const point = solveCase(net, 'on', allOn());
	if (point.status !== 'solved') throw new Error(`The circuit is ${point.status}.`);
	return {
		...point,
		net,
		volts: (a, b = '0') => point.nodeV[net.node(a)]! - point.nodeV[net.node(b)]!,
		amps: (id) => point.branchA[net.branchOfConductor.get(id)!]!
	};
}
