import { expect, test } from 'vitest';
import { change, contentOf, editPart, issueRevision, moveParts, setParams, type Command, type Diagram } from '#core/diagram';
import { changeSheet, changeSheetInput, reportInput, sectionsOf, type Table } from '#core/reports';
import { circuit } from '../../support/circuit.ts';

const drawn = circuit(
	{
		b: ['battery', { capacityAh: 100 }, { label: 'B1' }],
		f: ['inline-fuse', { fuseA: 100 }, { label: 'F3' }],
		l: ['load', { draw: 5 }, { label: 'L1' }]
	},
	[
		['b.pos', 'f.in', { label: 'W1', gauge: '6', lengthM: 0.2 }],
		['f.out', 'l.pos', { label: 'W2', gauge: '14', lengthM: 1 }],
		['l.neg', 'b.neg', { label: 'W3', gauge: '14', lengthM: 1 }]
	]
);
const after = (diagram: Diagram, ...commands: Command[]): Diagram =>
	commands.reduce((current, command) => {
		expect(command.refuse(current)).toBeNull();
		return change(current, command).diagram;
	}, diagram);
const issue = (letter: string, why: string) => issueRevision({ id: `r${letter}`, letter, date: '2026-03-01', by: 'A. Author', why });
const rows = ({ rows }: Table) => rows.map(({ cells }) => Object.values(cells));
const smaller = setParams({ parts: ['f'], params: { fuseA: 15 } });

test('a change sheet tells sorts apart, with findings, figures and what to test again', () => {
	const now = after(drawn, smaller, moveParts({ parts: ['l'], by: { x: 50, y: 0 } }), editPart({ part: 'b', set: { note: 'strapped' } }));
	const { title, tables } = changeSheet(changeSheetInput(contentOf(drawn), contentOf(now), 'revision A', 'revision B'));
	expect(title).toBe('Change sheet, revision A to revision B');
	const byId = Object.fromEntries(tables.map((table) => [table.id, rows(table)]));
	expect(byId['changes-electrical']).toEqual([['changed', 'F3', '100 A to 15 A']]);
	expect(byId['changes-words']).toEqual([['changed', 'B1', 'note: strapped']]);
	expect(byId['changes-moved']).toContainEqual(['changed', 'L1', 'moved on the drawing']);
	// 14 AWG behind 100 A is gone: a finding less, and the let-through follows the fuse.
	expect(byId['changes-findings']!.some(([how, , text]) => how === 'gone' && /100 A/.test(String(text)))).toBe(true);
	expect(byId['changes-figures']).toContainEqual(['W2', 'let-through current', '100 A', '15 A']);
});

test('the packet lists what was issued, what changed each time, and what has changed since', () => {
	const issued = after(drawn, issue('A', 'First issue.'), smaller, issue('B', 'A smaller fuse.'));
	const tableOf = (diagram: Diagram) => rows(sectionsOf(reportInput(diagram), ['revisions'])[0]!.tables[0]!);
	expect(tableOf(issued).map(([letter, date, by, , text]) => [letter, date, by, text])).toEqual([
		['A', '2026-03-01', 'A. Author', 'First issue.'],
		['B', '2026-03-01', 'A. Author', 'A smaller fuse.\n1 electrical change: F3 100 A to 15 A.']
	]);
	const later = after(issued, setParams({ parts: ['f'], params: { fuseA: 20 } }));
	expect(tableOf(later).at(-1)!.slice(0, 5)).toEqual(['not issued', '', '', '', 'Since B: 1 electrical change: F3 15 A to 20 A.']);
	expect(tableOf(drawn)).toEqual([]);
});
