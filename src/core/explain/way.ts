/** The way current takes between a load and what feeds it. */
import type { Branch, Network, NodeIndex } from '#core/network';
import type { OperatingPoint } from '#core/solver';

/** A battery or source with one terminal at a node, and the amps it delivers. */
export interface Supply {
	readonly kind: 'battery' | 'source';
	readonly part: string;
	readonly positive: NodeIndex;
	readonly negative: NodeIndex;
	readonly currentA: number;
}

export interface Step {
	readonly branch: Branch;
	readonly from: NodeIndex;
	readonly to: NodeIndex;
	/** Positive. */
	readonly currentA: number;
}

export interface Way {
	/** From the load's terminal to the supply's. */
	readonly steps: readonly Step[];
	readonly supply: Supply;
	/** What else feeds the nodes along the way. */
	readonly beside: readonly (
		| { readonly at: NodeIndex; readonly branch: Branch; readonly currentA: number }
		| { readonly at: NodeIndex; readonly supply: Supply; readonly currentA: number }
	)[];
}

/** Currents that differ by less than this share are taken as equal, so that rounding does not choose the way. */
const EQUAL = 1e-6;
const NOTHING_A = 1e-9;

/**
 * Follows the greatest current from a load's terminal to the supply it comes from (`pole` positive, upstream) or goes
 * back to (negative, downstream). Null when it leads nowhere.
 */
export function wayFrom(network: Network, point: OperatingPoint, start: NodeIndex, pole: 'positive' | 'negative'): Way | null {
	const sense = pole === 'positive' ? 1 : -1;
	const suppliesAt = suppliesBy(network, point, pole);
	const steps: Step[] = [];
	const beside: Way['beside'][number][] = [];
	const seen = new Set<NodeIndex>();
	for (let node = start; ;) {
		if (seen.has(node)) return null;
		seen.add(node);
		const ways = network.branchesAt[node]!.flatMap((index) => {
			const branch = network.branches[index]!;
			const currentA = sense * (branch.b === node ? point.branchA[index]! : -point.branchA[index]!);
			return currentA > NOTHING_A && branch.a !== branch.b ? [{ branch, currentA }] : [];
		});
		const supplies = suppliesAt.get(node) ?? [];
		const supply = greatest(supplies);
		const way = greatest(ways);
		if (!supply && !way) return null;
		const ends = supply !== null && (way === null || supply.currentA >= way.currentA * (1 - EQUAL));
		for (const other of ways) if (ends || other !== way) beside.push({ at: node, ...other });
		for (const other of supplies) if (!ends || other !== supply) beside.push({ at: node, supply: other, currentA: other.currentA });
		if (ends) return { steps, supply, beside };
		const { branch, currentA } = way!;
		const next = branch.a === node ? branch.b : branch.a;
		steps.push({ branch, from: node, to: next, currentA });
		node = next;
	}
}

function greatest<Item extends { readonly currentA: number }>(items: readonly Item[]): Item | null {
	return items.reduce<Item | null>((best, item) => (best && best.currentA >= item.currentA * (1 - EQUAL) ? best : item), null);
}

function suppliesBy({ batteries, sources }: Network, point: OperatingPoint, pole: 'positive' | 'negative'): Map<NodeIndex, Supply[]> {
	const at = new Map<NodeIndex, Supply[]>();
	const add = (kind: Supply['kind'], amps: Float64Array) => (item: Omit<Supply, 'kind' | 'currentA'> & { readonly index: number }) => {
		const currentA = amps[item.index]!;
		if (!(currentA > NOTHING_A)) return;
		const { part, positive, negative } = item;
		const node = item[pole];
		at.set(node, [...(at.get(node) ?? []), { kind, part, positive, negative, currentA }]);
	};
	batteries.forEach(add('battery', point.batteryA));
	sources.forEach(add('source', point.sourceA));
	return at;
}
