/** Findings with what was accepted, what was assumed, and what nobody looked at. */
import { countText, subjectText } from '#core/check';
import { isOpen, type Finding } from '#core/rules';
import type { ReportInput } from './input.ts';
import { numberColumn, table, textColumn } from './table.ts';

export function findingTable({ check, diagram }: ReportInput) {
	const { findings } = check;
	const ordered = [...findings.filter(isOpen), ...findings.filter((finding) => !isOpen(finding))];
	return table({
		id: 'findings',
		title: 'Findings and waivers',
		lead: `Checked against ${check.profileName}: ${countText(findings)}. No finding means that none of the checks made found anything; it never means that a system is safe.`,
		columns: [
			numberColumn('number', 'No.', '', { decimals: 0, weight: 0.4 }),
			textColumn('severity', 'Severity', 0.8),
			textColumn('where', 'Where', 1),
			textColumn('what', 'What was found', 4),
			textColumn('remedy', 'To do', 3),
			textColumn('basis', 'Basis', 2.2),
			textColumn('status', 'Status', 1.8)
		],
		rows: ordered.map((finding, index) => ({
			group: isOpen(finding) ? 'Open' : 'Accepted',
			cells: {
				number: index + 1,
				severity: finding.severity,
				where: [...new Set(finding.subjects.map((subject) => subjectText(diagram, subject)))].slice(0, 4).join(', '),
				what: finding.message,
				remedy: finding.remedy,
				basis: finding.unverified ? `${finding.source} (not yet verified)` : finding.source,
				status: statusText(finding)
			}
		})),
		whenEmpty: 'None of the checks made found anything.',
		notes: []
	});
}

function statusText({ waiver, lapse }: Finding): string {
	if (!waiver) return 'open';
	if (lapse !== null) return lapse;
	return `accepted by ${waiver.by || 'someone'}, ${waiver.date}: ${waiver.reason}`;
}

export const notCheckedTable = ({ check }: ReportInput) =>
	list('not-checked', 'Not checked', check.notChecked, 'Everything the rules know of was looked at.');

export const assumptionTable = ({ check }: ReportInput) =>
	list('assumptions', 'Assumed because the diagram does not say', check.assumptions, 'Nothing had to be assumed.');

const list = (id: string, title: string, items: readonly string[], whenEmpty: string) =>
	table({
		id,
		title,
		columns: [numberColumn('number', 'No.', '', { decimals: 0, weight: 0.06 }), textColumn('text', title)],
		rows: items.map((text, index) => ({ cells: { number: index + 1, text } })),
		whenEmpty,
		notes: []
	});
