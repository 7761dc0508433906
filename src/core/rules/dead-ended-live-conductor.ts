import { terminalRef, studKey, type ConductorId } from '#core/diagram';
import type { Network, NodeIndex } from '#core/network';
import { defineRule } from './define.ts';
import { conductorSubject, subjects } from './subjects.ts';
import type { Study } from './study.ts';
import { capital, listed } from './words.ts';

export const deadEndedLiveConductor = defineRule({
	meta: {
		id: 'dead-ended-live-conductor',
		title: 'Live conductors lead somewhere',
		severity: 'warning',
		group: 'topology',
		why: 'A forgotten live end is found by the first spanner, or by water. Nobody remembers that it is live.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		leadsNowhere: ({ names, one, end }: { names: string; one: boolean; end: string }) => ({
			message: `${capital(names)} ${one ? 'is' : 'are'} live and ${one ? 'leads' : 'lead'} to nothing that uses current, ending on ${end}.`,
			remedy: `Remove ${one ? 'it' : 'them'}, connect what ${one ? 'it is' : 'they are'} meant for, or cap the end and mark the conductor as a spare.`
		}),
		nothingTaken: ({ names, one, bus }: { names: string; one: boolean; bus: string }) => ({
			message: `${capital(names)} ${one ? 'feeds' : 'feed'} ${bus}, from which nothing is taken.`,
			remedy: `Connect the circuits of ${bus}, or remove ${one ? 'the conductor' : 'the conductors'}.`
		})
	},

	*check(study) {
		const { network, diagram } = study;
		const supplies = network.batteries.length + network.sources.length;
		if (supplies === 0) return;

		for (const [top, ids] of deadBranches(network)) {
			const live = ids.filter((id) => study.conductor(id).pole === 'positive' && diagram.conductors[id]!.use !== 'spare');
			if (live.length === 0) continue;
			const ordered = [top, ...live.filter((id) => id !== top)].filter((id) => live.includes(id));
			const end = farEnd(study, live.at(-1)!);
			const part = study.part(terminalRef(end).part);
			const words = { names: listed(ordered.map((id) => study.conductor(id).name)), one: ordered.length === 1 };
			const at = subjects(ordered.map(conductorSubject));
			if (part.definition?.group === 'distribution' && part.links.length > 0) {
				yield { message: 'nothingTaken', data: { ...words, bus: study.studName(end) }, at, severity: 'note' };
			} else {
				yield { message: 'leadsNowhere', data: { ...words, end: study.studName(end) }, at };
			}
		}
	}
});

/**
 * Takes away, again and again, whatever hangs by one branch from the rest and has no battery, source or load on
 * it. Conductors that fall are dead ends, gathered under the one nearest to what remains.
 */
function deadBranches(network: Network): Map<ConductorId, ConductorId[]> {
	const anchored = new Set<NodeIndex>();
	for (const { positive, negative } of [...network.batteries, ...network.sources, ...network.loads]) anchored.add(positive).add(negative);

	const left = network.branchesAt.map((branches) => new Set(branches.filter((index) => !isLoop(network, index))));
	const wayUp = new Map<NodeIndex, number>();
	const fallen: number[] = [];
	const leaves = left.flatMap((branches, node) => (branches.size === 1 && !anchored.has(node) ? [node] : []));
	for (let node = leaves.pop(); node !== undefined; node = leaves.pop()) {
		const [branch] = left[node]!;
		if (branch === undefined) continue;
		const next = otherEnd(network, branch, node);
		left[node]!.delete(branch);
		left[next]!.delete(branch);
		wayUp.set(node, branch);
		fallen.push(branch);
		if (left[next]!.size === 1 && !anchored.has(next)) leaves.push(next);
	}

	const groups = new Map<ConductorId, ConductorId[]>();
	for (const index of fallen.toReversed()) {
		const { origin, a, b } = network.branches[index]!;
		if (origin.kind !== 'conductor') continue;
		const top = topmost(network, wayUp, wayUp.get(a) === index ? a : b) ?? origin.id;
		groups.set(top, [...(groups.get(top) ?? []), origin.id]);
	}
	return groups;
}

/** The last conductor met on the way from a fallen node to what remains. */
function topmost(network: Network, wayUp: ReadonlyMap<NodeIndex, number>, from: NodeIndex): ConductorId | null {
	let top: ConductorId | null = null;
	for (let node = from, index = wayUp.get(node); index !== undefined; index = wayUp.get(node)) {
		const { origin } = network.branches[index]!;
		if (origin.kind === 'conductor') top = origin.id;
		node = otherEnd(network, index, node);
	}
	return top;
}

function otherEnd({ branches }: Network, index: number, node: NodeIndex): NodeIndex {
	const { a, b } = branches[index]!;
	return a === node ? b : a;
}

const isLoop = ({ branches }: Network, index: number): boolean => branches[index]!.a === branches[index]!.b;

/** The stud at the end of a conductor that lies farther from what remains: the one nothing else leaves from. */
function farEnd({ diagram, network }: Study, id: ConductorId): string {
	const { from, to } = diagram.conductors[id]!;
	const ends = network.nodeOfEnd.get(id)!;
	const degree = (node: NodeIndex) => network.branchesAt[node]!.length;
	return degree(ends.from) < degree(ends.to) ? studKey(from) : studKey(to);
}
