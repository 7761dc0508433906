import { describe, expect } from 'vitest';
import { addPart, editPart, moveParts, removeItems, rotateParts, setParams } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();

describe('add-part', () => {
	testCommand('places a part', small, addPart({ id: 'L1', part: { kind: 'load', at: { x: 10, y: 20 } } }), (after) => {
		expect(after.parts['L1']).toEqual({ kind: 'load', label: '', at: { x: 10, y: 20 }, rotation: 0, params: {}, note: '' });
	});
	testRefusal(
		'refuses an id in use',
		small,
		addPart({ id: 'B1', part: { kind: 'load', at: { x: 0, y: 0 } } }),
		'There is already a part "B1". A new part needs an id of its own.'
	);
});

describe('move-parts', () => {
	testCommand('moves a part, and its block goes along by itself', small, moveParts({ parts: ['B1'], by: { x: 5, y: -5 } }), (after) => {
		expect(after.parts['B1']!.at).toEqual({ x: 5, y: -5 });
		expect(after.parts['F1']!.at).toEqual({ x: 30, y: 0 });
		expect(after.conductors['C1']!.bends).toEqual([{ x: 100, y: -50 }]);
	});
	testCommand('moves a block named beside its host once', small, moveParts({ parts: ['B1', 'F1', 'B1'], by: { x: 5, y: 0 } }), (after) => {
		expect(after.parts['B1']!.at).toEqual({ x: 5, y: 0 });
		expect(after.parts['F1']!.at).toEqual({ x: 30, y: 0 });
	});
	testCommand('takes bends along between parts that move', small, moveParts({ parts: ['B1', 'D1'], by: { x: 1, y: 2 } }), (after) => {
		expect(after.conductors['C1']!.bends).toEqual([{ x: 101, y: -48 }]);
	});
	testRefusal(
		'refuses to move a block off its stud',
		small,
		moveParts({ parts: ['F1'], by: { x: 1, y: 0 } }),
		'F1 sits on a stud of B1 and moves with it. Take it off the stud first.'
	);
	testRefusal(
		'refuses a part that is not there',
		small,
		moveParts({ parts: ['X'], by: { x: 1, y: 0 } }),
		'There is no part "X" in this diagram; it may have been deleted.'
	);
	testRefusal(
		'refuses to leave the drawing',
		small,
		moveParts({ parts: ['D1'], by: { x: 1e6, y: 1 } }),
		'That is beyond the edge of the drawing, which reaches 1000 m each way.'
	);
});

describe('rotate-parts', () => {
	testCommand('turns one part where it stands', small, rotateParts({ parts: ['D1'], quarterTurns: 1 }), (after) => {
		expect(after.parts['D1']).toMatchObject({ at: { x: 400, y: 0 }, rotation: 90 });
	});
	testCommand('turns a group about its middle, bends included', small, rotateParts({ parts: ['B1', 'D1'], quarterTurns: 1 }), (after) => {
		// The middle is (200, 0): a quarter turn clockwise takes left to top, y being downward.
		expect(after.parts['B1']!.at).toEqual({ x: 200, y: -200 });
		expect(after.parts['D1']!.at).toEqual({ x: 200, y: 200 });
		expect(after.conductors['C1']!.bends).toEqual([{ x: 250, y: -100 }]);
	});
	testCommand(
		'turns a block with its host, not once more by itself',
		small,
		rotateParts({ parts: ['B1', 'F1'], quarterTurns: 1 }),
		(after) => {
			expect([after.parts['B1']!.rotation, after.parts['F1']!.rotation]).toEqual([90, 0]);
		}
	);
	testCommand('turns the other way', small, rotateParts({ parts: ['D1'], quarterTurns: -1 }), (after) => {
		expect(after.parts['D1']!.rotation).toBe(270);
	});
	testRefusal(
		'refuses a part that is not there',
		small,
		rotateParts({ parts: ['X'], quarterTurns: 1 }),
		'There is no part "X" in this diagram; it may have been deleted.'
	);
});

describe('remove-items', () => {
	testCommand('deletes a part with all that hangs on it', small, removeItems({ parts: ['P1'] }), (after) => {
		expect(Object.keys(after.parts)).toEqual(['B1', 'F1', 'D1']);
		expect(Object.keys(after.conductors)).toEqual(['C1']);
		expect(after.cases['peak']!.levels).toEqual({});
	});
	testCommand('sets a block down where its host was', small, removeItems({ parts: ['B1'] }), (after) => {
		expect(after.mounts).toEqual({});
		expect(after.parts['F1']!.at).toEqual({ x: 0, y: 0 });
		expect(Object.keys(after.stacks)).toEqual(['D1.L']);
	});
	testCommand('takes a deleted conductor off its stud', small, removeItems({ conductors: ['C1'] }), (after) => {
		expect(Object.keys(after.stacks)).toEqual(['B1.pos']);
		expect(Object.keys(after.conductors)).toEqual(['C2', 'C3']);
	});
	testCommand('takes a deleted block off its host', small, removeItems({ parts: ['F1'] }), (after) => {
		expect(after.mounts).toEqual({});
		expect(after.stacks).toEqual({});
	});
	testRefusal('refuses an empty selection', small, removeItems({}), 'Nothing is selected to delete.');
	testRefusal(
		'refuses a conductor that is not there',
		small,
		removeItems({ conductors: ['C9'] }),
		'There is no conductor "C9" in this diagram; it may have been deleted.'
	);
});

describe('edit-part and set-params', () => {
	testCommand('labels a part', small, editPart({ part: 'P1', set: { label: 'RADIO' } }), (after) => {
		expect(after.parts['P1']).toMatchObject({ label: 'RADIO', note: '' });
	});
	testCommand('notes something of a part', small, editPart({ part: 'P1', set: { note: 'behind the seat', label: undefined } }), (after) => {
		expect(after.parts['P1']).toMatchObject({ label: 'P1', note: 'behind the seat' });
	});
	testCommand('sets several parameters', small, setParams({ parts: ['P1'], params: { watts: 60, ratings: [1, null] } }), (after) => {
		expect(after.parts['P1']!.params).toEqual({ watts: 60, ratings: [1, null] });
	});
	testRefusal(
		'refuses parts of two kinds',
		small,
		setParams({ parts: ['P1', 'B1'], params: { watts: 60 } }),
		'P1 and B1 are different kinds of part. Change them one after the other.'
	);
});
