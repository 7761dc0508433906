/**
 * An edit that moves or names a part, or changes what a conductor is and not where it goes, leaves the form of the
 * network alone. Diagrams are immutable values that share what an edit does not touch: a network built earlier is
 * found by what is shared, and used after everything its form depends on has been compared.
 */
import { sameTerminal, type Diagram } from '#core/diagram';
import { conductorOhm } from './conductor-ohm.ts';
import { ofSameForm } from './form.ts';
import type { Network } from './types.ts';

export interface Built {
	readonly diagram: Diagram;
	readonly ohmMm2PerM: number | undefined;
	readonly network: Network;
}

const latest = new WeakMap<Diagram['parts'] | Diagram['conductors'], Built>();

export function remember(built: Built): void {
	latest.set(built.diagram.parts, built);
	latest.set(built.diagram.conductors, built);
}

/** One of the same form; null when there is none. */
export function earlierNetwork(diagram: Diagram): Built | null {
	const built = latest.get(diagram.parts) ?? latest.get(diagram.conductors);
	return built && isSameForm(built.diagram, diagram) ? built : null;
}

const isSameForm = (before: Diagram, after: Diagram): boolean =>
	before.mounts === after.mounts &&
	before.stacks === after.stacks &&
	// Descriptions depend on a part's kind and parameters.
	hasSame(before.parts, after.parts, (a, b) => a.kind === b.kind && a.params === b.params) &&
	hasSame(before.conductors, after.conductors, (a, b) => sameTerminal(a.from, b.from) && sameTerminal(a.to, b.to));

/** The same keys in the same order, with values that are alike. */
function hasSame<Value>(before: Record<string, Value>, after: Record<string, Value>, isAlike: (a: Value, b: Value) => boolean): boolean {
	if (before === after) return true;
	const [keys, keysBefore] = [Object.keys(after), Object.keys(before)];
	return (
		keys.length === keysBefore.length &&
		keys.every((key, i) => key === keysBefore[i] && (before[key] === after[key] || isAlike(before[key]!, after[key]!)))
	);
}

/** The network of a diagram of the same form; the same network where no resistance differs. */
export function withResistances(
	{ diagram: before, ohmMm2PerM: ohmBefore, network }: Built,
	diagram: Diagram,
	ohmMm2PerM?: number
): Network {
	if (diagram.conductors === before.conductors && ohmMm2PerM === ohmBefore) return network;
	const branches = network.branches.map((branch) => {
		if (branch.origin.kind !== 'conductor') return branch;
		const conductor = diagram.conductors[branch.origin.id]!;
		if (conductor === before.conductors[branch.origin.id] && ohmMm2PerM === ohmBefore) return branch;
		const resistanceOhm = conductorOhm(conductor, ohmMm2PerM);
		return resistanceOhm === branch.resistanceOhm ? branch : { ...branch, resistanceOhm };
	});
	if (branches.every((branch, i) => branch === network.branches[i])) return network;
	return ofSameForm({ ...network, branches }, network);
}
