/**
 * Builds a network straight from named nodes, for tests of the solver and of protection that need no parts:
 *
 *     const net = network({
 *     	batteries: [battery('B', '+', '0', { emfV: 12.8, resistanceOhm: 0.005 })],
 *     	branches: [fuse('F', '+', 'bus', 40), wire('W1', 'bus', 'a', 0.01)],
 *     	loads: [load('L', 'a', '0', { watts: 60 })]
 *     });
 *     net.node('bus');
 *
 * Nodes are numbered in the order they are named.
 */
import { branchesAt, polesOf, type BatteryBranch, type Branch, type LoadBranch, type Network, type SourceBranch } from '#core/network';
import type { OperatingCase } from '#core/diagram';

type Named<Item, Nodes extends keyof Item> = Omit<Item, Nodes | 'index'> & Record<Nodes, string>;
type NamedBranch = Named<Branch, 'a' | 'b'>;
type NamedBattery = Named<BatteryBranch, 'positive' | 'negative'>;
type NamedSource = Named<Omit<SourceBranch, 'fedBy'>, 'positive' | 'negative'> & { fedBy: string | null };
type NamedLoad = Named<Omit<LoadBranch, 'followsSource'>, 'positive' | 'negative'> & { followsSource: string | null };

export const wire = (id: string, a: string, b: string, resistanceOhm = 0.001): NamedBranch => ({
	a,
	b,
	resistanceOhm,
	origin: { kind: 'conductor', id },
	device: null,
	switchedBy: null,
	ratedA: null,
	kind: 'conductor'
});

export const fuse = (part: string, a: string, b: string, ratingA: number, resistanceOhm = 0.08 / ratingA): NamedBranch => ({
	a,
	b,
	resistanceOhm,
	origin: { kind: 'link', part, link: 'fuse' },
	device: { kind: 'fuse', ratingA, family: null, ratedV: null, breakingA: null },
	switchedBy: null,
	ratedA: ratingA,
	kind: 'protective'
});

export const switchLink = (part: string, a: string, b: string, resistanceOhm = 0.00015): NamedBranch => ({
	...segment(part, a, b, resistanceOhm),
	switchedBy: part,
	kind: 'switch'
});

export const segment = (part: string, a: string, b: string, resistanceOhm = 1e-5): NamedBranch => ({
	a,
	b,
	resistanceOhm,
	origin: { kind: 'link', part, link: 'segment' },
	device: null,
	switchedBy: null,
	ratedA: null,
	kind: 'segment'
});

export const battery = (
	part: string,
	positive: string,
	negative: string,
	{ emfV = 12.8, resistanceOhm = 0.005 }: { emfV?: number; resistanceOhm?: number } = {}
): NamedBattery => ({
	part,
	link: 'battery',
	positive,
	negative,
	emfV,
	resistanceOhm,
	faultEmfV: emfV,
	faultResistanceOhm: resistanceOhm,
	capacityAh: 100,
	continuousA: null
});

export const source = (
	part: string,
	positive: string,
	negative: string,
	rest: { maxA: number; setV: number } & Partial<Pick<NamedSource, 'fedBy' | 'efficiency' | 'blocksReverse' | 'alwaysOn'>>
): NamedSource => ({
	part,
	link: 'output',
	positive,
	negative,
	fedBy: null,
	efficiency: 1,
	blocksReverse: true,
	alwaysOn: false,
	...rest
});

export const load = (
	part: string,
	positive: string,
	negative: string,
	draw: { watts: number } | { amps: number } | { ohms: number },
	rest: Partial<Pick<NamedLoad, 'followsSource' | 'reversible' | 'critical'>> = {}
): NamedLoad => ({
	part,
	link: 'load',
	positive,
	negative,
	draw: 'watts' in draw ? { kind: 'power', ...draw } : 'amps' in draw ? { kind: 'current', ...draw } : { kind: 'resistance', ...draw },
	followsSource: null,
	reversible: false,
	critical: false,
	...rest
});

export interface NetworkSpec {
	readonly branches?: readonly NamedBranch[];
	readonly batteries?: readonly NamedBattery[];
	readonly sources?: readonly NamedSource[];
	readonly loads?: readonly NamedLoad[];
}

export type TestNetwork = Network & { node(name: string): number };

/** `fedBy` and `followsSource` name the part whose load or source it is. */
export function network({ branches = [], batteries = [], sources = [], loads = [] }: NetworkSpec): TestNetwork {
	const numbers = new Map<string, number>();
	const node = (name: string): number => numbers.get(name) ?? numbers.set(name, numbers.size).get(name)!;
	const poles = <Item extends { positive: string; negative: string }>(item: Item, index: number) => ({
		...item,
		index,
		positive: node(item.positive),
		negative: node(item.negative)
	});
	const byPart = (items: readonly { part: string }[], part: string | null): number | null => {
		const index = items.findIndex((item) => item.part === part);
		return index < 0 ? null : index;
	};

	const real = {
		batteries: batteries.map(poles),
		sources: sources.map((item, i) => ({ ...poles(item, i), fedBy: byPart(loads, item.fedBy) })),
		loads: loads.map((item, i) => ({ ...poles(item, i), followsSource: byPart(sources, item.followsSource) })),
		branches: branches.map((branch, index) => ({ ...branch, index, a: node(branch.a), b: node(branch.b) }))
	};
	const nodeCount = numbers.size;
	const ofConductors = real.branches.flatMap(({ origin, index, a, b }) =>
		origin.kind === 'conductor' ? [{ id: origin.id, index, ends: { from: a, to: b } }] : []
	);
	return {
		...real,
		nodeCount,
		nodeOf: numbers,
		nodeOfEnd: new Map(ofConductors.map(({ id, ends }) => [id, ends])),
		branchOfConductor: new Map(ofConductors.map(({ id, index }) => [id, index])),
		branchOfLink: new Map(
			real.branches.flatMap(({ origin, index }) => (origin.kind === 'link' ? [[`${origin.part}.${origin.link}`, index] as const] : []))
		),
		poles: polesOf({ nodeCount, ...real }),
		branchesAt: branchesAt(nodeCount, real.branches),
		unresolved: [],
		node: (name) => {
			const found = numbers.get(name);
			if (found === undefined) throw new Error(`There is no node "${name}".`);
			return found;
		}
	};
}

export const allOn = (rest: Partial<OperatingCase> = {}): OperatingCase => ({
	label: 'All on',
	order: 0,
	duration: 'continuous',
	loads: 1,
	sources: 1,
	levels: {},
	...rest
});
