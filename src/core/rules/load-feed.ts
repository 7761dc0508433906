/** What stands before a load: the device that limits it, and the conductors that land on it. */
import { areaMm2 } from '#core/conductors';
import type { LoadBranch, NodeIndex } from '#core/network';
import type { LetThrough } from '#core/protection';
import { exceeds } from './conductor-words.ts';
import { groupBy } from './group-by.ts';
import type { ConductorView, Study } from './study.ts';
import { ofForm } from './watch.ts';
import { conductorsByNode, conductorsByPart } from './wiring.ts';

/** The one conductor that ends on a node; null when there is none or several. */
export function onlyConductorAt(study: Study, node: NodeIndex): ConductorView | null {
	const ids = conductorsByNode(study).get(node);
	return ids?.length === 1 ? study.conductor(ids[0]!) : null;
}

/** What is let through to a load by its one positive conductor; null when there is none or several. */
export function feedOf(study: Study, load: Pick<LoadBranch, 'positive'>): { view: ConductorView; letThrough: LetThrough } | null {
	const view = onlyConductorAt(study, load.positive);
	if (!view || view.pole !== 'positive') return null;
	const { from, to } = study.protection(view.id);
	return { view, letThrough: view.branch.a === load.positive ? to : from };
}

export interface DeviceLoads {
	readonly device: LetThrough['limitedBy'][number];
	readonly loads: readonly LoadBranch[];
}

/** Loads by the one device that limits each of them: "part.link" → loads, in the diagram's order. */
export const loadsByDevice = ofForm((study): ReadonlyMap<string, DeviceLoads> => {
	const groups = new Map<string, { device: LetThrough['limitedBy'][number]; loads: LoadBranch[] }>();
	for (const load of study.form.loads) {
		const limitedBy = feedOf(study, load)?.letThrough.limitedBy ?? [];
		const [device] = limitedBy;
		if (limitedBy.length !== 1 || !device || !study.form.branchOfLink.has(`${device.part}.${device.link}`)) continue;
		const key = `${device.part}.${device.link}`;
		const group = groups.get(key) ?? { device, loads: [] };
		group.loads.push(load);
		groups.set(key, group);
	}
	return groups;
});

/**
 * " and its return W2", or nothing: the negative conductor that runs beside a positive one and is no thicker, which a
 * thicker positive alone would leave behind.
 */
export function returnBeside(study: Study, view: ConductorView): string {
	if (view.pole !== 'positive') return '';
	const parts = [view.conductor.from.part, view.conductor.to.part].filter((id) => {
		const { terminals } = study.part(id);
		// It has both poles: a load, a charger, a panel.
		return terminals.some(({ role }) => role === 'positive') && terminals.some(({ role }) => role === 'negative');
	});
	const landing = new Set(parts.flatMap((part) => conductorsByPart(study).get(part) ?? []));
	const beside = [...landing]
		.map(study.conductor)
		.filter(
			({ pole, conductor }) =>
				pole === 'negative' &&
				[conductor.from, conductor.to].some(({ part, terminal }) => parts.includes(part) && isFeedTerminal(study, part, terminal))
		);
	const [only] = beside;
	if (!only || beside.length > 1 || exceeds(areaMm2(only.conductor.gauge), areaMm2(view.conductor.gauge))) return '';
	return ` and its return ${only.name}`;
}

/** Where the part’s own current returns, not that of what it feeds in turn. */
const isFeedTerminal = (study: Study, id: string, terminal: string): boolean => {
	const node = study.form.nodeOf.get(`${id}.${terminal}`);
	const own = usersByPart(study).get(id);
	return own
		? own.some(({ negative }) => negative === node)
		: study.part(id).terminals.find(({ role }) => role === 'negative')?.id === terminal;
};

/** Loads and sources inside each part that has any. */
const usersByPart = ofForm(({ form }) => groupBy([...form.loads, ...form.sources], ({ part }) => part));
