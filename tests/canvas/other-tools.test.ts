import { describe, expect, test } from 'vitest';
import { circuit } from '../support/circuit.ts';
import { hands } from './support/hands.ts';

const bench = () =>
	circuit({
		B1: ['battery', {}, { at: { x: 200, y: 600 } }],
		D1: ['fused-bus', {}, { at: { x: 700, y: 200 } }]
	});

describe('the connect tool', () => {
	test('joins two studs by two clicks', () => {
		const h = hands(bench());
		h.setTool({ kind: 'connect', from: null });
		h.click(h.point('stud:B1.pos'));
		expect(h.tool).toEqual({ kind: 'connect', from: { part: 'B1', terminal: 'pos' } });
		h.move({ x: 400, y: 300 });
		expect(h.desk.overlay.band?.points[0]).toEqual(h.point('stud:B1.pos'));
		h.click(h.point('stud:D1.L'));
		expect(h.log).toEqual(['connect B1.pos D1.L']);
		expect(h.tool).toEqual({ kind: 'connect', from: null });
		expect(h.desk.overlay.band).toBeNull();
	});

	test('joins two studs by a drag', () => {
		const h = hands(bench());
		h.setTool({ kind: 'connect', from: null });
		h.drag(h.point('stud:B1.neg'), h.point('stud:D1.R'));
		expect(h.log).toEqual(['connect B1.neg D1.R']);
	});

	test('escape first gives up the first stud, then the tool', () => {
		const h = hands(bench());
		h.setTool({ kind: 'connect', from: { part: 'B1', terminal: 'pos' } });
		h.move({ x: 400, y: 300 });
		h.escape();
		expect(h.tool).toEqual({ kind: 'connect', from: null });
		h.escape();
		expect(h.tool).toEqual({ kind: 'select' });
		expect(h.desk.overlay).toMatchObject({ band: null, seeks: null, target: null });
	});

	test('a click on empty ground gives up the first stud', () => {
		const h = hands(bench());
		h.setTool({ kind: 'connect', from: { part: 'B1', terminal: 'pos' } });
		h.click({ x: 900, y: 900 });
		expect(h.tool).toEqual({ kind: 'connect', from: null });
		expect(h.log).toEqual([]);
	});

	test('dragging from empty ground moves the view', () => {
		const h = hands(bench());
		h.setTool({ kind: 'connect', from: null });
		h.drag({ x: 900, y: 900 }, { x: 950, y: 880 });
		expect(h.desk.view).toEqual({ x: 50, y: -20, zoom: 1 });
	});
});

describe('the place tool', () => {
	test('a fuse block over a stud is shown and placed on that stud, as when it is dragged there', () => {
		const h = hands(bench());
		h.setTool({ kind: 'place', partKind: 'fuse-block' });
		h.move(h.point('stud:B1.pos'));
		expect(h.desk.overlay.tag?.text).toBe('mounts here: B1 +');
		expect(h.desk.overlay.ghost).toBeNull();
		expect([...h.desk.dragged!.items.keys()]).toHaveLength(1);
		h.click(h.point('stud:B1.pos'));
		expect(h.log).toEqual(['place fuse-block on B1.pos']);
		expect(h.desk.dragged).toBeNull();
		expect(h.desk.overlay).toMatchObject({ tag: null, target: null, seeks: null });
	});

	test('a fuse block is placed on the stud that a finger taps', () => {
		const h = hands(bench());
		h.setTool({ kind: 'place', partKind: 'fuse-block' });
		const at = h.point('stud:D1.L');
		const finger = {
			id: 7,
			at: { x: at.x + 6, y: at.y + 5 },
			keys: { shift: false, alt: false, ctrl: false },
			device: 'touch',
			timeMs: 1
		} as const;
		h.feed({ kind: 'down', button: 0, space: false, ...finger });
		h.feed({ kind: 'up', ...finger });
		expect(h.log).toEqual(['place fuse-block on D1.L']);
	});

	test('shows the part with its studs under the pointer, on the grid, and places it there', () => {
		const h = hands(bench());
		h.setTool({ kind: 'place', partKind: 'battery' });
		h.move({ x: 402, y: 111 });
		expect(h.desk.overlay.ghost?.at).toEqual({ x: 400, y: 110 });
		expect(h.desk.overlay.ghost!.primitives.length).toBeGreaterThan(2);
		h.click({ x: 402, y: 111 });
		expect(h.log).toEqual(['place battery at 400,110']);
		expect(h.desk.overlay.ghost).toBeNull();
	});

	test('escape leaves it and takes the ghost away', () => {
		const h = hands(bench());
		h.setTool({ kind: 'place', partKind: 'battery' });
		h.move({ x: 402, y: 111 });
		h.escape();
		expect(h.tool).toEqual({ kind: 'select' });
		expect(h.desk.overlay.ghost).toBeNull();
	});

	test('a part this build does not know has no ghost', () => {
		const h = hands(bench());
		h.setTool({ kind: 'place', partKind: 'flux-widget' });
		h.move({ x: 402, y: 111 });
		expect(h.desk.overlay.ghost).toBeNull();
	});
});

describe('the pan tool', () => {
	test('every drag moves the view, also from a part', () => {
		const h = hands(bench());
		h.setTool({ kind: 'pan' });
		h.drag(h.point('part:B1'), { x: h.point('part:B1').x + 30, y: h.point('part:B1').y });
		expect(h.desk.view.x).toBe(30);
		expect(h.log).toEqual([]);
	});
});
