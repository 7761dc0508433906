import { flushSync } from 'svelte';
import { expect, test, vi } from 'vitest';
import type { Finding } from '#core/rules';
import { changeWords } from '../../src/ui/findings/new-findings.ts';
import Outline from '../../src/ui/outline/Outline.svelte';
import { byRole, newWorkbench, press, show } from './support.ts';

const rows = (root: HTMLElement) =>
	[...root.querySelectorAll('[role=treeitem]')].map(
		(row) => `${row.getAttribute('aria-level')} ${row.querySelector('.text')!.textContent}`
	);

test('the tree opens from parts to studs to conductors', () => {
	const { workbench } = newWorkbench();
	const root = show(workbench, Outline);
	expect(rows(root)).toEqual(['1 B1', '1 E1', '1 Conductors (1)']);
	const tree = root.querySelector('[role=tree]')!;

	press(tree, 'ArrowRight');
	expect(rows(root)).toEqual(['1 B1', '2 +', '2 −', '1 E1', '1 Conductors (1)']);
	press(tree, 'ArrowDown');
	press(tree, 'ArrowRight');
	expect(rows(root)).toEqual(['1 B1', '2 +', '3 W1 to E1 +', '2 −', '1 E1', '1 Conductors (1)']);
});

test('walking selects, with one row in the tab order', async () => {
	const { workbench, editor } = newWorkbench();
	const root = show(workbench, Outline);
	press(root.querySelector('[role=tree]')!, 'ArrowDown');
	await new Promise((resolve) => setTimeout(resolve));
	expect([...editor.selection]).toEqual(['part:E1']);
	const inOrder = root.querySelectorAll('[role=treeitem][tabindex="0"]');
	expect([...inOrder].map((row) => row.querySelector('.text')!.textContent)).toEqual(['E1']);
	expect(document.activeElement).toBe(inOrder[0]);
	expect(inOrder[0]!.getAttribute('aria-selected')).toBe('true');
});

test('a conductor is drawn from stud to stud by keyboard alone', () => {
	const { workbench, editor } = newWorkbench();
	const root = show(workbench, Outline);
	const tree = root.querySelector('[role=tree]')!;
	// B1, open, its second stud: from there.
	for (const key of ['ArrowRight', 'ArrowDown', 'ArrowDown', 'c']) press(tree, key);
	expect(editor.tool).toEqual({ kind: 'connect', from: { part: 'B1', terminal: 'neg' } });
	expect(root.textContent).toContain('Choose the stud where the conductor from B1 − ends.');

	// E1, open, its second stud: to there.
	for (const key of ['ArrowDown', 'ArrowRight', 'ArrowDown', 'ArrowDown', 'c']) press(tree, key);
	expect(Object.values(editor.diagram.conductors).at(-1)).toMatchObject({
		from: { part: 'B1', terminal: 'neg' },
		to: { part: 'E1', terminal: 'neg' }
	});
	expect(editor.tool.kind).toBe('select');
});

test('the same key on the same stud gives up', () => {
	const { workbench, editor } = newWorkbench();
	const root = show(workbench, Outline);
	const tree = root.querySelector('[role=tree]')!;
	for (const key of ['ArrowRight', 'ArrowDown', 'c', 'c']) press(tree, key);
	expect(editor.tool.kind).toBe('select');
	expect(Object.keys(editor.diagram.conductors)).toHaveLength(1);
});

test('what is selected elsewhere is marked here', () => {
	const { workbench, editor } = newWorkbench();
	const root = show(workbench, Outline);
	editor.select(['part:E1']);
	flushSync();
	expect(byRole(root, 'treeitem', /E1/).getAttribute('aria-selected')).toBe('true');
});

test('a conductor leads from stud to stud, wherever that stands', async () => {
	const { workbench, editor } = newWorkbench();
	const root = show(workbench, Outline);
	const tree = root.querySelector('[role=tree]')!;
	for (const key of ['ArrowRight', 'ArrowDown', 'ArrowRight', 'ArrowDown', 'ArrowRight']) press(tree, key);
	await vi.waitFor(() => expect([...editor.selection]).toEqual(['stud:E1.pos']));
	expect(document.activeElement?.querySelector('.text')?.textContent).toBe('+');
	expect(rows(root)).toContain('2 +');
});

test('a part is renamed on its row, in one step; Escape leaves the name', async () => {
	const { workbench, editor } = newWorkbench();
	const root = show(workbench, Outline);
	const tree = root.querySelector('[role=tree]')!;
	press(tree, 'F2');
	const input = root.querySelector('input')!;
	expect(input.value).toBe('B1');
	input.value = 'House bank';
	press(input, 'Enter');
	expect(editor.diagram.parts['B1']!.label).toBe('House bank');
	await vi.waitFor(() => expect(document.activeElement?.getAttribute('role')).toBe('treeitem'));
	press(tree, 'F2');
	root.querySelector('input')!.value = 'something else';
	press(root.querySelector('input')!, 'Escape');
	expect(editor.diagram.parts['B1']!.label).toBe('House bank');
	editor.undo();
	expect(editor.diagram.parts['B1']!.label).toBe('B1');
});

test('all conductors stand under a heading, and are made thicker and thinner there', () => {
	const { workbench, editor } = newWorkbench();
	const root = show(workbench, Outline);
	const tree = root.querySelector('[role=tree]')!;
	press(tree, 'End');
	expect(rows(root).at(-1)).toBe('1 Conductors (1)');
	press(tree, 'Enter');
	press(tree, 'ArrowDown');
	const size = () => editor.diagram.conductors['W1']!.gauge.size;
	const before = size();
	press(tree, '+');
	expect(size()).not.toBe(before);
	expect(editor.message.text).toMatch(/^W1 is .* now\.$/);
	press(tree, '-');
	expect(size()).toBe(before);
});

test('what is new in a check and what is gone is put into words, the rest counted', () => {
	const finding = (key: string) => ({ key, severity: 'error', message: `${key} is wrong.` }) as Finding;
	expect(changeWords(new Set(['a']), [finding('a')])).toBeNull();
	expect(changeWords(new Set(['a', 'b']), [finding('c')])).toBe('New error: c is wrong. 2 findings are gone.');
	expect(changeWords(new Set(), ['a', 'b', 'c', 'd'].map(finding))).toBe(
		'New error: a is wrong. New error: b is wrong. And 2 more new findings.'
	);
	expect(changeWords(new Set(['a']), [])).toBe('1 finding is gone. No finding is left.');
});
