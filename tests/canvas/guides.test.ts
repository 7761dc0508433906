import { describe, expect, test } from 'vitest';
import { circuit } from '../support/circuit.ts';
import { hands } from './support/hands.ts';

/** Two loads one above the other, 3 mm out of line, and a third far away. */
const bench = () =>
	circuit(
		{
			E1: ['load', {}, { at: { x: 200, y: 200 } }],
			E2: ['load', {}, { at: { x: 600, y: 503 } }],
			E3: ['load', {}, { at: { x: 5000, y: 5000 } }]
		},
		[]
	);
const plus = (at: { x: number; y: number }, x: number, y: number) => ({ x: at.x + x, y: at.y + y });

describe('while a part is dragged', () => {
	test('it falls into line with its neighbour, and the line and its distance are shown until it is let go', () => {
		const h = hands(bench());
		h.press(h.point('part:E1'));
		h.move(plus(h.point('part:E1'), 200, 150));
		h.move(plus(h.point('part:E1'), 118, 300));
		expect(h.desk.overlay.guides!.filter(({ kind }) => kind === 'line').map(({ axis }) => axis)).toContain('y');
		expect(h.desk.overlay.guides!.some(({ kind }) => kind === 'gap')).toBe(true);
		h.release(plus(h.point('part:E1'), 118, 300));
		expect(h.diagram.parts['E1']!.at).toEqual({ x: 320, y: 503 });
		expect(h.desk.overlay.guides).toBeNull();
	});

	test('with Alt held it lies where the hand is', () => {
		const h = hands(bench());
		const at = h.point('part:E1');
		h.press(at);
		h.move(plus(at, 60, 200));
		h.move(plus(at, 118, 301.5), { alt: true });
		expect(h.desk.overlay.guides ?? []).toEqual([]);
		h.release(plus(at, 118, 301.5), { alt: true });
		expect(h.diagram.parts['E1']!.at).toEqual({ x: 318, y: 501.5 });
	});

	test('without guides only the grid counts, without a grid only guides', () => {
		const h = hands(bench());
		const at = h.point('part:E1');
		h.set({ aids: { grid: true, guides: false } });
		h.drag(at, plus(at, 118, 301));
		expect(h.diagram.parts['E1']!.at).toEqual({ x: 320, y: 500 });
		h.set({ diagram: bench(), aids: { grid: false, guides: true } });
		h.drag(at, plus(at, 118, 301));
		expect(h.diagram.parts['E1']!.at).toEqual({ x: 318, y: 503 });
	});

	test('a stud falls on the level of the stud it is wired to', () => {
		const wired = circuit({ B1: ['battery', {}, { at: { x: 200, y: 600 } }], E1: ['load', {}, { at: { x: 900, y: 100 } }] }, [
			['B1.pos', 'E1.pos']
		]);
		const h = hands(wired);
		const level = h.point('stud:B1.pos').y - h.point('stud:E1.pos').y;
		const at = h.point('part:E1');
		h.drag(at, plus(at, 0, level + 3.7));
		expect(h.point('stud:E1.pos').y).toBeCloseTo(h.point('stud:B1.pos').y, 6);
	});
});
