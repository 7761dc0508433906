import { flushSync } from 'svelte';
import { expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import ConductorFigures from '../../src/ui/inspector/ConductorFigures.svelte';
import { circuit } from '../support/circuit.ts';
import { answered, newWorkbench, show } from './support.ts';

async function opened(summary: RegExp) {
	const diagram = circuit(
		{ b: ['battery', { capacityAh: 200 }], f: ['fuse-block', { fuseA: 25 }], l: ['load', { draw: 10, connection: 'studs' }] },
		[
			['f.post', 'l.pos', { gauge: '10', lengthM: 5 }],
			['l.neg', 'b.neg', { gauge: '10', lengthM: 5 }]
		],
		{ mounts: { f: 'b.pos' } }
	);
	const { workbench, worker } = newWorkbench(diagram);
	const [id] = Object.keys(diagram.conductors);
	const root = show(workbench, ConductorFigures, { id: id! });
	worker.answer(checkDiagram(diagram));
	flushSync();
	const details = [...root.querySelectorAll('dd details')] as HTMLDetailsElement[];
	const one = details.find((each) => summary.test(each.closest('dd')!.previousElementSibling!.textContent!))!;
	one.open = true;
	one.dispatchEvent(new Event('toggle'));
	flushSync();
	await answered();
	return { root, details, one, text: one.textContent!.replace(/\s+/g, ' ') };
}

test('a figure opens to its formula, with the numbers put in, and its source', async () => {
	const { text } = await opened(/Volts lost/);
	expect(text).toContain('U = I × (rho × L ÷ A + 2 × Rj)');
	// ASTM B258: 10 AWG is 5.261 mm².
	expect(text).toMatch(/10 A × \(0\.0179 Ω·mm²\/m × 5 m ÷ 5\.26 mm²/);
	expect(text).toContain('ASTM B258');
	expect(text).toContain('one-way length');
	expect(text).toContain('drawn');
});

test('inputs that are figures themselves open in turn', async () => {
	const { one } = await opened(/Volts lost/);
	const inner = one.querySelector('details')!;
	expect(inner.textContent).toContain('I = 10 A');
	inner.open = true;
	inner.dispatchEvent(new Event('toggle'));
	flushSync();
	await answered();
	expect(inner.textContent).toContain('Kirchhoff');
});

test('nothing is asked for before a figure is opened', async () => {
	const { details, one } = await opened(/Amperage/);
	expect(one.querySelector('.why')).not.toBeNull();
	for (const other of details) if (other !== one) expect(other.querySelector('.why')).toBeNull();
});
