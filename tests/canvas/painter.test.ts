import { describe, expect, test } from 'vitest';
import { PALETTES, type Primitive } from '#core/graphics';
import { Painter } from '../../src/canvas/paint/painter.ts';
import { FakePath, fakeContext } from './support/fake-context.ts';

const palette = PALETTES.light;

function paint(primitives: readonly Primitive[], zoom = 1): string[] {
	const { trace, context } = fakeContext();
	new Painter(() => new FakePath()).paint(context, primitives, { palette, zoom });
	return trace;
}

test('a rectangle is filled, then stroked', () => {
	expect(paint([{ kind: 'rect', x: 1, y: 2, w: 30, h: 20, fill: 'case', stroke: 'case-edge', width: 2 }])).toEqual([
		`fill ${palette.case} [rect 1 2 30 20]`,
		`stroke ${palette['case-edge']} 2 [rect 1 2 30 20]`
	]);
});

test('rounded corners are the context’s own', () => {
	expect(paint([{ kind: 'rect', x: 0, y: 0, w: 9, h: 9, r: 3, fill: 'case' }])).toEqual([`fill ${palette.case} [roundRect 0 0 9 9 3]`]);
});

test('a circle starts where its arc starts, or a line would lead to it', () => {
	expect(paint([{ kind: 'circle', x: 10, y: 10, r: 4, fill: 'metal', opacity: 0.5 }])).toEqual([
		`fill ${palette.metal} @0.5 [M 14 10, arc 10 10 4]`
	]);
});

describe('a polyline', () => {
	const points = [
		{ x: 0, y: 0 },
		{ x: 100, y: 0 },
		{ x: 100, y: 6 },
		{ x: 200, y: 6 }
	];
	test('has sharp corners unless told otherwise', () => {
		expect(paint([{ kind: 'polyline', points, stroke: 'conductor:red', width: 5 }])).toEqual([
			`stroke ${palette['conductor:red']} 5 [M 0 0, L 100 0, L 100 6, L 200 6]`
		]);
	});
	test('rounds its corners, but never by more than half of the shorter piece', () => {
		expect(paint([{ kind: 'polyline', points, round: 10, stroke: 'ink', width: 5 }])).toEqual([
			`stroke ${palette.ink} 5 [M 0 0, arcTo 100 0 100 6 3, arcTo 100 6 200 6 3, L 200 6]`
		]);
	});
	test('is closed when it says so', () => {
		expect(paint([{ kind: 'polyline', points: points.slice(0, 3), closed: true, fill: 'error' }])).toEqual([
			`fill ${palette.error} [M 0 0, L 100 0, L 100 6, Z]`
		]);
	});
	test('keeps its dashes', () => {
		expect(paint([{ kind: 'polyline', points: points.slice(0, 2), stroke: 'ink', width: 1, dash: [4, 2] }])).toEqual([
			`stroke ${palette.ink} 1 dash 4 2 [M 0 0, L 100 0]`
		]);
	});
});

test('strokes of one style after one another are one path', () => {
	const line = (x: number): Primitive => ({
		kind: 'polyline',
		points: [
			{ x, y: 0 },
			{ x, y: 9 }
		],
		stroke: 'ink',
		width: 2
	});
	expect(paint([line(1), line(2), { ...line(3), stroke: 'error' } as Primitive])).toEqual([
		`stroke ${palette.ink} 2 [M 1 0, L 1 9, M 2 0, L 2 9]`,
		`stroke ${palette.error} 2 [M 3 0, L 3 9]`
	]);
});

test('see-through strokes are not joined: where they cross, both would have to show', () => {
	const line = (x: number): Primitive => ({
		kind: 'polyline',
		points: [
			{ x, y: 0 },
			{ x, y: 9 }
		],
		stroke: 'ink',
		width: 2,
		opacity: 0.5
	});
	expect(paint([line(1), line(2)])).toHaveLength(2);
});

test('a line never gets thinner than a pixel', () => {
	expect(
		paint(
			[
				{
					kind: 'polyline',
					points: [
						{ x: 0, y: 0 },
						{ x: 9, y: 0 }
					],
					stroke: 'ink',
					width: 0.4
				}
			],
			0.5
		)
	).toEqual([`stroke ${palette.ink} 2 [M 0 0, L 9 0]`]);
});

test('text lies on its baseline, its halo behind it', () => {
	expect(paint([{ kind: 'text', x: 5, y: 10, text: 'F3', size: 10, halo: 'paper', fill: 'ink' }])).toEqual([
		`halo ${palette.paper} 3 "F3"`,
		`text ${palette.ink} "F3" 5 13.5`
	]);
});

test('text too small to read is left out', () => {
	expect(paint([{ kind: 'text', x: 5, y: 10, text: 'F3', size: 10 }], 0.2)).toEqual([]);
});

test('details too small to see are left out, whatever they are joined with is not', () => {
	const speck: Primitive = { kind: 'circle', x: 0, y: 0, r: 1, fill: 'metal' };
	expect(paint([speck], 1)).toHaveLength(1);
	expect(paint([speck], 0.5)).toEqual([]);
	const line = (length: number): Primitive => ({
		kind: 'polyline',
		points: [
			{ x: 0, y: 0 },
			{ x: length, y: 0 }
		],
		stroke: 'ink',
		width: 1
	});
	expect(paint([line(1), line(50)], 0.5)).toEqual([`stroke ${palette.ink} 2 [M 0 0, L 1 0, M 0 0, L 50 0]`]);
});

test('what was compiled once is painted again without new paths', () => {
	let paths = 0;
	const painter = new Painter(() => {
		paths++;
		return new FakePath();
	});
	const primitives: Primitive[] = [{ kind: 'circle', x: 0, y: 0, r: 1, fill: 'ink' }];
	for (let i = 0; i < 3; i++) painter.paint(fakeContext().context, primitives, { palette, zoom: 1 });
	expect(paths).toBe(1);
});

test('each theme paints the same primitives in its own colours', () => {
	const primitives: Primitive[] = [{ kind: 'rect', x: 0, y: 0, w: 9, h: 9, fill: 'case' }];
	const painter = new Painter(() => new FakePath());
	const fills = (['light', 'dark'] as const).map((theme) => {
		const { trace, context } = fakeContext();
		painter.paint(context, primitives, { palette: PALETTES[theme], zoom: 1 });
		return trace[0];
	});
	expect(fills).toEqual([`fill ${PALETTES.light.case} [rect 0 0 9 9]`, `fill ${PALETTES.dark.case} [rect 0 0 9 9]`]);
});
