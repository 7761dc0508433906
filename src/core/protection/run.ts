/**
 * How far a conductor is from what protects it, along conductors. A conductor may be without sufficient protection
 * for a short way between the point where its circuit begins and its device; this measures that way.
 */
import type { ConductorEnd, ConductorId } from '#core/diagram';
import { byForm, type BatteryBranch, type Wire, type Form, type NodeIndex, type SourceBranch } from '#core/network';
import { protectionOf } from './let-through.ts';
import { once } from './once.ts';

export interface UnprotectedRun {
	/** At a battery's terminal, or where it is tapped off something that is protected well enough for itself. */
	readonly startsAt: 'battery' | 'tap';
	readonly startNode: NodeIndex;
	/** From the start to this end, and on along this conductor. */
	readonly lengthM: number;
	/** As `lengthM`, and on to the nearest device beyond the conductor's other end; null when there is none. */
	readonly toDeviceM: number | null;
	/** True when a device stands in every way onward from the other end, so that no load is reached without one. */
	readonly deviceBeyond: boolean;
	/** Sum of the ratings of the devices that stand before loads; Infinity when a load has none before it. */
	readonly beyondA: number;
}

export interface RunMeasures {
	/** Length in use of each conductor. */
	lengthM(conductor: ConductorId): number;
	/** Greatest let-through that protects a conductor sufficiently; Infinity for one that needs no protection. */
	limitA(conductor: ConductorId): number;
}

/**
 * The run at one end of a conductor whose let-through there is greater than its limit. Upstream conductors that
 * are themselves not sufficiently protected belong to the run. With several feeds, it starts at the nearest point
 * from which, with all nearer ones, more than the limit can come.
 *
 * Null for a negative conductor: its protection stands in the positive one, wherever that is.
 */
export function unprotectedRun(network: Form, conductor: ConductorId, end: ConductorEnd, measures: RunMeasures): UnprotectedRun | null {
	const index = network.branchOfConductor.get(conductor);
	if (index === undefined) throw new Error(`There is no conductor "${conductor}" in the network.`);
	const ends = network.nodeOfEnd.get(conductor)!;
	if (network.poles[ends[end]] === 'negative') return null;

	const upstream = walk(network, ends[end], measures, (branch, from) => {
		if (branch.index === index || branch.device) return false;
		return branch.origin.kind !== 'conductor' || feedA(network, branch, from) > measures.limitA(branch.origin.id);
	});
	const start = startOf(feeds(network, index, upstream), measures.limitA(conductor)) ?? { startsAt: 'tap', node: ends[end], distanceM: 0 };
	const lengthM = start.distanceM + measures.lengthM(conductor);

	// What lies beyond is seldom asked for.
	const onwards = once(() => {
		const other = end === 'from' ? ends.to : ends.from;
		const beyond = walk(network, other, measures, (branch, from) => {
			const to = branch.a === from ? branch.b : branch.a;
			return branch.index !== index && !branch.device && !upstream.has(to);
		});
		return onward(network, index, beyond, upstream);
	});
	return {
		startsAt: start.startsAt,
		startNode: start.node,
		lengthM,
		get toDeviceM() {
			const { nearestM } = onwards();
			return nearestM === null ? null : lengthM + nearestM;
		},
		get deviceBeyond() {
			return onwards().nearestM !== null && onwards().beyondA < Infinity;
		},
		get beyondA() {
			return onwards().beyondA;
		}
	};
}

type Distances = ReadonlyMap<NodeIndex, number>;

/** Distance along conductors to every node that can be walked to (Dijkstra, without a heap: runs are short). */
function walk(network: Form, start: NodeIndex, measures: RunMeasures, mayPass: (branch: Wire, from: NodeIndex) => boolean): Distances {
	const reached = new Map([[start, 0]]);
	const settled = new Map<NodeIndex, number>();
	while (reached.size > 0) {
		const [node, distanceM] = [...reached].reduce((nearest, entry) => (entry[1] < nearest[1] ? entry : nearest));
		reached.delete(node);
		settled.set(node, distanceM);
		for (const index of network.branchesAt[node]!) {
			const branch = network.branches[index]!;
			const to = branch.a === node ? branch.b : branch.a;
			if (settled.has(to) || !mayPass(branch, node)) continue;
			const next = distanceM + (branch.origin.kind === 'conductor' ? measures.lengthM(branch.origin.id) : 0);
			if (next < (reached.get(to) ?? Infinity)) reached.set(to, next);
		}
	}
	return settled;
}

