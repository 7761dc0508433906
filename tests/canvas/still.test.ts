import { describe, expect, test } from 'vitest';
import { PALETTES } from '#core/graphics';
import { composeScene } from '#core/drawing';
import { Painter } from '../../src/canvas/paint/painter.ts';
import { paintItems } from '../../src/canvas/paint/still.ts';
import { dotStrength, paintGrid } from '../../src/canvas/paint/grid.ts';
import { SceneIndex } from '../../src/canvas/scene-index.ts';
import { circuit } from '../support/circuit.ts';
import { FakePath, fakeContext } from './support/fake-context.ts';

const palette = PALETTES.light;
const diagram = circuit(
	{
		F1: ['fuse-block', {}, { at: { x: 0, y: 0 } }],
		B1: ['battery', {}, { at: { x: 0, y: 400 } }],
		D1: ['fused-bus', {}, { at: { x: 500, y: 0 } }],
		W1: ['load', {}, { at: { x: 3000, y: 3000 } }]
	},
	[
		['B1.pos', 'D1.L'],
		['D1.1', 'W1.pos']
	],
	{ mounts: { F1: 'D1.R' } }
);
const scene = composeScene(diagram);
const index = new SceneIndex();
index.update(scene);

function painted(zoom: number, hidden?: ReadonlySet<`part:${string}`>): string[] {
	const { trace, context } = fakeContext();
	const painter = new Painter(() => new FakePath());
	paintItems(context as never, painter, scene.items, scene.order, { view: { x: 0, y: 0, zoom }, palette, hidden });
	return trace;
}

describe('culling', () => {
	test('only what meets the window is painted, in the scene’s order', () => {
		const visible = index.visible({ minX: -200, minY: -200, maxX: 800, maxY: 200 });
		expect(visible).toEqual(scene.order.filter((key) => visible.includes(key)));
		expect(visible).toEqual(expect.arrayContaining(['part:D1', 'part:F1', 'conductor:W1', 'conductor:W2']));
		expect(visible).not.toContain('part:W1');
		expect(visible).not.toContain('part:B1');
	});

	test('a mounted block lies over its host', () => {
		const visible = index.visible({ minX: -200, minY: -200, maxX: 800, maxY: 200 });
		expect(visible.indexOf('part:F1')).toBeGreaterThan(visible.indexOf('part:D1'));
	});

	test('with everything in view there is nothing to sort', () => {
		expect(index.visible({ minX: -1e5, minY: -1e5, maxX: 1e5, maxY: 1e5 })).toBe(scene.order);
	});
});

describe('level of detail', () => {
	test('close up, names and studs are there', () => {
		const calls = painted(1);
		expect(calls.some((call) => call.includes('"B1"'))).toBe(true);
		expect(calls.length).toBeGreaterThan(60);
	});

	test('names are painted after everything else', () => {
		const calls = painted(1);
		const firstName = calls.findIndex((call) => call.includes('"B1"'));
		const lastConductor = calls.findLastIndex((call) => call.includes(palette['conductor:red']));
		expect(firstName).toBeGreaterThan(lastConductor);
	});

	test('far out there is no text, and a few paths draw everything', () => {
		const calls = painted(0.03);
		expect(calls.filter((call) => call.startsWith('text'))).toEqual([]);
		expect(calls.length).toBeLessThan(8);
		expect(calls[0]).toMatch(/^fill .*rect.*rect.*rect/);
	});

	test('a conductor keeps its colour as a plain line', () => {
		expect(painted(0.03).some((call) => call.startsWith(`stroke ${palette['conductor:red']}`))).toBe(true);
	});

	test('a tag is left out with its box when its text cannot be read', () => {
		const box = (calls: string[]) => calls.filter((call) => call.startsWith(`fill ${palette.paper}`) && call.includes('roundRect')).length;
		expect(box(painted(1))).toBe(2);
		expect(box(painted(0.4))).toBe(0);
	});
});

test('what is dragged is left out of the still layer', () => {
	expect(painted(1, new Set(['part:B1'] as const)).some((call) => call.includes('"B1"'))).toBe(false);
});

describe('the index', () => {
	test('follows a scene by identity', () => {
		const moved = { ...diagram, parts: { ...diagram.parts, W1: { ...diagram.parts['W1']!, at: { x: -500, y: 0 } } } };
		const own = new SceneIndex();
		own.update(scene);
		const next = composeScene(moved, {}, scene);
		own.update(next);
		expect(own.visible({ minX: -600, minY: -50, maxX: -400, maxY: 50 })).toContain('part:W1');
		expect(own.visible({ minX: 2900, minY: 2900, maxX: 3100, maxY: 3100 })).toEqual([]);
		expect(own.stud('stud:W1.pos')!.at.x).toBeLessThan(0);
	});

	test('forgets what was removed, studs too', () => {
		const own = new SceneIndex();
		own.update(scene);
		own.update(composeScene(circuit({ B1: ['battery'] }), {}, scene));
		expect(own.stud('stud:D1.L')).toBeNull();
		expect(own.items.size).toBe(1);
	});
});

describe('the grid', () => {
	test('dots fade in from 12 to 36 pixels apart', () => {
		expect([dotStrength(50, 0.2), dotStrength(50, 0.48), dotStrength(50, 1)]).toEqual([0, 0.5, 1]);
	});

	test('at any zoom there are at most two pitches and not too many dots', () => {
		for (let zoom = 0.02; zoom < 12; zoom *= 1.3) {
			const { trace, context } = fakeContext();
			paintGrid(context, { x: 3, y: 7, zoom }, { width: 1280, height: 800 }, palette);
			expect(trace.length).toBeLessThanOrEqual(2);
			const dots = trace.reduce((sum, call) => sum + call.split('rect').length - 1, 0);
			expect(dots).toBeLessThan(9000);
		}
	});
});
