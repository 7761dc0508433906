/** Findings of all rules: keys told apart, order fixed, waivers put to them. */
import type { Diagram } from '#core/diagram';
import { createMemory, type Memory } from '#core/memory';
import { formOf } from '#core/network';
import type { Rule } from './define.ts';
import type { Finding, Severity, Subject } from './finding.ts';
import { findingsOf } from './findings-of.ts';
import { RULES } from './list.ts';
import type { Study } from './study.ts';
import { withWaivers } from './waivers.ts';

const RANK: Record<Severity, number> = { fatal: 0, error: 1, warning: 2, note: 3 };

/**
 * Findings of all rules: by severity, then in the rules' order, then in the diagram's.
 *
 * @param memory of earlier states: rules are asked again only about what has changed for them
 */
export function runRules(study: Study, rules: readonly Rule[] = RULES, memory: Memory = createMemory()): readonly Finding[] {
	const found = rules.map((rule) => findingsOf(rule, study, memory));
	const { waivers } = study.diagram;
	// Parts and conductors stand in one order as long as the form is the same.
	return memory.keep(rules, [...found, waivers, formOf(study.form)], () =>
		withWaivers(withUniqueKeys(inOrder(found, study.diagram)), waivers)
	);
}

function inOrder(found: readonly (readonly Finding[])[], diagram: Diagram): Finding[] {
	const placeOf = diagramOrder(diagram);
	return found
		.flatMap((findings, rule) =>
			findings.map((finding, index) => ({ finding, rank: RANK[finding.severity], rule, place: placeOf(finding.subjects[0]), index }))
		)
		.sort((a, b) => a.rank - b.rank || a.rule - b.rule || a.place - b.place || a.index - b.index)
		.map(({ finding }) => finding);
}

/** A rule may say two things about one subject; the second key gets "#2". */
function withUniqueKeys(findings: readonly Finding[]): Finding[] {
	const uses = new Map<string, number>();
	return findings.map((finding) => {
		const use = (uses.get(finding.key) ?? 0) + 1;
		uses.set(finding.key, use);
		return use === 1 ? finding : { ...finding, key: `${finding.key}#${use}` };
	});
}

/** Parts in the diagram's order with their studs, then conductors. */
function diagramOrder({ parts, conductors }: Diagram): (subject: Subject | undefined) => number {
	const order = new Map<string, number>();
	for (const id of Object.keys(parts)) order.set(`part:${id}`, order.size);
	for (const id of Object.keys(conductors)) order.set(`conductor:${id}`, order.size);
	return (subject) => {
		if (!subject || subject.kind === 'diagram') return -1;
		const owner = subject.kind === 'stud' ? `part:${subject.id.slice(0, subject.id.indexOf('.'))}` : `${subject.kind}:${subject.id}`;
		return order.get(owner) ?? order.size;
	};
}
