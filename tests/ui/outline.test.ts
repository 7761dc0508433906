import { flushSync } from 'svelte';
import { expect, test } from 'vitest';
import Outline from '../../src/ui/outline/Outline.svelte';
import { byRole, newWorkbench, press, show } from './support.ts';

const rows = (root: HTMLElement) =>
	[...root.querySelectorAll('[role=treeitem]')].map(
		(row) => `${row.getAttribute('aria-level')} ${row.querySelector('.text')!.textContent}`
	);

test('the tree opens from parts to studs to conductors', () => {
	const { workbench } = newWorkbench();
	const root = show(workbench, Outline);
	expect(rows(root)).toEqual(['1 B1', '1 E1']);
	const tree = root.querySelector('[role=tree]')!;

	press(tree, 'ArrowRight');
	expect(rows(root)).toEqual(['1 B1', '2 +', '2 −', '1 E1']);
	press(tree, 'ArrowDown');
	press(tree, 'ArrowRight');
	expect(rows(root)).toEqual(['1 B1', '2 +', '3 W1 to E1 +', '2 −', '1 E1']);
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
