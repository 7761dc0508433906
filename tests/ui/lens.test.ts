import { flushSync } from 'svelte';
import { expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import LensLegend from '../../src/ui/lens/LensLegend.svelte';
import { lensOf } from '../../src/ui/lens/lens-of.ts';
import LensPicker from '../../src/ui/lens/LensPicker.svelte';
import { circuit } from '../support/circuit.ts';
import { answered, byRole, newWorkbench, show } from './support.ts';

const diagram = circuit({ b: ['battery', { capacityAh: 200 }], l: ['load', { draw: 40, connection: 'studs' }] }, [
	['b.pos', 'l.pos', { gauge: '16' }],
	['l.neg', 'b.neg', { gauge: '2/0' }]
]);

test('the legend tells each band in words and limits, how many conductors are in it, and closes with the lens', () => {
	const bench = newWorkbench(diagram);
	const picker = show(bench.workbench, LensPicker);
	const legend = show(bench.workbench, LensLegend);
	const select = picker.querySelector('select')!;
	expect([...select.options].map(({ text }) => text)).toEqual([
		'None',
		'Polarity',
		'Loading',
		'Volts lost',
		'Protection',
		'Fault current',
		'Temperature'
	]);
	select.value = 'loading';
	select.dispatchEvent(new Event('change', { bubbles: true }));
	flushSync();
	expect(legend.textContent).toContain('Colours appear when the check has run');
	bench.worker.answer(checkDiagram(diagram));
	flushSync();
	const rows = [...legend.querySelectorAll('li')].map((row) => row.textContent!.replace(/\s+/g, ' ').trim());
	expect(rows).toHaveLength(5);
	expect(rows[0]).toBe('idle below 25 % 1 conductor');
	expect(rows[4]).toBe('over its amperage 100 % and more 1 conductor');
	expect(legend.querySelectorAll('line')[4]!.getAttribute('stroke-width')).not.toBe(
		legend.querySelectorAll('line')[0]!.getAttribute('stroke-width')
	);

	byRole(legend, 'button', 'Switch the lens off').click();
	flushSync();
	expect(select.value).toBe('');
	expect(legend.textContent).toBe('');
});

test('canvas and legend see one and the same view of a check', () => {
	const bench = newWorkbench(diagram);
	bench.worker.answer(checkDiagram(diagram));
	bench.view.lens = 'protection';
	expect(lensOf(bench.editor, bench.view)).toBe(lensOf(bench.editor, bench.view));
	bench.view.lens = null;
	expect(lensOf(bench.editor, bench.view)).toBeNull();
});

test('a band opens to where it begins and ends, and to the conductors in it', async () => {
	const bench = newWorkbench(diagram);
	bench.view.lens = 'volts-lost';
	const legend = show(bench.workbench, LensLegend);
	bench.worker.answer(checkDiagram(diagram));
	flushSync();
	const bands = [...legend.querySelectorAll<HTMLDetailsElement>('[data-figure=band]')];
	expect(bands).toHaveLength(5);
	bands[3]!.open = true;
	bands[3]!.dispatchEvent(new Event('toggle'));
	flushSync();
	await answered();
	// 3 and 5 % of 12 V; 40 A through 14 mΩ are 560 mV.
	expect(bands[3]!.textContent).toContain('from = 360 mV');
	expect(bands[3]!.querySelector('[data-figure=band-limit]')).not.toBeNull();
	expect([...bands[3]!.querySelectorAll('[data-figure=conductor] summary')].map((summary) => summary.textContent)).toEqual(['W1']);
});
