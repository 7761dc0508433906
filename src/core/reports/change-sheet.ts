/** The change sheet: what differs between two issues, what that does to the checks, and what has to be tested again. */
import type { Content } from '#core/diagram';
import { compareContents, conductorText, consequencesOf, studText, type Consequences, type DrawingChange } from '#core/revisions';
import { ampsText, voltsText } from '#core/units';
import type { Section } from './section.ts';
import { handColumn, table, textColumn, type Table } from './table.ts';

export interface ChangeSheetInput {
	readonly before: Content;
	readonly after: Content;
	/** "revision A", "the present drawing". */
	readonly beforeName: string;
	readonly afterName: string;
	readonly changes: readonly DrawingChange[];
	readonly consequences: Consequences;
}

/** All that a sheet is made of; checks both states, so it takes its time on large drawings. */
export function changeSheetInput(before: Content, after: Content, beforeName: string, afterName: string): ChangeSheetInput {
	const changes = compareContents(before, after);
	return { before, after, beforeName, afterName, changes, consequences: consequencesOf(before, after, changes) };
}

export const changeSheet = (input: ChangeSheetInput): Section => ({
	id: 'revisions',
	title: `Change sheet, ${input.beforeName} to ${input.afterName}`,
	purpose: 'What changed, what it does, and what to test again.',
	orientation: 'portrait',
	layout: 'tables',
	tables: [
		changeTable(input, 'electrical', 'Changes to what is built', 'Nothing that is built, set or checked was changed.'),
		findingChanges(input),
		movedFigures(input),
		retestTable(input),
		changeTable(input, 'words', 'Changes of words only', 'No words were changed.'),
		changeTable(input, 'moved', 'Moved on the drawing only', 'Nothing was only moved.')
	]
});

const HOW = { added: 'added', removed: 'removed', changed: 'changed' } as const;

const changeTable = ({ changes }: ChangeSheetInput, sort: DrawingChange['sort'], title: string, whenEmpty: string): Table =>
	table({
		id: `changes-${sort}`,
		title,
		columns: [textColumn('how', '', 0.5), textColumn('what', 'What', 1), textColumn('change', 'Change', 3)],
		rows: changes
			.filter((change) => change.sort === sort)
			.map(({ how, name, text }) => ({ cells: { how: HOW[how], what: name, change: text } })),
		whenEmpty,
		notes: []
	});

const findingChanges = ({ consequences: { appeared, gone } }: ChangeSheetInput): Table =>
	table({
		id: 'changes-findings',
		title: 'Findings',
		columns: [textColumn('how', '', 0.5), textColumn('severity', 'Severity', 0.5), textColumn('finding', 'Finding', 4)],
		rows: [
			...appeared.map(({ severity, message }) => ({ cells: { how: 'new', severity, finding: message } })),
			...gone.map(({ severity, message }) => ({ cells: { how: 'gone', severity, finding: message } }))
		],
		whenEmpty: 'The changes bring no finding and take none away.',
		notes: []
	});

export const FIGURE_NAMES = {
	continuousA: 'continuous current',
	dropV: 'volts lost',
	letThroughA: 'let-through current',
	faultA: 'short-circuit current'
} as const;

export const figureText = (figure: keyof typeof FIGURE_NAMES, value: number): string =>
	figure === 'dropV' ? voltsText(value) : ampsText(value);

const movedFigures = ({ after, consequences: { moved } }: ChangeSheetInput): Table =>
	table({
		id: 'changes-figures',
		title: 'Figures that moved by more than 5 %',
		columns: [
			textColumn('conductor', 'Conductor', 1.4),
			textColumn('figure', 'Figure'),
			textColumn('before', 'Before'),
			textColumn('after', 'After')
		],
		rows: moved.map(({ conductor, figure, before: was, after: is }) => ({
			cells: {
				conductor: conductorText(after, conductor),
				figure: FIGURE_NAMES[figure],
				before: figureText(figure, was),
				after: figureText(figure, is)
			}
		})),
		whenEmpty: 'No figure of a conductor moved by more than 5 %.',
		notes: []
	});

const retestTable = (input: ChangeSheetInput): Table =>
	table({
		id: 'changes-retest',
		title: 'To be tested again',
		columns: [textColumn('what', 'What', 1.4), textColumn('test', 'Test', 3), handColumn('done', 'Done, by')],
		rows: [
			...input.consequences.retest.studs.map((key) => ({
				cells: {
					what: studText(input.after, key),
					test: 'Tighten to its torque, mark it, measure the volts lost across it under load.',
					done: null
				}
			})),
			...input.consequences.retest.conductors.map((id) => ({
				cells: {
					what: conductorText(input.after, id),
					test: 'Pull its lugs, check polarity and continuity, measure the volts lost under load.',
					done: null
				}
			}))
		],
		whenEmpty: 'No stud or conductor needs another test.',
		notes: ['Common practice, no source.']
	});
