import { studKey, terminalRef, type ConductorId, type StudKey } from '#core/diagram';
import type { Form, NodeIndex } from '#core/network';
import { defineRuleForEach } from './define.ts';
import { conductorSubject, subjects } from './subjects.ts';
import type { ConductorView, Study } from './study.ts';
import { ofForm } from './watch.ts';
import { capital, listed, partName } from './words.ts';

/** Dead ends by the conductor nearest to what remains, each with its far node. */
const deadEnds = ofForm(({ form }) => [...deadBranches(form)].map(([top, ends]) => ({ top, ends })));

export const deadEndedLiveConductor = defineRuleForEach(deadEnds, {
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

	*checkOne({ top, ends }, study) {
		if ([...study.form.batteries, ...study.form.sources].length === 0) return;
		const live = [...ends.keys()].filter((id) => isLive(study.conductor(id)));
		if (live.length === 0) return;
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
});

const isLive = ({ pole, conductor }: ConductorView): boolean => pole === 'positive' && conductor.use !== 'spare';

/**
 * Takes away, again and again, whatever hangs by one branch from the rest and has no battery, source or load on
 * it. Conductors that fall are dead ends, gathered under the one nearest to what remains, each with its far node.
 */
function deadBranches(form: Form): Map<ConductorId, Map<ConductorId, NodeIndex>> {
	const anchored = new Set<NodeIndex>();
	for (const { positive, negative } of [...form.batteries, ...form.sources, ...form.loads]) anchored.add(positive).add(negative);

	const left = form.branchesAt.map((branches) => new Set(branches.filter((index) => !isLoop(form, index))));
	const wayUp = new Map<NodeIndex, number>();
	const fallen: number[] = [];
	const leaves = left.flatMap((branches, node) => (branches.size === 1 && !anchored.has(node) ? [node] : []));
	for (let node = leaves.pop(); node !== undefined; node = leaves.pop()) {
		const [branch] = left[node]!;
		if (branch === undefined) continue;
		const next = otherEnd(form, branch, node);
		left[node]!.delete(branch);
		left[next]!.delete(branch);
		wayUp.set(node, branch);
		fallen.push(branch);
		if (left[next]!.size === 1 && !anchored.has(next)) leaves.push(next);
	}

	const groups = new Map<ConductorId, Map<ConductorId, NodeIndex>>();
	for (const index of fallen.toReversed()) {
		const { origin, a, b } = form.branches[index]!;
		if (origin.kind !== 'conductor') continue;
		const far = wayUp.get(a) === index ? a : b;
		const top = topmost(form, wayUp, far);
		groups.set(top, (groups.get(top) ?? new Map<ConductorId, NodeIndex>()).set(origin.id, far));
	}
	return groups;
}

/** The last conductor met on the way from a fallen node to what remains. */
function topmost(form: Form, wayUp: ReadonlyMap<NodeIndex, number>, from: NodeIndex): ConductorId {
	let top: ConductorId = '';
	for (let node = from, index = wayUp.get(node); index !== undefined; index = wayUp.get(node)) {
		const { origin } = form.branches[index]!;
		if (origin.kind === 'conductor') top = origin.id;
		node = otherEnd(form, index, node);
	}
	return top;
}

function otherEnd({ branches }: Form, index: number, node: NodeIndex): NodeIndex {
	const { a, b } = branches[index]!;
	return a === node ? b : a;
}

const isLoop = ({ branches }: Form, index: number): boolean => branches[index]!.a === branches[index]!.b;

/** The conductor's stud on its far node. */
function farStud({ conductor, form }: Study, id: ConductorId, far: NodeIndex): StudKey {
	const { from, to } = conductor(id).conductor;
	return studKey(form.nodeOfEnd.get(id)!.from === far ? from : to);
}
