import { expect, test } from 'vitest';
import { composeScene } from '#core/drawing';
import { pointAtFraction } from '#core/geometry';
import { PALETTES } from '#core/graphics';
import { placeMarks } from '../../src/canvas/marks.ts';
import { paintRemark } from '../../src/canvas/paint/remark.ts';
import { placeRemarks, remarkAt } from '../../src/canvas/remark-marks.ts';
import { SceneIndex } from '../../src/canvas/scene-index.ts';
import { circuit } from '../support/circuit.ts';
import { fakeContext } from './support/fake-context.ts';
import { finding } from './support/hands.ts';

const scene = composeScene(
	circuit({ B1: ['battery', {}, { at: { x: 0, y: 0 } }], W1: ['load', {}, { at: { x: 900, y: 300 } }] }, [['B1.pos', 'W1.pos']])
);
const index = new SceneIndex();
index.update(scene);
const view = { x: 50, y: 20, zoom: 0.5 };

test('remarks stand at a part’s left corner and on a conductor, and never under a finding’s mark', () => {
	const marks = placeRemarks(
		new Map([
			['part:B1', 1],
			['conductor:W1', 2],
			['part:gone', 1]
		]),
		index,
		view,
		10
	);
	expect(marks.map(({ key, count }) => [key, count])).toEqual([
		['part:B1', 1],
		['conductor:W1', 2]
	]);
	const body = scene.items.get('part:B1')!.body!;
	expect(marks[0]!.at).toEqual({ x: body.minX * 0.5 + 50, y: body.minY * 0.5 + 20 });
	const along = pointAtFraction(scene.items.get('conductor:W1')!.route!, 0.35);
	expect(marks[1]!.at).toEqual({ x: along.x * 0.5 + 50, y: along.y * 0.5 + 20 });
	const findings = placeMarks(
		[finding('a', 'error', [{ kind: 'part', id: 'B1' }]), finding('b', 'error', [{ kind: 'conductor', id: 'W1' }])],
		index,
		view
	);
	for (const { at } of findings) expect(remarkAt(marks, at, 0)).toBeNull();
});

test('neighbours run together, and a press finds the one that is there', () => {
	const marks = placeRemarks(
		new Map([
			['part:B1', 1],
			['conductor:W1', 1],
			['part:W1', 1]
		]),
		index,
		{ ...view, zoom: 0.001 },
		10
	);
	expect(marks).toHaveLength(1);
	expect(marks[0]!.count).toBe(3);
	expect(remarkAt(marks, { x: marks[0]!.at.x + 9, y: marks[0]!.at.y - 9 }, 0)).toBe(marks[0]);
	expect(remarkAt(marks, { x: marks[0]!.at.x + 13, y: marks[0]!.at.y }, 0)).toBeNull();
});

test('the mark says how many, in ink on paper', () => {
	const { context, trace } = fakeContext();
	paintRemark(context, { at: { x: 0, y: 0 }, radiusPx: 10, key: 'part:B1', count: 12 }, PALETTES.light);
	expect(trace.join('\n')).toContain('9+');
});
