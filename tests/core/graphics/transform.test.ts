import { describe, expect, test } from 'vitest';
import { block, boundsOf, circle, placePrimitives, polyline, rect, text } from '#core/graphics';

describe('placing primitives', () => {
	test('a quarter turn is clockwise, then the move', () => {
		const [moved] = placePrimitives([circle(10, 0, 2, {})], { x: 100, y: 50 }, 90);
		expect(moved).toMatchObject({ x: 100, y: 60, r: 2 });
	});

	test('a rectangle stays a rectangle', () => {
		const [moved] = placePrimitives([rect(0, 0, 10, 4, {})], { x: 0, y: 0 }, 90);
		expect(moved).toMatchObject({ x: -4, y: 0, w: 4, h: 10 });
	});

	test('four quarter turns give the first picture', () => {
		const picture = [
			rect(1, 2, 3, 4, { fill: 'case' }),
			polyline(
				[
					{ x: 1, y: 2 },
					{ x: 3, y: -4 }
				],
				{ stroke: 'ink' }
			),
			text(5, 6, 'F1', 4)
		];
		let turned = picture;
		for (let turn = 0; turn < 4; turn++) turned = placePrimitives(turned, { x: 0, y: 0 }, 90);
		expect(turned).toEqual(picture);
	});

	test('text keeps to its side of the part in a half turn, unless it is to stay as it is', () => {
		const label = text(5, 0, 'F1', 4, { align: 'start' });
		expect(placePrimitives([label], { x: 0, y: 0 }, 180)[0]).toMatchObject({ x: -5, align: 'end' });
		expect(placePrimitives([{ ...label, upright: true } as typeof label], { x: 0, y: 0 }, 180)[0]).toMatchObject({ x: -5, align: 'start' });
	});
});

describe('bounds', () => {
	test('reach to the outer edge of strokes', () => {
		expect(boundsOf([block(0, 0, 10, 10, { stroke: 'ink', width: 2 })])).toEqual({ minX: -6, minY: -6, maxX: 6, maxY: 6 });
		expect(boundsOf([block(0, 0, 10, 10, { fill: 'ink', width: 2 })])).toEqual({ minX: -5, minY: -5, maxX: 5, maxY: 5 });
	});

	test('hold text by its alignment', () => {
		const box = boundsOf([text(0, 0, 'long words', 10, { align: 'end' })]);
		expect(box.maxX).toBe(0);
		expect(box.minX).toBeLessThan(-40);
	});
});
