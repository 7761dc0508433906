import { flushSync } from 'svelte';
import { describe, expect, test } from 'vitest';
import { editPart, moveParts, removeItems } from '#core/diagram';
import { boxesIntersect } from '#core/geometry';
import { partBox } from '#core/layout';
import { deleteSelection, duplicate, nudge, selectAll, turn } from '#editor';
import { newEditor } from './support.ts';

describe('undo', () => {
	test('gives back the diagram and what was selected before', () => {
		const { editor } = newEditor();
		const before = editor.diagram;
		editor.select(['part:B1', 'conductor:W1']);

		deleteSelection(editor);
		expect(Object.keys(editor.diagram.parts)).toEqual(['E1']);
		expect(editor.selection.size).toBe(0);

		editor.undo();
		expect(editor.diagram).toEqual(before);
		expect([...editor.selection]).toEqual(['part:B1', 'conductor:W1']);

		editor.redo();
		expect(Object.keys(editor.diagram.parts)).toEqual(['E1']);
	});

	test('names the step it would take back', () => {
		const { editor } = newEditor();
		expect(editor.undoLabel).toBeNull();
		editor.run(moveParts({ parts: ['E1'], by: { x: 5, y: 0 } }));
		expect(editor.undoLabel).toBe('move 1 part');
		editor.undo();
		expect(editor.redoLabel).toBe('move 1 part');
	});

	test('takes back quick nudges as one step and later ones by themselves', () => {
		const { editor, clock } = newEditor();
		editor.select(['part:E1']);
		for (const ms of [0, 100, 200]) {
			clock.ms = ms;
			nudge(editor, { x: 1, y: 0 });
		}
		clock.ms = 5000;
		nudge(editor, { x: 1, y: 0 }, 50);
		expect(editor.diagram.parts['E1']!.at.x).toBe(365);

		editor.undo();
		expect(editor.diagram.parts['E1']!.at.x).toBe(315);
		editor.undo();
		expect(editor.diagram.parts['E1']!.at.x).toBe(300);
	});

	test('says when there is nothing to take back', () => {
		const { editor } = newEditor();
		editor.undo();
		expect(editor.message).toMatchObject({ kind: 'refused', text: 'There is nothing to undo.' });
	});
});

describe('a refusal', () => {
	test('is told to the user with its reason, and changes nothing', () => {
		const { editor } = newEditor();
		const before = editor.diagram;
		const reason = editor.run(removeItems({ parts: ['X9'] }));
		expect(reason).toMatch(/no part "X9"/);
		expect(editor.message).toMatchObject({ kind: 'refused', text: reason });
		expect(editor.diagram).toBe(before);
		expect(editor.undoLabel).toBeNull();
	});

	test('said twice is two messages, so that it is heard twice', () => {
		const { editor } = newEditor();
		turn(editor);
		const { serial } = editor.message;
		turn(editor);
		expect(editor.message.serial).toBe(serial + 1);
	});
});

test('a selection forgets what is no longer there and what never was', () => {
	const { editor } = newEditor();
	editor.select(['part:B1', 'conductor:W1', 'stud:B1.pos', 'part:nobody', 'conductor:constructor']);
	expect([...editor.selection]).toEqual(['part:B1', 'conductor:W1', 'stud:B1.pos']);
	editor.run(removeItems({ parts: ['B1'] }));
	expect(editor.selection.size).toBe(0);
});

test('it is dirty after a change, and clean again once that state is saved or undone', () => {
	const { editor } = newEditor();
	expect(editor.dirty).toBe(false);
	editor.run(editPart({ part: 'E1', set: { label: 'E7' } }));
	expect(editor.dirty).toBe(true);
	editor.markSaved(editor.diagram, 'pump.json');
	expect(editor.dirty).toBe(false);
	expect(editor.fileName).toBe('pump.json');
});

describe('placing', () => {
	test('designates a part by its class letter and the next number, on the grid, and selects it', () => {
		const { editor } = newEditor();
		editor.placePart('load', { x: 12.4, y: 603 });
		const part = editor.diagram.parts['E2']!;
		expect(part).toMatchObject({ kind: 'load', label: 'E2', at: { x: 10, y: 605 } });
		expect([...editor.selection]).toEqual(['part:E2']);
		expect(editor.undoLabel).toBe('place E2');
	});

	test('where another part stands, it goes beside it', () => {
		const { editor } = newEditor();
		const there = editor.diagram.parts['E1']!;
		editor.placePart('load', there.at);
		expect(boxesIntersect(partBox(editor.diagram, 'E1')!, partBox(editor.diagram, 'E2')!)).toBe(false);
	});

	test('a fuse block is set on a stud in one step', () => {
		const { editor } = newEditor();
		const before = editor.diagram;
		const battery = Object.keys(before.parts).find((id) => before.parts[id]!.kind === 'battery')!;
		const on = { part: battery, terminal: 'pos' };
		editor.placePart('fuse-block', { x: 0, y: 0 }, on);
		expect(editor.diagram.mounts).toEqual({ F1: on });
		editor.undo();
		expect(editor.diagram).toEqual(before);
	});

	test('a kind that is not in the library is a fault of the program', () => {
		const { editor } = newEditor();
		expect(() => editor.placePart('flux-capacitor', { x: 0, y: 0 })).toThrow(RangeError);
	});
});

test('duplicates lie beside the original under designations of their own', () => {
	const { editor } = newEditor();
	selectAll(editor);
	const keys = duplicate(editor);
	expect(new Set(keys)).toEqual(new Set(editor.selection));
	expect(Object.keys(editor.diagram.parts)).toHaveLength(4);
	expect(Object.values(editor.diagram.conductors).map(({ label }) => label)).toEqual(['W1', 'W2']);
	const copy = Object.values(editor.diagram.parts).find(({ label }) => label === 'E2')!;
	const boxes = (labels: RegExp) =>
		Object.entries(editor.diagram.parts).flatMap(([id, { label }]) => (labels.test(label) ? [partBox(editor.diagram, id)!] : []));
	expect((copy.at.x % 5) + (copy.at.y % 5)).toBe(0);
	for (const original of boxes(/1$/)) for (const box of boxes(/2$/)) expect(boxesIntersect(original, box)).toBe(false);
});

test('views follow the editor', () => {
	const { editor } = newEditor();
	const log: string[] = [];
	const stop = $effect.root(() => {
		$effect(() => {
			log.push(`${[...editor.selection].join(' ') || '–'} | ${Object.keys(editor.diagram.parts).join(' ')} | ${editor.undoLabel ?? '–'}`);
		});
	});
	flushSync();
	editor.select(['part:B1']);
	flushSync();
	deleteSelection(editor);
	flushSync();
	stop();
	expect(log).toEqual(['– | B1 E1 | –', 'part:B1 | B1 E1 | –', '– | E1 | delete 1 part']);
});
