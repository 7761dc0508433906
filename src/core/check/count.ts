import type { Finding, Severity } from '#core/rules';

const SEVERITIES: readonly { readonly severity: Severity; readonly one: string; readonly many: string }[] = [
	{ severity: 'fatal', one: 'fatal finding', many: 'fatal findings' },
	{ severity: 'error', one: 'error', many: 'errors' },
	{ severity: 'warning', one: 'warning', many: 'warnings' },
	{ severity: 'note', one: 'note', many: 'notes' }
];

/** How many findings there are of each severity. */
export function countFindings(findings: readonly Finding[]): Record<Severity, number> {
	const counts = { fatal: 0, error: 0, warning: 0, note: 0 };
	for (const { severity } of findings) counts[severity] += 1;
	return counts;
}

/** "2 errors, 1 note"; "no findings". */
export function countText(findings: readonly Finding[]): string {
	const counts = countFindings(findings);
	const words = SEVERITIES.filter(({ severity }) => counts[severity] > 0).map(
		({ severity, one, many }) => `${counts[severity]} ${counts[severity] === 1 ? one : many}`
	);
	return words.join(', ') || 'no findings';
}
