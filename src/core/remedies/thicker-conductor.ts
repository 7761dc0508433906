import { compareGauges, gaugesOf, gaugeText } from '#core/conductors';
import { editConductors, type Command, type ConductorId, type Gauge } from '#core/diagram';
import { listed, type Finding, type Study } from '#core/rules';
import { applied, findingsOfRule, mend } from './findings.ts';
import type { Proposal, RemedyKind } from './types.ts';

/** The next size up that passes, for all conductors the finding is about. */
export const thickerConductor: RemedyKind = {
	rules: [
		'undersized-conductor',
		'undersized-return',
		'voltage-drop',
		'oversized-protection',
		'negative-smaller-than-positive',
		'conductor-below-minimum',
		'no-fast-clearing',
		'inverter-low-voltage-current',
		'chassis-bond'
	],

	*propose(study, finding) {
		const { diagram } = study;
		const ids = finding.subjects.flatMap(({ kind, id }) => (kind === 'conductor' && Object.hasOwn(diagram.conductors, id) ? [id] : []));
		if (ids.length === 0) return;
		const before = findingsOfRule(diagram, finding.rule);
		let inPart: Map<ConductorId, Gauge> | null = null;
		for (const gauge of sizesAbove(study, ids)) {
			const thinner = ids.filter((id) => compareGauges(diagram.conductors[id]!.gauge, gauge) < 0);
			const thicken = new Map(thinner.map((id) => [id, gauge]));
			const after = applied(diagram, thickenCommands(thicken));
			const mended = after && mend(before, findingsOfRule(after, finding.rule), finding);
			if (mended === 'whole') {
				yield { title: '', commands: [], thicken };
				return;
			}
			if (mended === 'part') inPart ??= thicken;
		}
		if (inPart) yield { title: '', commands: [], thicken: inPart };
	}
};

/** One command for each size. */
export const thickenCommands = (thicken: Proposal['thicken'] = new Map()): Command[] =>
	bySize(thicken).map(([gauge, conductors]) => editConductors({ conductors, set: { gauge } }));

/** "6 AWG for C3+ and C3−". */
export const thickenText = (study: Study, thicken: ReadonlyMap<ConductorId, Gauge>): string =>
	listed(
		bySize(thicken).map(([gauge, ids]) => {
			const known = ids.filter((id) => Object.hasOwn(study.diagram.conductors, id));
			return `${gaugeText(gauge)} for ${known.length < ids.length ? 'the conductors with it' : namesOf(study, known)}`;
		})
	);

function bySize(thicken: ReadonlyMap<ConductorId, Gauge>): [Gauge, ConductorId[]][] {
	const sizes = new Map<string, [Gauge, ConductorId[]]>();
	for (const [id, gauge] of thicken) {
		const text = gaugeText(gauge);
		sizes.set(text, [gauge, [...(sizes.get(text)?.[1] ?? []), id]]);
	}
	return [...sizes.values()];
}

/** In the system of the thinnest of them, from the next size above it. */
function sizesAbove({ diagram }: Study, ids: readonly ConductorId[]): Gauge[] {
	const gauges = ids.map((id) => diagram.conductors[id]!.gauge);
	const thinnest = gauges.reduce((a, b) => (compareGauges(b, a) < 0 ? b : a));
	return gaugesOf(thinnest.system).filter((gauge) => compareGauges(gauge, thinnest) > 0);
}

export const namesOf = (study: Study, ids: readonly ConductorId[]): string => listed(ids.map((id) => study.conductorName(id)));

export const conductorsIn = ({ subjects }: Finding): ConductorId[] =>
	subjects.flatMap(({ kind, id }) => (kind === 'conductor' ? [id] : []));
