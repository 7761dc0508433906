import type { PartId } from '#core/diagram';
import type { Link, LinkEnd } from '#core/parts';
import type { BatteryBranch, Branch, LoadBranch, NodeIndex, SourceBranch } from './types.ts';

/** No connection is perfect: the floor keeps every branch a resistance the solver can divide by. */
export const LEAST_OHM = 1e-6;

export interface PartLink {
	readonly part: PartId;
	readonly link: Link;
}

export interface Elements {
	readonly branches: Branch[];
	readonly branchOfLink: Map<string, number>;
	readonly batteries: BatteryBranch[];
	readonly sources: SourceBranch[];
	readonly loads: LoadBranch[];
}

type LinkOf<Kind extends Link['kind']> = Extract<Link, { kind: Kind }>;

/** The branches, batteries, sources and loads that the parts' internal links stand for. */
export function elementsOf(links: readonly PartLink[], nodeOf: (part: PartId, end: LinkEnd) => NodeIndex): Elements {
	const elements: Elements = { branches: [], branchOfLink: new Map(), batteries: [], sources: [], loads: [] };
	// A converter names its other side by link id, so both sides are numbered before either is made.
	const indexOf = (kind: 'source' | 'load'): ((part: PartId, id: string | null) => number | null) => {
		const keys = links.filter(({ link }) => link.kind === kind).map(({ part, link }) => `${part}.${link.id}`);
		const index = new Map(keys.map((key, i) => [key, i]));
		return (part, id) => (id === null ? null : (index.get(`${part}.${id}`) ?? null));
	};
	const [sourceIndex, loadIndex] = [indexOf('source'), indexOf('load')];

	for (const { part, link } of links) {
		if ('between' in link) {
			elements.branchOfLink.set(`${part}.${link.id}`, elements.branches.length);
			elements.branches.push(branchOf(elements.branches.length, part, link, nodeOf));
			continue;
		}
		const poles = { part, link: link.id, positive: nodeOf(part, link.positive), negative: nodeOf(part, link.negative) };
		if (link.kind === 'battery') elements.batteries.push({ index: elements.batteries.length, ...poles, ...batteryValues(link) });
		else if (link.kind === 'source') {
			const { maxA, setV, efficiency, blocksReverse, alwaysOn } = link;
			const fedBy = loadIndex(part, link.fedBy);
			elements.sources.push({ index: elements.sources.length, ...poles, maxA, setV, fedBy, efficiency, blocksReverse, alwaysOn });
		} else {
			const { draw, reversible, critical, starting } = link;
			const followsSource = sourceIndex(part, link.followsSource);
			elements.loads.push({
				index: elements.loads.length,
				...poles,
				draw,
				followsSource,
				reversible,
				critical,
				startTimes: starting?.times ?? 1
			});
		}
	}
	return elements;
}

function branchOf(
	index: number,
	part: PartId,
	link: Extract<Link, { between: unknown }>,
	nodeOf: (part: PartId, end: LinkEnd) => NodeIndex
): Branch {
	const device = link.kind === 'protective' ? link.device : null;
	return {
		index,
		a: nodeOf(part, link.between[0]),
		b: nodeOf(part, link.between[1]),
		resistanceOhm: Math.max(link.resistanceOhm, LEAST_OHM),
		origin: { kind: 'link', part, link: link.id },
		device,
		// A breaker can be opened by hand as a switch can.
		switchedBy: link.kind === 'switch' || device?.kind === 'breaker' ? part : null,
		ratedA: link.ratedA,
		kind: link.kind
	};
}

const batteryValues = ({ emfV, lowEmfV, resistanceOhm, faultEmfV, faultResistanceOhm, capacityAh, continuousA }: LinkOf<'battery'>) => ({
	emfV,
	lowEmfV: lowEmfV ?? emfV,
	resistanceOhm: Math.max(resistanceOhm, LEAST_OHM),
	faultEmfV,
	faultResistanceOhm: Math.max(faultResistanceOhm, LEAST_OHM),
	capacityAh,
	continuousA
});
