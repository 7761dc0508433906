import { describe, expect, test } from 'vitest';
import { composeScene } from '#core/drawing';
import { pointAtFraction } from '#core/geometry';
import { PALETTES } from '#core/graphics';
import { markAt, placeMarks } from '../../src/canvas/marks.ts';
import { paintMark } from '../../src/canvas/paint/mark.ts';
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

describe('placing', () => {
	test('a conductor is marked in its middle, a part at its corner, a stud beside it', () => {
		const marks = placeMarks(
			[
				finding('a', 'error', [{ kind: 'conductor', id: 'W1' }]),
				finding('b', 'error', [{ kind: 'part', id: 'W1' }]),
				finding('c', 'error', [{ kind: 'stud', id: 'B1.neg' }])
			],
			index,
			view
		);
		const at = (key: string) => marks.find(({ findings }) => findings[0]!.key === key)!.at;
		const middle = pointAtFraction(scene.items.get('conductor:W1')!.route!, 0.5);
		expect(at('a')).toEqual({ x: middle.x * 0.5 + 50, y: middle.y * 0.5 + 20 });
		const body = scene.items.get('part:W1')!.body!;
		expect(at('b')).toEqual({ x: body.maxX * 0.5 + 50, y: body.minY * 0.5 + 20 });
		const stud = index.stud('stud:B1.neg')!.at;
		expect(at('c').x).toBeGreaterThan(stud.x * 0.5 + 50);
		expect(at('c').y).toBeLessThan(stud.y * 0.5 + 20);
	});

	test('several findings on one place make one mark with the worst on top', () => {
		const marks = placeMarks(
			[
				finding('a', 'note', [{ kind: 'part', id: 'B1' }]),
				finding('b', 'fatal', [{ kind: 'part', id: 'B1' }]),
				finding('c', 'warning', [{ kind: 'part', id: 'B1' }])
			],
			index,
			view
		);
		expect(marks).toHaveLength(1);
		expect(marks[0]!.severity).toBe('fatal');
		expect(marks[0]!.findings.map(({ key }) => key)).toEqual(['b', 'c', 'a']);
	});

	test('far out, neighbours run together and a click selects all their places', () => {
		const findings = [finding('a', 'error', [{ kind: 'part', id: 'B1' }]), finding('b', 'note', [{ kind: 'part', id: 'W1' }])];
		expect(placeMarks(findings, index, view)).toHaveLength(2);
		const together = placeMarks(findings, index, { ...view, zoom: 0.01 });
		expect(together).toHaveLength(1);
		expect(together[0]!.selects).toEqual(['part:B1', 'part:W1']);
	});

	test('findings about the diagram as a whole or about things that are gone have no mark', () => {
		const marks = placeMarks(
			[
				finding('a', 'error', [{ kind: 'diagram', id: '' }]),
				finding('b', 'error', [{ kind: 'part', id: 'gone' }]),
				finding('c', 'error', [])
			],
			index,
			view
		);
		expect(marks).toEqual([]);
	});

	test('a click selects the first subject alone, so that its details are shown', () => {
		const subjects = [
			{ kind: 'part', id: 'B1' },
			{ kind: 'part', id: 'W1' }
		] as const;
		expect(placeMarks([finding('a', 'error', subjects)], index, view)[0]!.selects).toEqual(['part:B1']);
	});

	test('the worst lies on top and is picked first', () => {
		const marks = placeMarks(
			[finding('a', 'fatal', [{ kind: 'part', id: 'B1' }]), finding('b', 'note', [{ kind: 'part', id: 'W1' }])],
			index,
			view
		);
		expect(marks.at(-1)!.severity).toBe('fatal');
		expect(markAt(marks, marks[0]!.at)?.severity).toBe('note');
		expect(markAt(marks, { x: -500, y: -500 })).toBeNull();
	});
});

describe('painting', () => {
	const paint = (severity: 'fatal' | 'error' | 'warning' | 'note', count = 1) => {
		const { trace, context } = fakeContext();
		const findings = Array.from({ length: count }, (_, i) => finding(String(i), severity, []));
		paintMark(context, { at: { x: 0, y: 0 }, radiusPx: 10, severity, findings, selects: [] }, PALETTES.light, 'plain');
		return trace;
	};
	/** Corners of the mark's own outline, or "round". */
	const shape = (trace: string[]): number | 'round' => {
		const outline = trace.find((call) => call.startsWith('fill'))!;
		return outline.includes('arc') ? 'round' : outline.split(/[ML] /).length - 1;
	};

	test('severities differ in outline, not only in colour', () => {
		expect({
			fatal: shape(paint('fatal')),
			error: shape(paint('error')),
			warning: shape(paint('warning')),
			note: shape(paint('note'))
		}).toEqual({
			fatal: 8,
			error: 3,
			warning: 4,
			note: 'round'
		});
	});

	test('each carries its sign', () => {
		const sign = (trace: string[]) => trace.find((call) => call.startsWith('text'))!.match(/"(.+)"/)![1];
		expect([sign(paint('fatal')), sign(paint('error')), sign(paint('warning')), sign(paint('note'))]).toEqual(['!', '!', '!', 'i']);
	});

	test('several show their number', () => {
		expect(paint('error', 3).some((call) => call.includes('"3"'))).toBe(true);
		expect(paint('error', 12).some((call) => call.includes('"9+"'))).toBe(true);
		expect(paint('error', 1).filter((call) => call.startsWith('text'))).toHaveLength(1);
	});
});
