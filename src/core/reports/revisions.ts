import type { ReportInput } from './input.ts';
import { table, textColumn } from './table.ts';

/** The revision this packet was made from; issued revisions come with it once a diagram keeps them. */
export function revisionTable({ diagram: { titleBlock } }: ReportInput) {
	const { revisionIndex, dateOfIssue, creator, approvalPerson } = titleBlock;
	const isIssued = [revisionIndex, dateOfIssue].some((text) => text.trim() !== '');
	return table({
		id: 'revisions',
		title: 'Revisions',
		columns: [
			textColumn('revision', 'Revision', 0.7),
			textColumn('date', 'Date', 0.9),
			textColumn('by', 'By', 1.1),
			textColumn('approved', 'Approved by', 1.1),
			textColumn('change', 'What changed', 3),
			textColumn('retest', 'To be tested again', 2)
		],
		rows: isIssued
			? [
					{
						cells: {
							revision: revisionIndex,
							date: dateOfIssue,
							by: creator,
							approved: approvalPerson,
							change: 'As drawn in this packet; earlier revisions are not kept in the diagram.',
							retest: ''
						}
					}
				]
			: [],
		whenEmpty: 'No revision has been issued: this is a draft.',
		notes: []
	});
}
