import type { Conductor, ConductorId } from '#core/diagram';
import type { Network, NodeIndex } from '#core/network';
import { faultCircuit, type Condition } from './fault-circuit.ts';
import { shortBetween, type Short } from './short.ts';

/** A short between any two nodes, with nothing open yet. @param shortOhm of the short itself */
export const shortAt = (
	network: Network,
	conductors: Readonly<Record<ConductorId, Conductor>>,
	condition: Condition,
	at: NodeIndex,
	to: NodeIndex,
	shortOhm = 0
): Short => shortBetween(faultCircuit(network, conductors, condition), at, to, shortOhm);
