import { describe, expect, test } from 'vitest';
import { editConductors } from '#core/diagram';
import {
	allLocked,
	deleteSelection,
	drawArea,
	group,
	layPicture,
	nudge,
	repeatLast,
	reroute,
	scalePicture,
	selectAll,
	toggleLock,
	turn,
	ungroup,
	writeNote
} from '#editor';
import { newEditor } from './support.ts';

const BOX = { minX: -100, minY: -100, maxX: 100, maxY: 100 };
const PNG = 'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

describe('areas, notes and pictures', () => {
	test('an area is drawn like the tool in hand, selected, and the tool put away', () => {
		const { editor } = newEditor();
		editor.setTool({ kind: 'area', like: { label: 'Bay', spaces: ['engine'], ambientC: null } });
		drawArea(editor, BOX);
		expect(editor.diagram.areas['A1']).toMatchObject({ label: 'Bay', spaces: ['engine'], at: { x: -100, y: -100 }, widthMm: 200 });
		expect([...editor.selection]).toEqual(['area:A1']);
		expect(editor.tool.kind).toBe('select');
		editor.undo();
		expect(editor.diagram.areas).toEqual({});
	});

	test('move by arrows with the parts beside them, as one step', () => {
		const { editor } = newEditor();
		drawArea(editor, BOX);
		writeNote(editor, { x: 0, y: 0 }, { kind: 'part', id: 'B1' }, 'Seal');
		selectAll(editor);
		nudge(editor, { x: 1, y: 0 });
		expect([editor.diagram.areas['A1']!.at.x, editor.diagram.notes['N1']!.at.x, editor.diagram.parts['B1']!.at.x]).toEqual([-95, 5, 5]);
		editor.undo();
		expect([editor.diagram.areas['A1']!.at.x, editor.diagram.notes['N1']!.at.x, editor.diagram.parts['B1']!.at.x]).toEqual([-100, 0, 0]);
	});

	test('two points and a distance set a picture’s scale, the first point stays', () => {
		const { editor } = newEditor();
		layPicture(editor, { label: 'bay', picture: PNG, widthPx: 400, heightPx: 200 }, { x: 0, y: 0 }, 400);
		expect(editor.diagram.underlays['U1']).toMatchObject({ mmPerPx: 1, at: { x: -200, y: -100 } });
		scalePicture(editor, 'U1', { x: -100, y: 0 }, { x: 100, y: 0 }, 600);
		const { mmPerPx, at } = editor.diagram.underlays['U1']!;
		expect(mmPerPx).toBeCloseTo(3, 9);
		// The pixel under the first point, 100 to the right of the corner, is still under it.
		expect(at.x + 100 * mmPerPx).toBeCloseTo(-100, 9);
		scalePicture(editor, 'U1', { x: 5, y: 5 }, { x: 5, y: 5 }, 600);
		expect(editor.message.kind).toBe('refused');
	});
});

describe('groups and locks', () => {
	test('group and take apart', () => {
		const { editor } = newEditor();
		editor.select(['part:B1']);
		group(editor);
		expect(editor.message).toMatchObject({ kind: 'refused', text: 'Select two or more parts, areas or notes to group.' });
		editor.select(['part:B1', 'part:E1']);
		group(editor);
		expect(editor.diagram.parts['E1']!.group).toBe('G1');
		editor.select(['part:E1']);
		ungroup(editor);
		expect(editor.diagram.parts['B1']).not.toHaveProperty('group');
		ungroup(editor);
		expect(editor.message.text).toBe('Nothing of a group is selected.');
	});

	test('what is locked is neither moved nor deleted, and is unlocked by the same key', () => {
		const { editor } = newEditor();
		editor.select(['part:E1']);
		toggleLock(editor);
		expect(allLocked(editor)).toBe(true);
		nudge(editor, { x: 1, y: 0 });
		expect(editor.message).toMatchObject({ kind: 'refused', text: 'E1 is locked. Unlock it first.' });
		deleteSelection(editor);
		expect(editor.message.kind).toBe('refused');
		expect(editor.diagram.parts['E1']).toBeDefined();
		toggleLock(editor);
		deleteSelection(editor);
		expect(editor.diagram.parts['E1']).toBeUndefined();
	});
});

describe('repeat', () => {
	test('the last command on what is selected now', () => {
		const { editor } = newEditor();
		repeatLast(editor);
		expect(editor.message.text).toBe('Nothing was done yet that could be repeated.');
		editor.select(['part:B1']);
		turn(editor);
		editor.select(['part:E1']);
		repeatLast(editor);
		expect(editor.diagram.parts['E1']!.rotation).toBe(90);
		editor.run(editConductors({ conductors: ['W1'], set: { lengthM: 2 } }));
		editor.select([]);
		repeatLast(editor);
		expect(editor.message.kind).toBe('refused');
	});

	test('after a part, another of the kind; after a conductor, another one', () => {
		const { editor } = newEditor();
		editor.placePart('load', { x: 0, y: 600 });
		repeatLast(editor);
		expect(editor.tool).toMatchObject({ kind: 'place', partKind: 'load' });
		editor.connect({ part: 'B1', terminal: 'neg' }, { part: 'E1', terminal: 'neg' });
		repeatLast(editor);
		expect(editor.tool).toEqual({ kind: 'connect', from: null });
	});
});

test('routing again asks only for conductors that were bent by hand', () => {
	const { editor } = newEditor();
	editor.select([]);
	reroute(editor);
	expect(editor.message.kind).toBe('refused');
});
