import type { OperatingCase } from '#core/diagram';
import { formOf, type Network } from '#core/network';
import { planElimination, type Elimination } from './elimination.ts';

/** A network as the elimination sees it: everything that can conduct is an edge, in the order of `first`. */
export interface Circuit {
	readonly elimination: Elimination;
	readonly edgeCount: number;
	/** Number of the first edge of each sort; branches start at 0. Loads are edges for their resistive draw. */
	readonly first: { readonly battery: number; readonly source: number; readonly load: number };
}

const circuits = new WeakMap<object, Circuit>();

/** Planned once for each form of network and used for all its cases: open switches are conductances of zero. */
export function circuitOf(network: Network): Circuit {
	const form = formOf(network);
	let circuit = circuits.get(form);
	if (!circuit) circuits.set(form, (circuit = planCircuit(network)));
	return circuit;
}

function planCircuit({ nodeCount, branches, batteries, sources, loads }: Network): Circuit {
	const twoPoles = [...batteries, ...sources, ...loads.filter(({ draw }) => draw.kind === 'resistance')];
	const edges = [
		...branches.map(({ a, b }) => [a, b] as const),
		...twoPoles.map(({ positive, negative }) => [positive, negative] as const)
	];
	const battery = branches.length;
	const source = battery + batteries.length;
	return {
		elimination: planElimination({ nodeCount, edges }),
		edgeCount: edges.length,
		first: { battery, source, load: source + sources.length }
	};
}

/** Levels of a case by branch (0 is open), battery, source and load. */
export interface Levels {
	readonly closed: readonly boolean[];
	/** False where a battery's electronics have disconnected it. */
	readonly battery: readonly boolean[];
	/** Open-circuit volts of each battery in the case's state of charge. */
	readonly emfV: readonly number[];
	readonly source: readonly number[];
	readonly load: readonly number[];
}

export function levelsOf({ branches, batteries, sources, loads }: Network, operatingCase: OperatingCase): Levels {
	const set = (part: string): number | undefined => (Object.hasOwn(operatingCase.levels, part) ? operatingCase.levels[part] : undefined);
	const starting = Object.keys(operatingCase.starting ?? {});
	const starts = (part: string): boolean => operatingCase.duration === 'surge' && (starting.length === 0 || starting.includes(part));
	return {
		closed: branches.map(({ switchedBy }) => switchedBy === null || (set(switchedBy) ?? 1) > 0),
		battery: batteries.map(({ part }) => (set(part) ?? 1) > 0),
		emfV: batteries.map(({ emfV, lowEmfV = emfV }) => (operatingCase.battery === 'low' ? lowEmfV : emfV)),
		source: sources.map(({ part, alwaysOn }) => set(part) ?? (alwaysOn ? 1 : operatingCase.sources)),
		// A load that starts draws more in proportion, whatever its level.
		load: loads.map(({ part, startTimes = 1 }) => (set(part) ?? operatingCase.loads) * (starts(part) ? startTimes : 1))
	};
}
