/** What a check says about one file, as text for people and as data for programs. */
import { countAccepted, countFindings, countText, subjectText, type CheckResult } from '#core/check';
import type { Diagram, Problem } from '#core/diagram';
import { isOpen, type Finding } from '#core/rules';

export type FileReport =
	| {
			readonly file: string;
			readonly readable: true;
			readonly diagram: Diagram;
			readonly notes: readonly string[];
			readonly result: CheckResult;
	  }
	| { readonly file: string; readonly readable: false; readonly problems: readonly Problem[] };

export function reportText(report: FileReport): string {
	if (!report.readable)
		return [report.file, ...report.problems.map(({ what, why, remedy }) => `  Not read: ${what} ${why} ${remedy}`)].join('\n');

	const { file, diagram, notes, result } = report;
	return [
		diagram.titleBlock.title.trim() ? `${file}: ${diagram.titleBlock.title.trim()}` : file,
		...notes.map((note) => `  Mended while reading: ${note}`),
		...result.findings.filter(isOpen).flatMap((finding) => ['', findingText(diagram, finding)]),
		...acceptedText(diagram, result.findings),
		'',
		`  Checked against profile "${result.profileName}": ${countText(result.findings)}.`,
		...listText('Assumed', result.assumptions),
		...listText('Not checked', result.notChecked)
	].join('\n');
}

function acceptedText(diagram: Diagram, findings: readonly Finding[]): string[] {
	const accepted = findings.filter((finding) => !isOpen(finding));
	return accepted.length === 0 ? [] : ['', '  Accepted:', ...accepted.flatMap((finding) => ['', findingText(diagram, finding)])];
}

function findingText(
	diagram: Diagram,
	{ severity, rule, subjects, message, remedy, source, unverified, caseId, waiver, lapse }: Finding
): string {
	const place = subjects.map((subject) => subjectText(diagram, subject)).join(', ');
	const operatingCase = caseId === null ? undefined : diagram.cases[caseId];
	return [
		`  ${severity.toUpperCase()} at ${place} (${rule})`,
		`    ${message}`,
		`    To do: ${remedy}`,
		...(operatingCase ? [`    Worst in case: ${operatingCase.label.trim() || caseId}`] : []),
		...(lapse !== null ? [`    ${lapse}`] : waiver ? [`    Accepted by ${waiver.by} on ${waiver.date}: ${waiver.reason}`] : []),
		`    Source: ${source}${unverified ? ' (unverified: a number behind this was not seen in a source)' : ''}`
	].join('\n');
}

const listText = (heading: string, lines: readonly string[]): string[] =>
	lines.length === 0 ? [] : [`  ${heading}:`, ...lines.map((line) => `    - ${line}`)];

export function reportData(report: FileReport): unknown {
	if (!report.readable) return { file: report.file, readable: false, problems: report.problems };
	const { file, diagram, notes, result } = report;
	return {
		file,
		readable: true,
		title: diagram.titleBlock.title,
		profile: { id: diagram.profile, name: result.profileName },
		notes,
		counts: { ...countFindings(result.findings), accepted: countAccepted(result.findings) },
		findings: result.findings.map((finding) => ({ ...finding, places: finding.subjects.map((subject) => subjectText(diagram, subject)) })),
		assumptions: result.assumptions,
		notChecked: result.notChecked
	};
}

/** 0 none open at error level, 1 some, 2 where a file could not be read. */
export function exitCode(reports: readonly FileReport[]): 0 | 1 | 2 {
	if (reports.some(({ readable }) => !readable)) return 2;
	return reports.some((report) => report.readable && hasErrors(report.result)) ? 1 : 0;
}

function hasErrors({ findings }: CheckResult): boolean {
	const { fatal, error } = countFindings(findings);
	return fatal + error > 0;
}
