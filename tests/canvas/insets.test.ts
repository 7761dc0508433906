import { expect, test } from 'vitest';
import { fitBox, revealBox, toScreen, withinInsets } from '../../src/canvas/viewport.ts';

const insets = { left: 250, top: 50, right: 340, bottom: 40 };
const size = { width: 1440, height: 900 };
const start = { x: 0, y: 0, zoom: 1 };

test('a drawing is fitted between the panels', () => {
	const box = { minX: -500, minY: -200, maxX: 900, maxY: 300 };
	const view = withinInsets(insets, size, start, (_, free) => fitBox(box, free));
	const from = toScreen(view, { x: box.minX, y: box.minY });
	const to = toScreen(view, { x: box.maxX, y: box.maxY });
	expect(from.x).toBeGreaterThanOrEqual(insets.left);
	expect(from.y).toBeGreaterThanOrEqual(insets.top);
	expect(to.x).toBeLessThanOrEqual(size.width - insets.right);
	expect(to.y).toBeLessThanOrEqual(size.height - insets.bottom);
	expect((from.x + to.x) / 2).toBeCloseTo((insets.left + size.width - insets.right) / 2);
});

test('what lies under a panel is brought out, and what can be seen stays', () => {
	const under = { minX: 10, minY: 400, maxX: 60, maxY: 440 };
	const moved = withinInsets(insets, size, start, (view, free) => revealBox(view, under, free));
	expect(toScreen(moved, { x: under.minX, y: 0 }).x).toBeGreaterThan(insets.left);
	expect(moved.zoom).toBe(1);

	const open = { minX: 600, minY: 400, maxX: 650, maxY: 440 };
	expect(withinInsets(insets, size, start, (view, free) => revealBox(view, open, free))).toBe(start);
});

test('panels wider than the window leave a pixel, not less than nothing', () => {
	const seen: number[] = [];
	withinInsets({ left: 800, top: 0, right: 800, bottom: 0 }, size, start, (view, free) => {
		seen.push(free.width);
		return view;
	});
	expect(seen).toEqual([1]);
});
