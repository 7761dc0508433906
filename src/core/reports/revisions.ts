import { contentOf, revisionsInOrder, type Content } from '#core/diagram';
import { compareContents, conductorText, retestOf, studText, type DrawingChange } from '#core/revisions';
import type { ReportInput } from './input.ts';
import { table, textColumn } from './table.ts';

/** Changes told in the table; the change sheet has all of them. */
const TOLD = 6;

/** What was issued, each with what changed since the one before; then what has changed since the last, and an index typed by hand. */
export function revisionTable({ diagram }: ReportInput) {
	const { titleBlock } = diagram;
	const issued = revisionsInOrder(diagram);
	const rows = issued.map(({ letter, date, by, why, content }, index) => {
		const before = issued[index - 1]?.content;
		return row(
			letter,
			date,
			by,
			content.titleBlock.approvalPerson,
			[why, ...(before ? [changeText(before, content)] : [])],
			before,
			content
		);
	});
	const last = issued.at(-1);
	if (last) {
		const present = contentOf(diagram);
		if (compareContents(last.content, present).length > 0)
			rows.push(row('not issued', '', '', '', [`Since ${last.letter}: ${changeText(last.content, present)}`], last.content, present));
	} else if ([titleBlock.revisionIndex, titleBlock.dateOfIssue].some((text) => text.trim() !== ''))
		rows.push(
			row(titleBlock.revisionIndex, titleBlock.dateOfIssue, titleBlock.creator, titleBlock.approvalPerson, [
				'As drawn in this packet; earlier revisions are not kept in the diagram.'
			])
		);
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
		rows,
		whenEmpty: 'No revision has been issued: this is a draft.',
		notes: []
	});
}

function row(revision: string, date: string, by: string, approved: string, change: readonly string[], before?: Content, after?: Content) {
	const retest = before && after ? retestText(after, compareContents(before, after)) : '';
	return { cells: { revision, date, by, approved, change: change.join('\n'), retest } };
}

/** "2 electrical changes: F3 100 A to 80 A; W2 4 AWG to 2 AWG. 5 moved on the drawing." */
export function changeText(before: Content, after: Content): string {
	const changes = compareContents(before, after);
	const of = (sort: DrawingChange['sort']) => changes.filter((change) => change.sort === sort);
	const [electrical, words, moved] = [of('electrical'), of('words'), of('moved')];
	const told = electrical.slice(0, TOLD).map(({ name, text }) => `${name} ${text}`);
	const more = electrical.length > TOLD ? `; and ${electrical.length - TOLD} more, see the change sheet` : '';
	const count = electrical.length === 1 ? '1 electrical change' : `${electrical.length} electrical changes`;
	return [
		electrical.length === 0 ? 'No electrical change.' : `${count}: ${told.join('; ')}${more}.`,
		...(words.length > 0 ? [`${words.length} of words.`] : []),
		...(moved.length > 0 ? [`${moved.length} moved on the drawing.`] : [])
	].join(' ');
}

function retestText(after: Content, changes: readonly DrawingChange[]): string {
	const { studs, conductors } = retestOf(changes);
	return [...studs.map((key) => studText(after, key)), ...conductors.map((id) => conductorText(after, id))].join(', ');
}
