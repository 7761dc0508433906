import type { Finding, Severity } from '#core/rules';

/** Worst first. */
export const SEVERITIES: readonly Severity[] = ['fatal', 'error', 'warning', 'note'];

export function tally(findings: readonly Finding[]): Record<Severity, number> {
	const counts: Record<Severity, number> = { fatal: 0, error: 0, warning: 0, note: 0 };
	for (const { severity } of findings) counts[severity] += 1;
	return counts;
}
