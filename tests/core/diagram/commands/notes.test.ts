import { describe, expect } from 'vitest';
import { addNote, editNote, moveFrames, removeItems, type Note } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const note: Note = { text: 'Grommet here', at: { x: 10, y: 20 }, widthMm: 120, to: { kind: 'conductor', id: 'C1' } };
const noted = { ...small, notes: { N1: note } };

describe('add-note', () => {
	testCommand('writes words with a leader', small, addNote({ id: 'N1', note }), (after) => expect(after.notes).toEqual({ N1: note }));
	testRefusal(
		'refuses a leader to nothing',
		small,
		addNote({ id: 'N1', note: { ...note, to: { kind: 'part', id: 'X9' } } }),
		'There is no part "X9" in this diagram; it may have been deleted.'
	);
	testRefusal(
		'refuses an id in use',
		noted,
		addNote({ id: 'N1', note }),
		'There is already a note "N1". A new note needs an id of its own.'
	);
});

describe('edit-note', () => {
	testCommand('sets words and takes the leader away', noted, editNote({ note: 'N1', set: { text: 'Seal', to: null } }), (after) =>
		expect(after.notes['N1']).toEqual({ ...note, text: 'Seal', to: null })
	);
});

describe('what a note points at', () => {
	testCommand('is let go when the conductor is deleted', noted, removeItems({ conductors: ['C1'] }), (after) =>
		expect(after.notes['N1']!.to).toBeNull()
	);
	testCommand('is let go when a part takes the conductor with it', noted, removeItems({ parts: ['D1'] }), (after) =>
		expect(after.notes['N1']!.to).toBeNull()
	);
});

describe('move-frames', () => {
	testCommand('moves a note', noted, moveFrames({ notes: ['N1'], by: { x: 5, y: -5 } }), (after) =>
		expect(after.notes['N1']!.at).toEqual({ x: 15, y: 15 })
	);
});
