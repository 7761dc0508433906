/** Findings of a state of the diagram, worked out once. */
import { change, type Command, type Diagram } from '#core/diagram';
import { buildStudy, holdBack, isOpen, runRules, RULES, type Finding, type Study } from '#core/rules';
import type { Difference } from './types.ts';

const studies = new WeakMap<Diagram, Study>();
const found = new WeakMap<Diagram, readonly Finding[]>();

export function studyOf(diagram: Diagram): Study {
	let study = studies.get(diagram);
	if (!study) studies.set(diagram, (study = buildStudy(diagram)));
	return study;
}

/** Of all rules, in the order of a check. */
export function findingsOf(diagram: Diagram): readonly Finding[] {
	let findings = found.get(diagram);
	if (!findings) found.set(diagram, (findings = holdBack(studyOf(diagram), runRules(studyOf(diagram))).findings));
	return findings;
}

/** Of one rule alone. */
export const findingsOfRule = (diagram: Diagram, rule: string): readonly Finding[] =>
	found.get(diagram)?.filter((finding) => finding.rule === rule) ??
	runRules(
		studyOf(diagram),
		RULES.filter(({ meta }) => meta.id === rule)
	);

/** The diagram after these commands; null when one of them is refused. */
export function applied(diagram: Diagram, commands: readonly Command[]): Diagram | null {
	let current = diagram;
	for (const command of commands) {
		if (command.refuse(current) !== null) return null;
		current = change(current, command).diagram;
	}
	return current;
}

const RANK = { fatal: 3, error: 2, warning: 1, note: 0 };

/** "whole": fewer findings about the same thing than before; "part": as many, but less severe; null: neither. */
export type Mend = 'whole' | 'part' | null;

export function mend(before: readonly Finding[], after: readonly Finding[], { rule, subjects }: Finding): Mend {
	const places = new Set(subjects.map(({ kind, id }) => `${kind} ${id}`));
	const alike = (findings: readonly Finding[]) =>
		findings.filter((finding) => finding.rule === rule && finding.subjects.some(({ kind, id }) => places.has(`${kind} ${id}`)));
	const worst = (findings: readonly Finding[]) => Math.max(-1, ...findings.map(({ severity }) => RANK[severity]));
	const [was, is] = [alike(before), alike(after)];
	if (is.length < was.length) return 'whole';
	return is.length === was.length && worst(is) < worst(was) ? 'part' : null;
}

export function difference(before: readonly Finding[], after: readonly Finding[]): Difference {
	const worse = (findings: readonly Finding[], than: readonly Finding[]) => {
		const rank = new Map(than.map(({ key, severity }) => [key, RANK[severity]]));
		return findings.filter(({ key, severity }) => RANK[severity] > (rank.get(key) ?? -1));
	};
	return {
		cleared: worse(before, after),
		added: worse(after, before),
		changed: changed(before, after),
		errorsBefore: countErrors(before),
		errorsAfter: countErrors(after),
		warningsBefore: countOpen(before, 'warning'),
		warningsAfter: countOpen(after, 'warning')
	};
}

function changed(before: readonly Finding[], after: readonly Finding[]): Finding[] {
	const was = new Map(before.map((finding) => [finding.key, finding]));
	return after.filter(({ key, severity, message }) => was.get(key)?.severity === severity && was.get(key)!.message !== message);
}

const countOpen = (findings: readonly Finding[], severity: Finding['severity']): number =>
	findings.filter((finding) => finding.severity === severity && isOpen(finding)).length;

const countErrors = (findings: readonly Finding[]): number => countOpen(findings, 'fatal') + countOpen(findings, 'error');
