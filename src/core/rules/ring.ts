import { defineRule } from './define.ts';
import { groupBy } from './group-by.ts';
import type { ConductorView } from './study.ts';
import { conductorSubject, subjects } from './subjects.ts';
import { gathered, ofForm } from './watch.ts';
import { capital, listed } from './words.ts';

export const ring = defineRule({
	meta: {
		id: 'ring',
		title: 'Positive conductors form no ring unless it is meant',
		severity: 'warning',
		group: 'topology',
		why: 'A circuit fed by two ways stays live when one of its fuses is out, and each of the two carries what nobody reckoned.',
		source: { default: 'IEC 60364-4-43 433.4, 434.4; common practice' }
	},

	messages: {
		closed: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'closes' : 'form'} a ring: what hangs on it is fed by two ways.`,
			remedy: 'Open the ring at one place; where it is meant, accept this with the reason.'
		})
	},

	/** One report for each piece of the network that is closed in itself. Banks of parallel strings and pairs between the same two places are meant. */
	*check(study) {
		const pieces = ringPieces(study);
		const sizes = groupBy([...pieces.values()], (piece) => piece);
		for (const [piece, views] of groupBy(conductorsOnRings(study), ({ branch }) => pieces.get(branch.index)!)) {
			const nodes = new Set(views.flatMap(({ branch }) => [branch.a, branch.b]));
			const isBank = study.form.batteries.filter(({ positive }) => nodes.has(positive)).length > 1;
			// Only conductors, all between the same two places: another rule looks at those.
			const isParallel = sizes.get(piece)!.length === views.length && isSideBySide(views);
			if (isBank || isParallel) continue;
			yield {
				message: 'closed',
				data: { names: listed(views.map(({ name }) => name)), one: views.length === 1 },
				at: subjects(views.map(({ id }) => conductorSubject(id)))
			};
		}
	}
});

const conductorsOnRings = gathered(
	(study) => study.conductors,
	(study, view) => (view.pole === 'positive' && ringPieces(study).has(view.branch.index) ? [view] : [])
);

const isSideBySide = (views: readonly ConductorView[]): boolean =>
	views.every(({ branch: { a, b } }) => {
		const [first] = views as [ConductorView];
		const { a: c, b: d } = first.branch;
		return (a === c && b === d) || (a === d && b === c);
	});

/**
 * The piece each branch belongs to that can be taken out without parting what it joins: branches of one piece share
 * its number, bridges have none. Tarjan’s low points, without recursion, since trees are deep.
 */
const ringPieces = ofForm(({ form: { nodeCount, branches, branchesAt, poles } }): ReadonlyMap<number, number> => {
	const order = new Int32Array(nodeCount).fill(-1);
	const low = new Int32Array(nodeCount);
	const next = new Int32Array(nodeCount);
	const cameBy = new Int32Array(nodeCount).fill(-1);
	const bridge = new Set<number>();
	let count = 0;
	const isUsed = (index: number) => branches[index]!.a !== branches[index]!.b && poles[branches[index]!.a] === 'positive';
	for (let root = 0; root < nodeCount; root++) {
		if (order[root] !== -1 || poles[root] !== 'positive') continue;
		const open = [root];
		order[root] = low[root] = count++;
		while (open.length > 0) {
			const node = open.at(-1)!;
			const index = branchesAt[node]![next[node]!++];
			if (index === undefined) {
				open.pop();
				const parent = open.at(-1);
				if (parent === undefined) continue;
				low[parent] = Math.min(low[parent]!, low[node]!);
				if (low[node]! > order[parent]!) bridge.add(cameBy[node]!);
				continue;
			}
			if (index === cameBy[node] || !isUsed(index)) continue;
			const to = branches[index]!.a === node ? branches[index]!.b : branches[index]!.a;
			if (order[to] === -1) {
				order[to] = low[to] = count++;
				cameBy[to] = index;
				open.push(to);
			} else low[node] = Math.min(low[node]!, order[to]!);
		}
	}
	// What is left without the bridges falls into pieces.
	const piece = new Map<number, number>();
	const seen = new Uint8Array(nodeCount);
	for (let root = 0; root < nodeCount; root++) {
		if (seen[root] || order[root] === -1) continue;
		const open = [root];
		seen[root] = 1;
		while (open.length > 0) {
			const node = open.pop()!;
			for (const index of branchesAt[node]!) {
				if (!isUsed(index) || bridge.has(index)) continue;
				piece.set(index, root);
				const to = branches[index]!.a === node ? branches[index]!.b : branches[index]!.a;
				if (seen[to]) continue;
				seen[to] = 1;
				open.push(to);
			}
		}
	}
	return piece;
});
