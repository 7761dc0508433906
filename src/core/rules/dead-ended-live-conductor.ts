import { studKey, terminalRef, type ConductorId, type StudKey } from '#core/diagram';
import type { Network, NodeIndex } from '#core/network';
import { defineRule } from './define.ts';
import { conductorSubject, subjects } from './subjects.ts';
import type { Study } from './study.ts';
import { capital, listed, partName } from './words.ts';

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

		for (const [top, ends] of deadBranches(network)) {
			const live = [...ends.keys()].filter((id) => study.conductor(id).pole === 'positive' && diagram.conductors[id]!.use !== 'spare');
			if (live.length === 0) continue;
			const ordered = [top, ...live.filter((id) => id !== top)].filter((id) => live.includes(id));
			const end = farStud(study, live.at(-1)!, ends.get(live.at(-1)!)!);
			const part = study.part(terminalRef(end).part);
			const words = { names: listed(ordered.map((id) => study.conductor(id).name)), one: ordered.length === 1 };
			const at = subjects(ordered.map(conductorSubject));
			if (part.definition?.group === 'distribution' && part.links.length > 0) {
				yield { message: 'nothingTaken', data: { ...words, bus: partName(part) }, at, severity: 'note' };
			} else {
				yield { message: 'leadsNowhere', data: { ...words, end: study.studName(end) }, at };
			}
		}
	}
});

/**
 * Takes away, again and again, whatever hangs by one branch from the rest and has no battery, source or load on
 * it. Conductors that fall are dead ends, gathered under the one nearest to what remains, each with its far node.
 */
function deadBranches(network: Network): Map<ConductorId, Map<ConductorId, NodeIndex>> {
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

	const groups = new Map<ConductorId, Map<ConductorId, NodeIndex>>();
	for (const index of fallen.toReversed()) {
		const { origin, a, b } = network.branches[index]!;
		if (origin.kind !== 'conductor') continue;
		const far = wayUp.get(a) === index ? a : b;
		const top = topmost(network, wayUp, far);
		groups.set(top, (groups.get(top) ?? new Map<ConductorId, NodeIndex>()).set(origin.id, far));
	}
	return groups;
}

/** The last conductor met on the way from a fallen node to what remains. */
function topmost(network: Network, wayUp: ReadonlyMap<NodeIndex, number>, from: NodeIndex): ConductorId {
	let top: ConductorId = '';
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

/** The conductor's stud on its far node. */
function farStud({ diagram, network }: Study, id: ConductorId, far: NodeIndex): StudKey {
	const { from, to } = diagram.conductors[id]!;
	return studKey(network.nodeOfEnd.get(id)!.from === far ? from : to);
}
