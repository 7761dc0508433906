import { describe, expect, test } from 'vitest';
import { addUnderlay, contentOf, editUnderlay, moveFrames, removeItems, type Underlay } from '#core/diagram';
import { smallDiagram } from '../../../support/small-diagram.ts';
import { testCommand, testRefusal } from '../../../support/test-command.ts';

const small = smallDiagram();
const photo: Underlay = {
	label: 'bay.jpg',
	picture: 'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
	widthPx: 800,
	heightPx: 600,
	at: { x: 0, y: 0 },
	mmPerPx: 1,
	opacity: 0.5
};
const laid = { ...small, underlays: { U1: photo } };

describe('add-underlay', () => {
	testCommand('lays a picture below', small, addUnderlay({ id: 'U1', underlay: photo }), (after) =>
		expect(after.underlays).toEqual({ U1: photo })
	);
	testRefusal(
		'stops at four',
		{ ...small, underlays: { U1: photo, U2: photo, U3: photo, U4: photo } },
		addUnderlay({ id: 'U5', underlay: photo }),
		'There are 4 pictures below the drawing already. Delete one that is not needed any more.'
	);
	test.each(['https://example.org/a.png', 'data:image/svg+xml;base64,AAAA', 'data:text/html;base64,AAAA', 'data:image/png;base64,<b>'])(
		'takes nothing but a picture as data: %s',
		(picture) => {
			expect(() => addUnderlay({ id: 'U1', underlay: { ...photo, picture } })).toThrow(/no PNG, JPEG or WebP/);
		}
	);
});

describe('edit-underlay', () => {
	testCommand('sets its scale', laid, editUnderlay({ underlay: 'U1', set: { mmPerPx: 0.42 } }), (after) =>
		expect(after.underlays['U1']!.mmPerPx).toBe(0.42)
	);
});

describe('move-frames and remove-items', () => {
	testCommand('move it and take it away', laid, moveFrames({ underlays: ['U1'], by: { x: 3, y: 4 } }), (after) =>
		expect(after.underlays['U1']!.at).toEqual({ x: 3, y: 4 })
	);
	testCommand('delete it', laid, removeItems({ underlays: ['U1'] }), (after) => expect(after.underlays).toEqual({}));
});

test('a picture is no part of what is issued', () => {
	expect(contentOf(laid)).not.toHaveProperty('underlays');
});
