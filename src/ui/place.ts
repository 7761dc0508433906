import { boxesIntersect, inflateBox, rotateBox, translateBox, type Box, type Point } from '#core/geometry';
import type { Part } from '#core/diagram';
import { describe, newParams } from '#core/parts';
import type { Workbench } from './context.ts';

/** Room for lugs and labels between parts that were not placed by hand. */
const CLEAR_MM = 40;
const STEP_MM = 50;
/** Rings searched around the middle: as far as a full sheet. */
const RINGS = 40;

const bodyOf = (part: Part): Box => translateBox(rotateBox(describe(part).box, part.rotation), part.at);

/** Puts a part in the middle of what can be seen, or as near to it as there is room. */
export function placeInMiddle({ editor, view }: Workbench, partKind: string): void {
	const middle = view.canvas?.toDiagram(view.coverage.middle()) ?? { x: 0, y: 0 };
	const taken = Object.values(editor.diagram.parts).map(bodyOf);
	const body = (at: Point) =>
		inflateBox(bodyOf({ kind: partKind, label: '', at: { ...at }, rotation: 0, params: newParams(partKind), note: '' }), CLEAR_MM);
	const free = (at: Point) => !taken.some((other) => boxesIntersect(other, body(at)));
	editor.placePart(partKind, nearest(middle, free));
}

/** The nearest place in square rings around the middle that will do; the middle itself when none does. */
function nearest(middle: Point, will: (at: Point) => boolean): Point {
	for (let ring = 0; ring <= RINGS; ring += 1) {
		for (let x = -ring; x <= ring; x += 1) {
			const edge = Math.abs(x) === ring ? Array.from({ length: 2 * ring + 1 }, (_, i) => i - ring) : [-ring, ring];
			const found = edge.map((y) => ({ x: middle.x + x * STEP_MM, y: middle.y + y * STEP_MM })).find(will);
			if (found) return found;
		}
	}
	return middle;
}
