import { expect, test } from 'vitest';
import fc from 'fast-check';
import {
	MAX_ZOOM,
	MIN_ZOOM,
	between,
	fitBox,
	panBy,
	revealBox,
	toDrawing,
	toScreen,
	visibleBox,
	zoomAbout,
	type View
} from '../../src/canvas/viewport.ts';

const size = { width: 1000, height: 600 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const view: fc.Arbitrary<View> = fc.record({ x: number(-2000, 2000), y: number(-2000, 2000), zoom: number(MIN_ZOOM, MAX_ZOOM) });
const point = fc.record({ x: number(-3000, 3000), y: number(-3000, 3000) });

test('screen and drawing coordinates are inverse', () => {
	fc.assert(
		fc.property(view, point, (v, p) => {
			const back = toDrawing(v, toScreen(v, p));
			expect(back.x).toBeCloseTo(p.x, 6);
			expect(back.y).toBeCloseTo(p.y, 6);
		})
	);
});

test('zooming keeps the point under the pointer, also at the limits', () => {
	fc.assert(
		fc.property(view, point, number(0.01, 100), (v, pointer, factor) => {
			const before = toDrawing(v, pointer);
			const zoomed = zoomAbout(v, pointer, factor);
			const after = toScreen(zoomed, before);
			expect(after.x).toBeCloseTo(pointer.x, 4);
			expect(after.y).toBeCloseTo(pointer.y, 4);
			expect(zoomed.zoom).toBeGreaterThanOrEqual(MIN_ZOOM);
			expect(zoomed.zoom).toBeLessThanOrEqual(MAX_ZOOM);
		})
	);
});

test('zooming in and out again returns to the view', () => {
	const v = { x: 13, y: -40, zoom: 0.7 };
	const back = zoomAbout(zoomAbout(v, { x: 300, y: 200 }, 1.25), { x: 300, y: 200 }, 1 / 1.25);
	expect(back.x).toBeCloseTo(v.x, 9);
	expect(back.y).toBeCloseTo(v.y, 9);
	expect(back.zoom).toBeCloseTo(v.zoom, 12);
});

test('panning moves every point alike', () => {
	const v = { x: 5, y: 6, zoom: 2 };
	expect(toScreen(panBy(v, 30, -8), { x: 10, y: 10 })).toEqual({ x: 55, y: 18 });
});

test('fit centres the box, shows all of it, and leaves the margin', () => {
	const box = { minX: -100, minY: 50, maxX: 900, maxY: 300 };
	const v = fitBox(box, size, 50);
	expect(v.zoom).toBeCloseTo(0.9, 9);
	expect(toScreen(v, { x: 400, y: 175 })).toEqual({ x: 500, y: 300 });
	expect(toScreen(v, { x: -100, y: 50 }).x).toBeCloseTo(50, 9);
});

test('a small part is not blown up to fill the window', () => {
	expect(fitBox({ minX: 0, minY: 0, maxX: 30, maxY: 20 }, size).zoom).toBe(2);
});

test('a drawing without extent fits without dividing by zero', () => {
	expect(fitBox({ minX: 7, minY: 7, maxX: 7, maxY: 7 }, size)).toEqual({ x: 486, y: 286, zoom: 2 });
});

test('revealing what shows already changes nothing', () => {
	const v = { x: 0, y: 0, zoom: 1 };
	expect(revealBox(v, { minX: 100, minY: 100, maxX: 300, maxY: 200 }, size)).toBe(v);
});

test('revealing what is off the screen centres it at the same zoom', () => {
	const v = { x: 0, y: 0, zoom: 1 };
	const revealed = revealBox(v, { minX: 5000, minY: 5000, maxX: 5100, maxY: 5100 }, size);
	expect(revealed.zoom).toBe(1);
	expect(toScreen(revealed, { x: 5050, y: 5050 })).toEqual({ x: 500, y: 300 });
});

test('revealing something too large zooms out until it fits, and never in', () => {
	const huge = { minX: 0, minY: 0, maxX: 4000, maxY: 1000 };
	const revealed = revealBox({ x: 0, y: 0, zoom: 4 }, huge, size);
	expect(revealed.zoom).toBeCloseTo((1000 - 96) / 4000, 9);
	expect(revealBox({ x: 90000, y: 0, zoom: 0.05 }, huge, size).zoom).toBe(0.05);
});

test('the visible box is what lies between the corners of the screen', () => {
	const v = { x: 100, y: -50, zoom: 0.5 };
	expect(visibleBox(v, size)).toEqual({ minX: -200, minY: 100, maxX: 1800, maxY: 1300 });
	expect(visibleBox(v, size, 10)).toEqual({ minX: -220, minY: 80, maxX: 1820, maxY: 1320 });
});

test('gliding starts and ends where it should', () => {
	fc.assert(
		fc.property(view, view, (a, b) => {
			const start = between(a, b, 0);
			const end = between(a, b, 1);
			for (const key of ['x', 'y', 'zoom'] as const) {
				expect(start[key]).toBeCloseTo(a[key], 4);
				expect(end[key]).toBeCloseTo(b[key], 4);
			}
		})
	);
});
