import { rotateBox, rotatePoint, type Point, type QuarterTurn } from '#core/geometry';
import type { Primitive } from './primitives.ts';

/** Text is turned with the drawing by exchanging its alignment; it is never set on its side. */
const TURNED_ALIGN = { start: 'end', middle: 'middle', end: 'start' } as const;

/**
 * Turns primitives about (0, 0) and moves them. Text stays horizontal: a quarter turn moves it, a half turn
 * exchanges left and right alignment, unless it is marked `upright`, when it keeps its alignment too.
 */
export function placePrimitives(primitives: readonly Primitive[], at: Point, turn: QuarterTurn): Primitive[] {
	return primitives.map((primitive) => placePrimitive(primitive, at, turn));
}

function placePrimitive(primitive: Primitive, at: Point, turn: QuarterTurn): Primitive {
	const placed = (point: Point): Point => {
		const { x, y } = rotatePoint(point, turn);
		return { x: x + at.x, y: y + at.y };
	};
	switch (primitive.kind) {
		case 'rect': {
			const { x, y, w, h } = primitive;
			const box = rotateBox({ minX: x, minY: y, maxX: x + w, maxY: y + h }, turn);
			return { ...primitive, x: box.minX + at.x, y: box.minY + at.y, w: box.maxX - box.minX, h: box.maxY - box.minY };
		}
		case 'circle':
			return { ...primitive, ...placed(primitive) };
		case 'polyline':
			return { ...primitive, points: primitive.points.map(placed) };
		case 'text': {
			const align = primitive.align ?? 'start';
			const turned = turn === 180 && !primitive.upright ? TURNED_ALIGN[align] : align;
			return { ...primitive, ...placed(primitive), align: turned };
		}
	}
}
