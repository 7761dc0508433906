import { flushSync } from 'svelte';
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import type { Diagram, ItemKey } from '#core/diagram';
import Inspector from '../../src/ui/inspector/Inspector.svelte';
import { haloOf, protection } from '../../src/ui/protection.ts';
import { circuit } from '../support/circuit.ts';
import { newWorkbench, show } from './support.ts';

/** A battery with a fuse on its post, and a load: the fuse is all that limits a fault in the feed. */
const behindBlock = circuit(
	{ b: ['battery', { capacityAh: 200 }], f: ['fuse-block', { fuseA: 30 }], l: ['load', { draw: 5, connection: 'studs' }] },
	[
		['f.post', 'l.pos', { gauge: '12' }],
		['l.neg', 'b.neg', { gauge: '12' }]
	],
	{ mounts: { f: 'b.pos' } }
);

function checked(diagram: Diagram = behindBlock) {
	const bench = newWorkbench(diagram);
	bench.worker.answer(checkDiagram(diagram));
	const root = show(bench.workbench, Inspector);
	const select = (key: ItemKey) => {
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

describe('positions of a bus', () => {
	const bus = circuit(
		{ b: ['battery'], d: ['fused-bus', { fuseA: [30, 20, null, null] }], l: ['load', { draw: 5 }], m: ['load', { draw: 2 }] },
		[
			['b.pos', 'd.L', { gauge: '2' }],
			['d.1', 'l.pos', { gauge: '10' }],
			['d.2', 'm.pos', { gauge: '10' }],
			['l.neg', 'b.neg', { gauge: '10' }],
			['m.neg', 'b.neg', { gauge: '10' }]
		]
	);

	test('a conductor names and rings its own, which shows what it protects and nothing of its neighbour', () => {
		const { editor, root, select, halo } = checked(bus);
		select('conductor:W2');
		expect(halo()).toEqual(['stud:d.1']);
		const link = root.querySelector<HTMLElement>('ul[aria-label="Protected by"] button')!;
		expect(link.textContent).toBe('D position 1');
		link.click();
		flushSync();
		expect([...editor.selection]).toEqual(['stud:d.1']);
		expect(halo()).toEqual(['conductor:W2', 'conductor:W4']);
		const listed = [...root.querySelectorAll('ul[aria-label=Protects] button')].map((button) => button.textContent);
		expect(listed).toEqual(['W2', 'W4']);
	});

	test('an empty position and a stud without a fuse protect nothing; the bus itself shows all of its positions', () => {
		const { root, select, halo } = checked(bus);
		for (const key of ['stud:d.3', 'stud:d.L', 'stud:l.pos'] as const) {
			select(key);
			expect(halo()).toEqual([]);
			expect(root.querySelector('ul[aria-label=Protects]')).toBeNull();
		}
		select('part:d');
		expect(halo()).toEqual(['conductor:W2', 'conductor:W4', 'conductor:W3', 'conductor:W5']);
	});
});
