import type { NodeIndex } from '#core/network';
import type { FaultCircuit } from './fault-circuit.ts';

/** A short between two nodes. */
export interface Short {
	readonly at: NodeIndex;
	readonly to: NodeIndex;
	/** Amps through the short; 0 where nothing feeds it. */
	readonly currentA: number;
	/** Volts at `at` against `to` before the short. */
	readonly openV: number;
	/** Ohms of the loop: batteries, conductors, devices; not of the short itself. */
	readonly loopOhm: number;
	/** Amps through a branch during the short, positive from a to b. 0 on rails that only limited sources feed. */
	branchA(branch: { readonly index: number; readonly a: NodeIndex; readonly b: NodeIndex }): number;
	/** Volts between two nodes of the short's island during the short as a share of those before; 1 on other islands. */
	voltsLeft(positive: NodeIndex, negative: NodeIndex): number;
}

/** @param shortOhm of the short itself: 0 for a dead one, some tens of milliohms where a chafed wire arcs */
export function shortBetween(circuit: FaultCircuit, at: NodeIndex, to: NodeIndex, shortOhm = 0): Short {
	const { nodeV, resistanceOhm } = circuit;
	const none = { at, to, openV: 0, loopOhm: Infinity, branchA: () => 0, voltsLeft: () => 1 };
	const limitedA = circuit.limitedA(at, to);
	if (!circuit.isOneIsland(at, to) || !circuit.hasBattery(at)) return { ...none, currentA: limitedA };

	const openV = nodeV[at]! - nodeV[to]!;
	const loopOhm = resistanceOhm(at, to);
	if (!(openV > 0) || !(loopOhm > 0)) return { ...none, currentA: 0 };
	const batteryA = openV / (loopOhm + shortOhm);
	// Volts a node falls for each ampere drawn at `at` and returned at `to`.
	const fallOhm = (node: NodeIndex): number =>
		node === at ? loopOhm : node === to ? 0 : (resistanceOhm(node, to) + loopOhm - resistanceOhm(node, at)) / 2;
	return {
		at,
		to,
		openV,
		loopOhm,
		currentA: batteryA + limitedA,
		branchA: ({ index, a, b }) => {
			if (!circuit.isOneIsland(a, at)) return 0;
			return (nodeV[a]! - nodeV[b]! - batteryA * (fallOhm(a) - fallOhm(b))) / circuit.branchOhm[index]!;
		},
		voltsLeft: (positive, negative) => {
			const beforeV = nodeV[positive]! - nodeV[negative]!;
			if (!circuit.isOneIsland(positive, at) || !circuit.isOneIsland(negative, at) || !(beforeV > 0)) return 1;
			return 1 - (batteryA * (fallOhm(positive) - fallOhm(negative))) / beforeV;
		}
	};
}

/**
 * Amps into a short just behind a device, through the device itself: from its `a` side into a short on its `b` side,
 * and the other way. The device's own resistance is not counted, since a fuse must break what it lets pass at first.
 */
export function throughDevice(
	{ nodeV, resistanceOhm, isOneIsland, hasBattery, limitedA }: FaultCircuit,
	{ a, b }: { readonly a: NodeIndex; readonly b: NodeIndex },
	to: NodeIndex
): { readonly fromA: number; readonly fromB: number } {
	if (!isOneIsland(a, to) || !hasBattery(a)) {
		const amps = limitedA(a, to);
		return { fromA: amps, fromB: amps };
	}
	const [va, vb] = [nodeV[a]! - nodeV[to]!, nodeV[b]! - nodeV[to]!];
	const [raa, rbb, between] = [resistanceOhm(a, to), resistanceOhm(b, to), resistanceOhm(a, b)];
	// Both ends of the device at the voltage of the return: then nothing flows in it, and what arrives at each end is that side's share.
	const rab = (raa + rbb - between) / 2;
	const determinant = raa * rbb - rab * rab;
	if (!(determinant > 0)) return { fromA: 0, fromB: 0 };
	return { fromA: Math.max(0, (va * rbb - vb * rab) / determinant), fromB: Math.max(0, (vb * raa - va * rab) / determinant) };
}
