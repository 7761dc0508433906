import { unionFind, type LoadBranch, type Network, type NodeIndex } from '#core/network';

/**
 * Loads that nothing can feed, though everything is switched on: indices into `Network.loads`. A load lives while
 * batteries and metal join its terminals, or metal joins them to a living source; a converter lives while its input
 * does. A charger whose battery is cut off is not counted on: few hold a rail alone.
 *
 * @param opened branches that conduct no longer
 * @param isStarved what a standing short takes the volts away from
 */
export function darkLoads(
	{ nodeCount, branches, batteries, sources, loads }: Network,
	opened: ReadonlySet<number>,
	isStarved: (load: LoadBranch) => boolean = () => false
): readonly number[] {
	const metal = unionFind(nodeCount);
	const island = unionFind(nodeCount);
	const whole = unionFind(nodeCount);
	for (const { index, a, b } of branches) {
		whole.union(a, b);
		if (opened.has(index)) continue;
		metal.union(a, b);
		island.union(a, b);
	}
	for (const { positive, negative } of batteries) {
		island.union(positive, negative);
		whole.union(positive, negative);
	}
	const withBattery = new Set(batteries.map(({ positive }) => island.find(positive)));
	const hadBattery = new Set(batteries.map(({ positive }) => whole.find(positive)));
	const standsAlone = ({ positive }: { readonly positive: NodeIndex }): boolean => !hadBattery.has(whole.find(positive));
	const rails = new Set<string>();
	const rail = (positive: NodeIndex, negative: NodeIndex): string => `${metal.find(positive)} ${metal.find(negative)}`;

	const isLive = (load: LoadBranch): boolean => {
		const { positive, negative } = load;
		if (metal.same(positive, negative) || isStarved(load)) return false;
		return rails.has(rail(positive, negative)) || (island.same(positive, negative) && withBattery.has(island.find(positive)));
	};
	// A converter may feed what feeds another, so this goes on until nothing more comes alive.
	for (let before = -1; before < rails.size;) {
		before = rails.size;
		for (const source of sources) {
			const lives = source.fedBy === null ? standsAlone(source) : isLive(loads[source.fedBy]!);
			if (lives) rails.add(rail(source.positive, source.negative));
		}
	}
	return loads.filter((load) => !isLive(load)).map(({ index }) => index);
}
