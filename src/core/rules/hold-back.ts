/**
 * A fatal fault in the topology makes every current of its island meaningless. What depends on currents is then
 * held back, so that the one thing to do first is not buried.
 */
import { unionFind } from '#core/network';
import type { Finding, Subject } from './finding.ts';
import { RULES } from './list.ts';
import type { Study } from './study.ts';

export interface HeldBack {
	readonly findings: readonly Finding[];
	/** Findings not shown because of a fatal one. */
	readonly heldBack: number;
}

const GROUPS = new Map(RULES.map(({ meta }) => [meta.id, meta.group]));

export function holdBack(study: Study, findings: readonly Finding[]): HeldBack {
	const fatal = findings.filter(({ severity, rule }) => severity === 'fatal' && GROUPS.get(rule) === 'topology');
	if (fatal.length === 0) return { findings, heldBack: 0 };

	const islandsOf = islandFinder(study);
	const frozen = new Set(fatal.flatMap(({ subjects }) => subjects.flatMap(islandsOf)));
	const kept = findings.filter((finding) => {
		if (finding.severity === 'fatal' || !dependsOnCurrents(finding)) return true;
		const islands = finding.subjects.flatMap(islandsOf);
		return islands.length === 0 || !islands.every((island) => frozen.has(island));
	});
	return { findings: kept, heldBack: findings.length - kept.length };
}

function dependsOnCurrents({ rule, caseId }: Finding): boolean {
	const group = GROUPS.get(rule);
	return caseId !== null || group === 'protection' || group === 'conductors';
}

/** Islands a subject touches: nodes joined by anything at all share one. */
function islandFinder({ network, part, diagram }: Study): (subject: Subject) => number[] {
	const joined = unionFind(network.nodeCount);
	for (const { a, b } of network.branches) joined.union(a, b);
	for (const { positive, negative } of [...network.batteries, ...network.sources, ...network.loads]) joined.union(positive, negative);

	const ofStud = (key: string): number[] => {
		const node = network.nodeOf.get(key);
		return node === undefined ? [] : [joined.find(node)];
	};
	return ({ kind, id }) => {
		if (kind === 'stud') return ofStud(id);
		if (kind === 'part')
			return Object.hasOwn(diagram.parts, id) ? part(id).terminals.flatMap((terminal) => ofStud(`${id}.${terminal.id}`)) : [];
		const ends = kind === 'conductor' ? network.nodeOfEnd.get(id) : undefined;
		return ends ? [joined.find(ends.from), joined.find(ends.to)] : [];
	};
}
