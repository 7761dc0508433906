import { describe, expect, test } from 'vitest';
import type { Diagram, ItemKey } from '#core/diagram';
import { circuit } from '../support/circuit.ts';
import { hands, type Hands } from './support/hands.ts';

const base = circuit({ E1: ['load', {}, { at: { x: 400, y: 300 } }], E2: ['load', {}, { at: { x: 900, y: 300 } }] }, [
	['E1.pos', 'E2.neg', { id: 'W1' }]
]);
const area = { label: 'Bay', at: { x: 200, y: 100 }, widthMm: 400, heightMm: 400, spaces: [], ambientC: null };
const note = { text: 'Seal', at: { x: 700, y: 600 }, widthMm: 120, to: null };
const drawn: Diagram = { ...base, areas: { A1: area }, notes: { N1: note } };
const plus = (at: { x: number; y: number }, x: number, y: number) => ({ x: at.x + x, y: at.y + y });
const selected = (h: Hands): readonly ItemKey[] => [...h.selection];

describe('an area under the pointer', () => {
	test('is taken by its edge and by its name; what is inside belongs to the parts', () => {
		const h = hands(drawn);
		h.click({ x: 200, y: 350 });
		expect(selected(h)).toEqual(['area:A1']);
		h.click({ x: 300, y: 450 });
		expect(selected(h)).toEqual([]);
		h.click({ x: 225, y: 118 });
		expect(selected(h)).toEqual(['area:A1']);
		h.click(h.point('part:E1'));
		expect(selected(h)).toEqual(['part:E1']);
	});

	test('dragged by its edge it moves alone, on the grid, as one step', () => {
		const h = hands(drawn);
		h.drag({ x: 200, y: 350 }, { x: 263, y: 348 });
		expect(h.diagram.areas['A1']!.at).toEqual({ x: 265, y: 100 });
		expect(h.diagram.parts).toEqual(drawn.parts);
		expect(h.log).toEqual(['move 1 area']);
	});

	test('pulled at a corner it changes its size, the opposite corner stays', () => {
		const h = hands(drawn);
		h.set({ selection: new Set<ItemKey>(['area:A1']) });
		h.drag({ x: 600, y: 500 }, { x: 700, y: 650 });
		expect(h.diagram.areas['A1']).toMatchObject({ at: { x: 200, y: 100 }, widthMm: 500, heightMm: 550 });
		h.drag({ x: 200, y: 100 }, { x: 9000, y: 9000 });
		expect(h.diagram.areas['A1']).toMatchObject({ widthMm: 20, heightMm: 20 });
	});

	test('locked, it stays and says why', () => {
		const h = hands({ ...drawn, areas: { A1: { ...area, locked: true } } });
		h.press({ x: 200, y: 350 });
		h.move({ x: 230, y: 350 });
		h.move({ x: 260, y: 350 });
		expect(h.desk.overlay.tag!.text).toBe('Bay is locked. Unlock it first.');
		h.release({ x: 260, y: 350 });
		expect(h.diagram.areas['A1']!.at).toEqual(area.at);
	});
});

describe('a note', () => {
	test('is taken anywhere on its card and moved', () => {
		const h = hands(drawn);
		h.drag({ x: 750, y: 615 }, { x: 800, y: 640 });
		expect(h.diagram.notes['N1']!.at).toEqual({ x: 750, y: 625 });
	});

	test('follows with its leader while the part it points at is dragged', () => {
		const h = hands({ ...drawn, notes: { N1: { ...note, to: { kind: 'part', id: 'E2' } } } });
		h.press(h.point('part:E2'));
		h.move(plus(h.point('part:E2'), 50, 0));
		h.move(plus(h.point('part:E2'), 90, 40));
		expect(h.desk.dragged!.items.has('note:N1')).toBe(true);
	});
});

describe('a group', () => {
	const grouped: Diagram = {
		...drawn,
		parts: { E1: { ...drawn.parts['E1']!, group: 'G1' }, E2: drawn.parts['E2']! },
		areas: { A1: { ...area, group: 'G1' } }
	};

	test('is selected by any of its members, and by a second click the one thing', () => {
		const h = hands(grouped);
		h.click(h.point('part:E1'));
		expect(selected(h).toSorted()).toEqual(['area:A1', 'part:E1']);
	});

	test('moves as one, in one step', () => {
		const h = hands(grouped);
		h.set({ aids: { grid: true, guides: false } });
		h.drag(h.point('part:E1'), plus(h.point('part:E1'), 100, 0));
		expect([h.diagram.parts['E1']!.at.x, h.diagram.areas['A1']!.at.x]).toEqual([500, 300]);
		expect(h.log).toHaveLength(1);
	});
});

describe('what is locked', () => {
	test('a part says so and stays', () => {
		const h = hands({ ...drawn, parts: { ...drawn.parts, E1: { ...drawn.parts['E1']!, locked: true } } });
		const at = h.point('part:E1');
		h.press(at);
		h.move(plus(at, 40, 0));
		expect(h.desk.overlay.tag!.text).toBe('E1 is locked. Unlock it first.');
		h.release(plus(at, 40, 0));
		expect(h.log).toEqual([]);
	});

	test('a conductor keeps its route and its ends', () => {
		const h = hands({ ...drawn, conductors: { W1: { ...drawn.conductors['W1']!, locked: true } } });
		const at = h.point('conductor:W1');
		h.drag(at, plus(at, 0, 60));
		expect(h.diagram.conductors['W1']!.bends).toBeNull();
		expect(h.log).toEqual([]);
	});
});

describe('drawing by hand', () => {
	test('an area from corner to corner, or of a usual size by a click', () => {
		const h = hands(base);
		const boxes: unknown[] = [];
		h.desk.host.drawArea = (box) => boxes.push(box);
		h.setTool({ kind: 'area', like: { label: 'Bay', spaces: [], ambientC: null } });
		h.drag({ x: 101, y: 99 }, { x: 398, y: 301 });
		h.click({ x: 1000, y: 1000 });
		expect(boxes).toEqual([
			{ minX: 100, minY: 100, maxX: 400, maxY: 300 },
			{ minX: 700, minY: 800, maxX: 1300, maxY: 1200 }
		]);
	});

	test('a note by a click, or from a part to where it is to stand', () => {
		const h = hands(base);
		const notes: unknown[] = [];
		h.desk.host.writeNote = (at, about) => notes.push([Math.round(at.x), about]);
		h.setTool({ kind: 'note' });
		h.click({ x: 100, y: 900 });
		h.drag(h.point('part:E1'), { x: 150, y: 800 });
		expect(notes).toEqual([
			[100, null],
			[150, { kind: 'part', id: 'E1' }]
		]);
	});

	test('two points of a picture, by two clicks or by a drag', () => {
		const h = hands(base);
		const marked: unknown[] = [];
		h.desk.host.measured = (underlay, from, to) => marked.push([underlay, from.x, to.x]);
		h.setTool({ kind: 'scale', underlay: 'U1' });
		h.click({ x: 100, y: 900 });
		h.move({ x: 200, y: 900 });
		h.click({ x: 300, y: 900 });
		h.drag({ x: 50, y: 50 }, { x: 80, y: 50 });
		expect(marked).toEqual([
			['U1', 100, 300],
			['U1', 50, 80]
		]);
	});
});
