import { flushSync } from 'svelte';
import { expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import Inspector from '../../src/ui/inspector/Inspector.svelte';
import { haloOf, protection } from '../../src/ui/protection.ts';
import { circuit } from '../support/circuit.ts';
import { newWorkbench, show } from './support.ts';

/** A battery with a fuse on its post, and a load: the fuse is all that limits a fault in the feed. */
const diagram = circuit(
	{ b: ['battery', { capacityAh: 200 }], f: ['fuse-block', { fuseA: 30 }], l: ['load', { draw: 5, connection: 'studs' }] },
	[
		['f.post', 'l.pos', { gauge: '12' }],
		['l.neg', 'b.neg', { gauge: '12' }]
	],
	{ mounts: { f: 'b.pos' } }
);

function checked() {
	const bench = newWorkbench(diagram);
	bench.worker.answer(checkDiagram(diagram));
	const root = show(bench.workbench, Inspector);
	const select = (key: 'part:f' | 'part:l' | 'conductor:W1') => {
		bench.editor.select([key]);
		flushSync();
	};
	return { ...bench, root, select, halo: () => [...haloOf(protection(bench.editor))] };
}

test('a conductor shows and names the fuse that protects it', () => {
	const { editor, root, select, halo } = checked();
	select('conductor:W1');
	expect(halo()).toEqual(['part:f']);
	root.querySelector<HTMLElement>('ul[aria-label="Protected by"] button')!.click();
	flushSync();
	expect([...editor.selection]).toEqual(['part:f']);
});

test('a fuse shows and names the conductors it protects; a load protects nothing', () => {
	const { root, select, halo } = checked();
	select('part:f');
	expect(halo()).toContain('conductor:W1');
	expect(root.querySelector('ul[aria-label=Protects]')!.textContent).toContain('W1');
	select('part:l');
	expect(halo()).toEqual([]);
	expect(root.querySelector('ul[aria-label=Protects]')).toBeNull();
});
