import { studKey, type Conductor, type ConductorId } from '#core/diagram';
import type { Form, NodeIndex } from '#core/network';
import { defineRule } from './define.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import type { ConductorView, Study } from './study.ts';
import { capital, listed, partName } from './words.ts';

export const wireAcrossPoles = defineRule({
	meta: {
		id: 'wire-across-poles',
		title: 'Nothing but loads joins positive to negative',
		severity: 'fatal',
		group: 'topology',
		why: 'A conductor across the poles carries the whole short-circuit current of the battery: it glows within seconds, and whatever touches it burns.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		across: ({ name, place, supplies }: { name: string; place: string; supplies: string }) => ({
			message: `${capital(name)}${place} joins the positive and the negative of ${supplies} with no load between.`,
			remedy: `Remove ${name}, or move the end that is on the wrong pole.`
		})
	},

	/** Takes one culprit away after another until no battery or source is shorted any more. */
	*check(study) {
		const { form, nets } = study;
		const supplies = [...form.batteries, ...form.sources].filter(({ positive, negative }) => nets.of(positive) === nets.of(negative));
		const removed = new Set<ConductorId>();
		const culprits = new Map<ConductorId, Set<string>>();

		for (const supply of supplies) {
			for (;;) {
				const path = conductorsOnPath(form, supply.positive, supply.negative, removed);
				if (!path) break;
				const culprit = likeliest(path.map(study.conductor), study);
				// Parts and mounted blocks alone never join the poles; were one to, there would be no conductor to blame.
				if (!culprit) break;
				removed.add(culprit.id);
				culprits.set(culprit.id, (culprits.get(culprit.id) ?? new Set()).add(supply.part));
			}
		}

		// A culprit found for one battery shorts every battery beside it as well; put back alone it tells which.
		for (const [id] of culprits) {
			const others = new Set([...removed].filter((other) => other !== id));
			const shorted = supplies.filter(({ positive, negative }) => conductorsOnPath(form, positive, negative, others) !== null);
			const parts = [...new Set([...shorted.map((supply) => supply.part), ...culprits.get(id)!])];
			const { name, conductor } = study.conductor(id);
			yield {
				message: 'across',
				data: { name, place: placeOf(study, conductor), supplies: listed(parts.map((part) => partName(study.part(part)))) },
				at: subjects([conductorSubject(id), ...parts.map(partSubject)])
			};
		}
	}
});

/** Where a labelled conductor runs; the name of an unlabelled one says so already. */
const placeOf = ({ studName }: Study, { label, from, to }: Conductor): string =>
	label.trim() === '' ? '' : `, from ${studName(studKey(from))} to ${studName(studKey(to))},`;

/** Conductors on a shortest way through conductors and closed devices; null where there is no way. */
function conductorsOnPath(form: Form, from: NodeIndex, to: NodeIndex, removed: ReadonlySet<ConductorId>): ConductorId[] | null {
	const cameBy = new Map<NodeIndex, number | null>([[from, null]]);
	const queue = [from];
	for (let node = queue.shift(); node !== undefined && node !== to; node = queue.shift()) {
		for (const index of form.branchesAt[node]!) {
			const { a, b, origin } = form.branches[index]!;
			const next = a === node ? b : a;
			if (cameBy.has(next) || (origin.kind === 'conductor' && removed.has(origin.id))) continue;
			cameBy.set(next, index);
			queue.push(next);
		}
	}
	if (!cameBy.has(to)) return null;

	const conductors: ConductorId[] = [];
	for (let node = to, index = cameBy.get(node); index !== null && index !== undefined; index = cameBy.get(node)) {
		const { a, b, origin } = form.branches[index]!;
		if (origin.kind === 'conductor') conductors.push(origin.id);
		node = a === node ? b : a;
	}
	return conductors;
}

/** The conductor that joins studs meant for different poles; where none does, the one drawn last. */
function likeliest(path: readonly ConductorView[], study: Study): ConductorView | undefined {
	const order = Object.keys(study.diagram.conductors);
	const suspicion = ({ conductor }: ConductorView): number => {
		const roles = [conductor.from, conductor.to].map(
			({ part, terminal }) => study.part(part).terminals.find(({ id }) => id === terminal)?.role ?? 'either'
		);
		return roles.includes('positive') && (roles.includes('negative') || roles.includes('chassis')) ? 1 : 0;
	};
	return [...path].sort((a, b) => suspicion(b) - suspicion(a) || order.indexOf(b.id) - order.indexOf(a.id))[0];
}
