import { describe, expect, test } from 'vitest';
import {
	change,
	contentOf,
	editTitleBlock,
	issueRevision,
	nextLetter,
	parseDiagram,
	revisionsInOrder,
	serializeDiagram
} from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const first = { id: 'r1', letter: 'A', date: '2024-05-01', by: 'A. Nwosu', why: 'First issue' };
const issued = change(small, issueRevision(first)).diagram;

describe('a revision', () => {
	testCommand('is kept whole, and the title block names it', small, issueRevision(first), (after) => {
		expect(after.titleBlock).toMatchObject({ revisionIndex: 'A', dateOfIssue: '2024-05-01' });
		expect(after.revisions['r1']).toMatchObject({ letter: 'A', order: 1, by: 'A. Nwosu', why: 'First issue' });
		expect(after.revisions['r1']!.content).toEqual(contentOf(after));
	});
	testCommand('stays as it was when the drawing goes on', issued, editTitleBlock({ set: { title: 'Later' } }), (after) => {
		expect(after.revisions['r1']!.content.titleBlock.title).toBe(small.titleBlock.title);
	});
	testCommand('follows the one before and does not hold it', issued, issueRevision({ ...first, id: 'r2', letter: 'B' }), (after) => {
		expect(revisionsInOrder(after).map(({ letter }) => letter)).toEqual(['A', 'B']);
		expect(after.revisions['r2']!.content).not.toHaveProperty('revisions');
	});
	testRefusal('is issued once', issued, issueRevision({ ...first, id: 'r2' }), 'Revision A has been issued already; take the next letter.');
	testRefusal('needs a name', small, issueRevision({ ...first, by: ' ' }), 'Give the name of whoever issues it.');
	testRefusal(
		'needs a reason',
		small,
		issueRevision({ ...first, why: '' }),
		'Say what changed and why: whoever holds the old sheet needs it.'
	);

	test('is read back from a file', () => {
		const parsed = parseDiagram(serializeDiagram(issued));
		expect(parsed.ok && parsed.diagram).toEqual(issued);
	});
});

// ASME Y14.35: A, B … Z without the letters that look like figures, then AA, AB …
test('the next letter', () => {
	const after = (letter: string): string => nextLetter({ revisions: { r: { ...issued.revisions['r1']!, letter } } });
	expect(nextLetter({ revisions: {} })).toBe('A');
	expect(['A', 'H', 'N', 'Z', 'AZ'].map(after)).toEqual(['B', 'J', 'P', 'AA', 'BA']);
	// One that is numbered begins its letters anew.
	expect(after('3')).toBe('A');
});
