import { describe, expect } from 'vitest';
import { addArea, editArea, moveFrames, placeArea, removeItems } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const bay = { label: 'Battery bay', at: { x: -100, y: -100 }, widthMm: 300, heightMm: 200, spaces: [], ambientC: 45 };
const drawn = { ...small, areas: { A1: bay } };

describe('add-area', () => {
	testCommand('draws a named place', small, addArea({ id: 'A1', area: bay }), (after) => expect(after.areas).toEqual({ A1: bay }));
	testRefusal(
		'refuses an id in use',
		drawn,
		addArea({ id: 'A1', area: bay }),
		'There is already an area "A1". A new area needs an id of its own.'
	);
});

describe('edit-area', () => {
	testCommand('says what it is like there', drawn, editArea({ area: 'A1', set: { spaces: ['engine'], ambientC: null } }), (after) =>
		expect(after.areas['A1']).toEqual({ ...bay, spaces: ['engine'], ambientC: null })
	);
	testRefusal(
		'refuses an area that is gone',
		small,
		editArea({ area: 'A1', set: { label: 'x' } }),
		'There is no such area in this diagram; it may have been deleted.'
	);
});

describe('place-area', () => {
	testCommand('sets its edges', drawn, placeArea({ area: 'A1', at: { x: 0, y: 5 }, widthMm: 50, heightMm: 60 }), (after) =>
		expect(after.areas['A1']).toEqual({ ...bay, at: { x: 0, y: 5 }, widthMm: 50, heightMm: 60 })
	);
	testRefusal(
		'leaves a locked one as it is',
		{ ...drawn, areas: { A1: { ...bay, locked: true } } },
		placeArea({ area: 'A1', at: { x: 0, y: 5 }, widthMm: 50, heightMm: 60 }),
		'Battery bay is locked. Unlock it first.'
	);
});

describe('move-frames', () => {
	testCommand('moves an area and leaves what lies in it', drawn, moveFrames({ areas: ['A1', 'A1'], by: { x: 10, y: 0 } }), (after) => {
		expect(after.areas['A1']!.at).toEqual({ x: -90, y: -100 });
		expect(after.parts).toEqual(small.parts);
	});
	testRefusal('says that nothing is selected', drawn, moveFrames({ by: { x: 1, y: 0 } }), 'Nothing is selected to move.');
	testRefusal(
		'leaves a locked one where it is',
		{ ...drawn, areas: { A1: { ...bay, locked: true } } },
		moveFrames({ areas: ['A1'], by: { x: 10, y: 0 } }),
		'Battery bay is locked. Unlock it first.'
	);
	testRefusal(
		'refuses to leave the drawing',
		drawn,
		moveFrames({ areas: ['A1'], by: { x: 0, y: -999_999 } }),
		'That is beyond the edge of the drawing, which reaches 1000 m each way.'
	);
});

describe('remove-items', () => {
	testCommand('deletes an area and nothing in it', drawn, removeItems({ areas: ['A1'] }), (after) => {
		expect(after.areas).toEqual({});
		expect(after.parts).toEqual(small.parts);
	});
});
