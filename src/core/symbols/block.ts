/** A converter's square in the middle of its part, with a lead to each terminal. */
import type { Box, Point } from '#core/geometry';
import { placePrimitives, type Primitive } from '#core/graphics';
import type { Terminal } from '#core/parts';
import { lead } from './ink.ts';
import type { Glyph } from './way.ts';

const MOST_MM = 70;

/** @param area where the square may lie */
export function block(glyph: Glyph, terminals: readonly Terminal[], area: Box): Primitive[] {
	const size = Math.min(MOST_MM, (area.maxX - area.minX) * 0.5, (area.maxY - area.minY) * 0.8);
	const centre = { x: (area.minX + area.maxX) / 2, y: (area.minY + area.maxY) / 2 };
	const left = terminals.filter(({ at }) => at.x < centre.x).toSorted((a, b) => a.at.x - b.at.x);
	const right = terminals.filter(({ at }) => at.x >= centre.x).toSorted((a, b) => b.at.x - a.at.x);
	const leads = [left, right].flatMap((side) =>
		side.map(({ at }, index): Primitive => {
			const inside = Math.abs(at.x - centre.x) < size / 2;
			if (inside) return lead(at, { x: at.x, y: edgeY(centre, size, at) });
			const y = centre.y + size * (((index + 1) / (side.length + 1)) * 0.9 - 0.45);
			return lead(at, { x: at.x, y }, { x: centre.x + (at.x < centre.x ? -size / 2 : size / 2), y });
		})
	);
	return [...leads, ...placePrimitives(glyph(size), centre, 0)];
}

const edgeY = (centre: Point, size: number, at: Point): number => centre.y + (at.y > centre.y ? size / 2 : -size / 2);