/** What a branch can bring to the node `to` from its other end. */
function feedA(network: Form, branch: Wire, to: NodeIndex): number {
	if (branch.origin.kind !== 'conductor') return branch.device?.ratingA ?? Infinity;
	const { from } = network.nodeOfEnd.get(branch.origin.id)!;
	return protectionOf(network, branch.origin.id)[from === to ? 'to' : 'from'].currentA;
}

interface Feed {
	readonly startsAt: 'battery' | 'tap';
	readonly node: NodeIndex;
	readonly distanceM: number;
	readonly currentA: number;
}

function feeds(network: Form, conductor: number, region: Distances): Feed[] {
	const found: Feed[] = [];
	const { batteriesAt, sourcesAt } = suppliesOf(network);
	for (const [node, distanceM] of region) {
		for (const { positive, negative } of batteriesAt.get(node) ?? []) {
			const throughIt = negative === node && network.poles[node] === 'positive' && isSupplied(network, positive, conductor, region);
			if (positive === node || throughIt) found.push({ startsAt: 'battery', node, distanceM, currentA: Infinity });
		}
		for (const { maxA } of sourcesAt.get(node) ?? []) found.push({ startsAt: 'tap', node, distanceM, currentA: maxA });
		for (const index of network.branchesAt[node]!) {
			const branch = network.branches[index]!;
			const far = branch.a === node ? branch.b : branch.a;
			if (index === conductor || region.has(far) || !isSupplied(network, far, conductor, region)) continue;
			found.push({ startsAt: 'tap', node, distanceM, currentA: feedA(network, branch, node) });
		}
	}
	return found.sort((a, b) => a.distanceM - b.distanceM || b.currentA - a.currentA);
}

function startOf(sorted: readonly Feed[], limitA: number): Feed | undefined {
	let sumA = 0;
	return sorted.find(({ currentA }) => (sumA += currentA) > limitA) ?? sorted.at(-1);
}

interface Supplies {
	/** Batteries by either terminal, sources by their positive one. */
	readonly batteriesAt: ReadonlyMap<NodeIndex, readonly BatteryBranch[]>;
	readonly sourcesAt: ReadonlyMap<NodeIndex, readonly SourceBranch[]>;
	/** Positive terminals of both. */
	readonly posts: ReadonlySet<NodeIndex>;
	/** Positive terminals of loads. */
	readonly loaded: ReadonlySet<NodeIndex>;
}

/** Resistances have no part in it. */
const suppliesOf = byForm(({ batteries, sources, loads }): Supplies => {
	const batteriesAt = new Map<NodeIndex, BatteryBranch[]>();
	const sourcesAt = new Map<NodeIndex, SourceBranch[]>();
	const land = <Supply>(at: Map<NodeIndex, Supply[]>, node: NodeIndex, supply: Supply): void =>
		void at.set(node, [...(at.get(node) ?? []), supply]);
	for (const battery of batteries) for (const node of new Set([battery.positive, battery.negative])) land(batteriesAt, node, battery);
	for (const source of sources) land(sourcesAt, source.positive, source);
	return {
		batteriesAt,
		sourcesAt,
		posts: new Set([...batteries, ...sources].map(({ positive }) => positive)),
		loaded: new Set(loads.map(({ positive }) => positive))
	};
});

/** True when a battery or source can feed this node without passing the conductor or the region. */
function isSupplied(network: Form, start: NodeIndex, conductor: number, region: Distances): boolean {
	const { posts } = suppliesOf(network);
	return reaches(network, start, conductor, region, (node) => posts.has(node));
}

function reaches(
	{ branches, branchesAt }: Form,
	start: NodeIndex,
	conductor: number,
	barred: Distances,
	isGoal: (node: NodeIndex) => boolean
): boolean {
	const seen = new Set([start]);
	for (const node of seen) {
		if (isGoal(node)) return true;
		for (const index of branchesAt[node]!) {
			const to = branches[index]!.a === node ? branches[index]!.b : branches[index]!.a;
			if (index !== conductor && !barred.has(to)) seen.add(to);
		}
	}
	return false;
}

function onward(network: Form, conductor: number, beyond: Distances, upstream: Distances): { nearestM: number | null; beyondA: number } {
	const { loaded } = suppliesOf(network);
	const barred = new Map([...upstream, ...beyond]);
	let nearestM: number | null = null;
	let beyondA = 0;
	for (const [node, distanceM] of beyond) {
		if (loaded.has(node)) beyondA = Infinity;
		for (const index of network.branchesAt[node]!) {
			const { device, a, b } = network.branches[index]!;
			const far = a === node ? b : a;
			if (!device || barred.has(far)) continue;
			if (nearestM === null || distanceM < nearestM) nearestM = distanceM;
			if (reaches(network, far, conductor, barred, (n) => loaded.has(n))) beyondA += device.ratingA;
		}
	}
	return { nearestM, beyondA };
}
