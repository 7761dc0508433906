/** Where a note's leader ends: on the near edge of a part, or in the middle of a conductor. */
import type { Diagram, Note } from '#core/diagram';
import { boxCentre, pointAtFraction, type Box, type Point } from '#core/geometry';
import { partBox } from '#core/layout';
import type { Routes } from '#core/routing';
import { noteBox } from './note.ts';

export function leaderEnd(diagram: Diagram, note: Note, routes: Routes): Point | null {
	if (!note.to) return null;
	if (note.to.kind === 'conductor') {
		const route = routes.get(note.to.id);
		return route ? pointAtFraction(route, 0.5) : null;
	}
	const body = partBox(diagram, note.to.id);
	return body ? edgeToward(body, boxCentre(noteBox(note))) : null;
}

/** Where the line from the middle of a box to a point leaves the box. */
function edgeToward(box: Box, to: Point): Point {
	const from = boxCentre(box);
	const [dx, dy] = [to.x - from.x, to.y - from.y];
	const reach = Math.max(Math.abs(dx) / ((box.maxX - box.minX) / 2 || 1), Math.abs(dy) / ((box.maxY - box.minY) / 2 || 1));
	return reach <= 1 ? from : { x: from.x + dx / reach, y: from.y + dy / reach };
}
