import { expect, test } from 'vitest';
import { addPart } from '#core/diagram';
import { boxHeight } from '#core/geometry';
import { partBox } from '#core/layout';
import { align, distribute } from '#editor';
import { newEditor } from './support.ts';

test('sets parts in line by their bodies, as one step', () => {
	const { editor } = newEditor();
	editor.select(['part:B1', 'part:E1']);
	align(editor, 'top');
	const [b, e] = ['B1', 'E1'].map((id) => partBox(editor.diagram, id)!);
	expect(b!.minY).toBeCloseTo(e!.minY, 9);
	expect(boxHeight(b!)).not.toBe(boxHeight(e!));
	expect(editor.undoLabel).toMatch(/^align 1 part/);
	align(editor, 'top');
	expect(editor.message).toMatchObject({ text: 'They are in line already.', kind: 'done' });
});

test('says how many it takes', () => {
	const { editor } = newEditor();
	editor.select(['part:B1']);
	align(editor, 'left');
	expect(editor.message).toMatchObject({ kind: 'refused', text: 'Select two or more parts to set in line.' });
	editor.select(['part:B1', 'part:E1']);
	distribute(editor, 'across');
	expect(editor.message.text).toBe('Select three or more parts to set at equal distances.');
});

test('sets parts at equal distances', () => {
	const { editor } = newEditor();
	editor.run(addPart({ id: 'E2', part: { kind: 'load', label: 'E2', at: { x: 1000, y: 30 } } }));
	editor.select(['part:B1', 'part:E1', 'part:E2']);
	distribute(editor, 'across');
	const [a, b, c] = ['B1', 'E1', 'E2'].map((id) => partBox(editor.diagram, id)!);
	expect(b!.minX - a!.maxX).toBeCloseTo(c!.minX - b!.maxX, 9);
});
