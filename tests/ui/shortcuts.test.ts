import { beforeEach, describe, expect, test } from 'vitest';
import { deleteSelection } from '#editor';
import { shortcutHandler } from '../../src/ui/shortcuts.ts';
import { noteTyping } from '../../src/ui/typing.ts';
import { newWorkbench } from './support.ts';

let bench: ReturnType<typeof newWorkbench>;
let handle: (event: KeyboardEvent) => void;
beforeEach(() => {
	bench = newWorkbench();
	handle = shortcutHandler(bench.workbench);
	document.body.innerHTML = '<button>b</button><input /><div class="body"><button id="in">i</button></div>';
});

function press(selector: string, key: string, init: KeyboardEventInit = {}): KeyboardEvent {
	const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...init });
	document.querySelector(selector)!.addEventListener('keydown', (e) => handle(e as KeyboardEvent), { once: true });
	document.querySelector(selector)!.dispatchEvent(event);
	return event;
}

describe('keys', () => {
	test('delete nothing while a button has the focus', () => {
		bench.editor.select(['part:E1']);
		press('button', 'Delete');
		expect(Object.keys(bench.editor.diagram.parts)).toEqual(['B1', 'E1']);
	});

	test('undo in a field is the diagram’s, until something was typed there that is not stored yet', () => {
		document.body.innerHTML = '<input inputmode="decimal" value="3" /><select></select>';
		const field = document.querySelector('input')!;
		for (const type of ['focusin', 'input', 'change']) field.addEventListener(type, noteTyping);
		field.dispatchEvent(new Event('focusin'));
		bench.editor.select(['part:E1']);
		deleteSelection(bench.editor);
		field.value = '35';
		field.dispatchEvent(new Event('input'));
		expect(press('input', 'z', { ctrlKey: true }).defaultPrevented).toBe(false);
		press('input', 'Escape');
		expect(field.value).toBe('3');
		expect(press('input', 'z', { ctrlKey: true }).defaultPrevented).toBe(true);
		expect(Object.keys(bench.editor.diagram.parts)).toEqual(['B1', 'E1']);
		press('select', 'z', { ctrlKey: true, shiftKey: true });
		expect(Object.keys(bench.editor.diagram.parts)).toEqual(['B1']);
	});

	test('with Alt, arrows move the part from the outline', () => {
		document.body.innerHTML = '<div role="tree"><button>b</button></div>';
		bench.editor.select(['part:E1']);
		press('button', 'ArrowRight');
		expect(bench.editor.diagram.parts['E1']!.at.x).toBe(300);
		press('button', 'ArrowRight', { altKey: true });
		expect(bench.editor.diagram.parts['E1']!.at.x).toBe(305);
	});

	test('delete what is selected', () => {
		bench.editor.select(['part:E1']);
		expect(press('body', 'Delete').defaultPrevented).toBe(true);
		expect(Object.keys(bench.editor.diagram.parts)).toEqual(['B1']);
	});

	test('in a field belong to the field', () => {
		bench.editor.select(['part:E1']);
		for (const key of ['Backspace', 'Delete', 'r', 'ArrowLeft', '?']) expect(press('input', key).defaultPrevented).toBe(false);
		expect(Object.keys(bench.editor.diagram.parts)).toEqual(['B1', 'E1']);
		expect(press('input', 's', { ctrlKey: true }).defaultPrevented).toBe(true);
	});

	test('move by the grid, and by ten of it with Shift', () => {
		bench.editor.select(['part:E1']);
		press('button', 'ArrowRight');
		expect(bench.editor.diagram.parts['E1']!.at).toEqual({ x: 305, y: 0 });
		press('button', 'ArrowUp', { shiftKey: true });
		expect(bench.editor.diagram.parts['E1']!.at).toEqual({ x: 305, y: -50 });
	});

	test('arrows scroll where something scrolls, and scroll the page when nothing is selected', () => {
		expect(press('button', 'ArrowRight').defaultPrevented).toBe(false);
		bench.editor.select(['part:E1']);
		expect(press('#in', 'ArrowRight').defaultPrevented).toBe(false);
	});

	test('undo and redo', () => {
		bench.editor.select(['part:E1']);
		press('body', 'Delete');
		press('button', 'z', { ctrlKey: true });
		expect(Object.keys(bench.editor.diagram.parts)).toEqual(['B1', 'E1']);
		press('button', 'Z', { ctrlKey: true, shiftKey: true });
		expect(Object.keys(bench.editor.diagram.parts)).toEqual(['B1']);
	});

	test('are quiet while a dialog is open', () => {
		bench.editor.select(['part:E1']);
		bench.view.dialog = 'help';
		press('body', 'Delete');
		expect(Object.keys(bench.editor.diagram.parts)).toEqual(['B1', 'E1']);
	});

	test('Escape puts the tool away first and then the selection', () => {
		bench.editor.select(['part:E1']);
		bench.editor.setTool({ kind: 'connect', from: null });
		press('button', 'Escape');
		expect(bench.editor.tool.kind).toBe('select');
		expect(bench.editor.selection.size).toBe(1);
		press('button', 'Escape');
		expect(bench.editor.selection.size).toBe(0);
	});
});
