import { expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { composeScene } from '#core/drawing';
import { lensValues } from '#core/explain';
import { PALETTES } from '#core/graphics';
import { paintThroughLens } from '../../src/canvas/paint/lens.ts';
import { Painter } from '../../src/canvas/paint/painter.ts';
import { circuit } from '../support/circuit.ts';
import { FakePath, fakeContext } from './support/fake-context.ts';

/** 40 A on 16 AWG there, on 2/0 AWG back: the first is over its amperage, the other idle. */
const diagram = circuit(
	{
		b: ['battery', { capacityAh: 200 }],
		f: ['fuse-block', { fuseA: 100 }],
		l: ['load', { draw: 40, connection: 'studs' }, { at: { x: 900, y: 0 } }]
	},
	[
		['f.post', 'l.pos', { gauge: '16' }],
		['l.neg', 'b.neg', { gauge: '2/0' }]
	],
	{ mounts: { f: 'b.pos' } }
);
const scene = composeScene(diagram);
const lens = lensValues(diagram, checkDiagram(diagram), 'loading');

function strokes(theme: 'light' | 'dark', hidden?: ReadonlySet<`conductor:${string}`>): string[] {
	const { trace, context } = fakeContext();
	const view = { x: 0, y: 0, zoom: 1 };
	paintThroughLens(context as never, new Painter(() => new FakePath()), scene.items, [...scene.order], {
		view,
		palette: PALETTES[theme],
		lens,
		theme,
		hidden
	});
	return trace;
}

test.each(['light', 'dark'] as const)('each conductor is drawn in its band’s colour and width, the worst last (%s)', (theme) => {
	const calls = strokes(theme);
	const at = (band: number) => calls.findIndex((call) => call.includes(`stroke ${lens.legend[band]!.colour[theme]}`));
	expect(at(0)).toBeGreaterThanOrEqual(0);
	expect(at(4)).toBeGreaterThan(at(0));
	for (const band of [1, 2, 3]) expect(at(band)).toBe(-1);
});

test('what is dragged elsewhere is left out', () => {
	const calls = strokes('light', new Set(['conductor:W1']));
	expect(calls.some((call) => call.includes(lens.legend[4]!.colour.light))).toBe(false);
	expect(calls.some((call) => call.includes(lens.legend[0]!.colour.light))).toBe(true);
});
