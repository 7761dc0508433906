/** Walks over metal that no fuse or breaker interrupts, with every switch closed. */
import { studKey, type ConductorEnd, type ConductorId, type StudKey } from '#core/diagram';
import { unionFind, type NodeIndex, type Wire } from '#core/network';
import { least } from './extremes.ts';
import type { ConductorView, Study } from './study.ts';
import { ofForm } from './watch.ts';

/** Nodes joined by bars, switches and shunts: no length of conductor and no device lies between them. */
export type MetalIndex = number;

export interface DeviceFree {
	metalOf(node: NodeIndex): MetalIndex;
	metalOfEnd(view: ConductorView, end: ConductorEnd): MetalIndex;
	/** Conductors that end on a metal. */
	conductorsAt(metal: MetalIndex): readonly ConductorView[];
	/** Branches of fuses and breakers that end on a metal. */
	devicesAt(metal: MetalIndex): readonly Wire[];
	/** Stud of a battery's terminal on a metal, a positive one if there is; null when there is none. */
	batteryAt(metal: MetalIndex): StudKey | null;
	hasLoad(metal: MetalIndex): boolean;
	/** A charger, controller or converter output. */
	hasSource(metal: MetalIndex): boolean;
}

/** Conductors are those of the study; all else follows from the form of its network. */
export function deviceFree(study: Study): DeviceFree {
	const { conductorsAt, ...metal } = metalwork(study);
	return { ...metal, conductorsAt: (at) => conductorsAt(at).map(study.conductor) };
}

type Metalwork = Omit<DeviceFree, 'conductorsAt'> & { conductorsAt(metal: MetalIndex): readonly ConductorId[] };

const metalwork = ofForm(({ form }): Metalwork => {
	const joined = unionFind(form.nodeCount);
	for (const { a, b, kind, device } of form.branches) if (kind !== 'conductor' && !device) joined.union(a, b);

	const at = <Item>(items: readonly Item[], nodesOf: (item: Item) => readonly NodeIndex[]) => {
		const groups = new Map<MetalIndex, Item[]>();
		for (const item of items) {
			for (const node of nodesOf(item)) {
				const metal = joined.find(node);
				const group = groups.get(metal);
				if (!group) groups.set(metal, [item]);
				// Both ends on one metal: listed once.
				else if (group.at(-1) !== item) group.push(item);
			}
		}
		return (metal: MetalIndex): readonly Item[] => groups.get(metal) ?? [];
	};

	const loadsAt = at(form.loads, ({ positive, negative }) => [positive, negative]);
	const sourcesAt = at(form.sources, ({ positive }) => [positive]);
	const posts = form.batteries.flatMap(({ part, positive, negative }) => [positive, negative].map((node) => ({ part, node })));
	const withPosts = new Set(posts.map(({ node }) => node));
	const studOf = new Map<string, StudKey>();
	for (const [key, node] of form.nodeOf) {
		if (withPosts.has(node) && !key.includes('@')) studOf.set(`${key.split('.')[0]} ${node}`, key);
	}
	const postsAt = at(posts, ({ node }) => [node]);
	return {
		metalOf: joined.find,
		metalOfEnd: ({ id }, end) => joined.find(form.nodeOfEnd.get(id)![end]),
		conductorsAt: at([...form.nodeOfEnd.keys()], (id) => {
			const { from, to } = form.nodeOfEnd.get(id)!;
			return [from, to];
		}),
		devicesAt: at(
			form.branches.filter(({ device }) => device !== null),
			({ a, b }) => [a, b]
		),
		batteryAt: (metal) => postsAt(metal).map(({ part, node }) => studOf.get(`${part} ${node}`) ?? null)[0] ?? null,
		hasLoad: (metal) => loadsAt(metal).length > 0,
		hasSource: (metal) => sourcesAt(metal).length > 0
	};
});

export const otherEnd = (end: ConductorEnd): ConductorEnd => (end === 'from' ? 'to' : 'from');

export interface Reached {
	readonly metal: MetalIndex;
	/** Conductor length walked, metres. */
	readonly distanceM: number;
	/** Conductors walked, the first one walked first. */
	readonly way: readonly ConductorId[];
}

/**
 * Metals within reach of `start` along conductors, nearest first. `passes` says whether the walk may go on along a
 * conductor from a metal; it is asked with the conductor's near end.
 */
export function* walk(
	metal: DeviceFree,
	start: MetalIndex,
	passes: (view: ConductorView, near: ConductorEnd) => boolean
): Generator<Reached> {
	const done = new Set<MetalIndex>();
	const open: Reached[] = [{ metal: start, distanceM: 0, way: [] }];
	while (open.length > 0) {
		const here = least(open, ({ distanceM }) => distanceM)!;
		open.splice(open.indexOf(here), 1);
		if (done.has(here.metal)) continue;
		done.add(here.metal);
		yield here;
		for (const view of metal.conductorsAt(here.metal)) {
			for (const near of ['from', 'to'] as const) {
				if (metal.metalOfEnd(view, near) !== here.metal || !passes(view, near)) continue;
				const next = metal.metalOfEnd(view, otherEnd(near));
				if (!done.has(next)) open.push({ metal: next, distanceM: here.distanceM + view.lengthM, way: [...here.way, view.id] });
			}
		}
	}
}

export const endKey = ({ conductor }: ConductorView, end: ConductorEnd): StudKey => studKey(conductor[end]);
