import { flushSync } from 'svelte';
import { expect, test } from 'vitest';
import { setLevel } from '#core/diagram';
import VoltsLadder from '../../src/ui/inspector/VoltsLadder.svelte';
import Inspector from '../../src/ui/inspector/Inspector.svelte';
import { circuit } from '../support/circuit.ts';
import { answered, newWorkbench, show } from './support.ts';

/** Battery, 25 A fuse on its post, 10 A load at the end of 5 m of 10 AWG and back. */
const lamp = () =>
	circuit(
		{ b: ['battery', { capacityAh: 200 }], f: ['fuse-block', { fuseA: 25 }], l: ['load', { draw: 10, connection: 'studs' }] },
		[
			['f.post', 'l.pos', { gauge: '10', lengthM: 5 }],
			['l.neg', 'b.neg', { gauge: '10', lengthM: 5 }]
		],
		{ mounts: { f: 'b.pos' } }
	);

const rungs = (root: HTMLElement) => [...root.querySelectorAll<HTMLElement>('ol > li')];
const text = (element: Element) => element.textContent!.replace(/\s+/g, ' ').trim();

test('every element there and back has its share, and the shares make the whole', async () => {
	const { workbench } = newWorkbench(lamp());
	const root = show(workbench, VoltsLadder, { load: 'l' });
	await answered();
	const shares = rungs(root).map((rung) => Number(/· ([\d.]+) %/.exec(text(rung))![1]));
	expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(100, 0);
	// ASTM B258: 10 AWG is 5.261 mm². 10 A × 0.01787 Ω·mm²/m × 5 m ÷ 5.261 mm² = 170 mV along each conductor.
	expect(rungs(root).filter((rung) => /conductor 170 mV · .* · 10 A$/.test(text(rung)))).toHaveLength(2);
	expect(root.querySelector('.total')!.textContent).toMatch(/0\.\d+ V lost there and back\s*[\d.]+ % of 12 V/);
});

test('a rung leads to what it is', async () => {
	const { workbench, editor } = newWorkbench(lamp());
	const root = show(workbench, VoltsLadder, { load: 'l' });
	await answered();
	rungs(root)
		.find((rung) => /conductor/.test(text(rung)))!
		.querySelector('button')!
		.click();
	flushSync();
	expect([...editor.selection][0]).toMatch(/^conductor:/);
});

test('a load that draws nothing says so; edits are followed', async () => {
	const { workbench, editor } = newWorkbench(lamp());
	const root = show(workbench, VoltsLadder, { load: 'l' });
	await answered();
	const [caseId] = Object.keys(editor.diagram.cases);
	editor.run(setLevel({ case: caseId!, part: 'l', level: 0 }));
	flushSync();
	await answered();
	expect(rungs(root)).toHaveLength(0);
	expect(root.textContent).toMatch(/draws nothing|not fed/);
});

test('only what draws current has a ladder', () => {
	const { workbench, editor } = newWorkbench(lamp());
	const root = show(workbench, Inspector);
	editor.select(['part:l']);
	flushSync();
	expect(root.textContent).toContain('Where the volts go');
	editor.select(['part:b']);
	flushSync();
	expect(root.textContent).not.toContain('Where the volts go');
});
