/** Reports of rules → findings: sentences made, keys given, order fixed, waivers put to them. */
import type { Diagram } from '#core/diagram';
import type { AnyReport, Rule } from './define.ts';
import type { Finding, Severity, Subject } from './finding.ts';
import { RULES } from './list.ts';
import { numbersOf } from './numbers.ts';
import type { Study } from './study.ts';
import { withWaivers } from './waivers.ts';

const RANK: Record<Severity, number> = { fatal: 0, error: 1, warning: 2, note: 3 };

/** Findings of all rules: by severity, then in the rules' order, then in the diagram's. */
export function runRules(study: Study, rules: readonly Rule[] = RULES): Finding[] {
	const orderOf = diagramOrder(study.diagram);
	const found = rules.flatMap((rule, ruleOrder) =>
		reportsOf(rule, study).map((report, index) => ({ finding: findingOf(rule, report, study), ruleOrder, index }))
	);
	found.sort(
		(a, b) =>
			RANK[a.finding.severity] - RANK[b.finding.severity] ||
			a.ruleOrder - b.ruleOrder ||
			orderOf(a.finding.subjects[0]) - orderOf(b.finding.subjects[0]) ||
			a.index - b.index
	);
	return withWaivers(withUniqueKeys(found.map(({ finding }) => finding)), study.diagram.waivers);
}

const reportsOf = (rule: Rule, study: Study): AnyReport[] => [...rule.check(study)] as AnyReport[];

function findingOf({ meta, messages }: Rule, report: AnyReport, { profile }: Study): Finding {
	const words = messages[report.message](report.data) as { message: string; remedy: string };
	return {
		key: `${meta.id}:${report.at.map(({ id }) => id).join(',')}`,
		rule: meta.id,
		title: meta.title,
		severity: report.severity ?? meta.severity,
		subjects: report.at,
		message: words.message,
		remedy: words.remedy,
		why: meta.why,
		source: report.source ?? meta.source[profile.basedOn] ?? meta.source.default,
		unverified: report.unverified ?? false,
		assumptions: report.assumptions ?? [],
		caseId: report.caseId ?? null,
		numbers: numbersOf(report.data),
		waiver: null,
		waiverLapsed: false,
		lapse: null
	};
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
