import { isOpen, type Finding, type Severity } from '#core/rules';

type Counted = Pick<Finding, 'severity' | 'waiver' | 'waiverLapsed'>;

const SEVERITIES: readonly { readonly severity: Severity; readonly one: string; readonly many: string }[] = [
	{ severity: 'fatal', one: 'fatal finding', many: 'fatal findings' },
	{ severity: 'error', one: 'error', many: 'errors' },
	{ severity: 'warning', one: 'warning', many: 'warnings' },
	{ severity: 'note', one: 'note', many: 'notes' }
];

/** How many open findings there are of each severity; accepted ones are not counted. */
export function countFindings(findings: readonly Counted[]): Record<Severity, number> {
	const counts = { fatal: 0, error: 0, warning: 0, note: 0 };
	for (const finding of findings) if (isOpen(finding)) counts[finding.severity] += 1;
	return counts;
}

/** How many are accepted and stay so. */
export const countAccepted = (findings: readonly Counted[]): number => findings.filter((finding) => !isOpen(finding)).length;

/** "2 errors, 1 note, 1 accepted"; "no findings". */
export function countText(findings: readonly Counted[]): string {
	const counts = countFindings(findings);
	const words = SEVERITIES.filter(({ severity }) => counts[severity] > 0).map(
		({ severity, one, many }) => `${counts[severity]} ${counts[severity] === 1 ? one : many}`
	);
	const accepted = countAccepted(findings);
	return [...words, ...(accepted > 0 ? [`${accepted} accepted`] : [])].join(', ') || 'no findings';
}
