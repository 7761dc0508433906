/** Pushing a straight piece of a conductor sideways: the route is then kept by hand. */
import { parseItemKey, setBends, type ItemKey } from '#core/diagram';
import { distance, pointBetween, simplifyOrthogonal, snap, type Point } from '#core/geometry';
import { GRID_MM } from '../theme.ts';
import type { Desk, Drag } from '../tools/tool.ts';
import { dragCommand } from './command.ts';

const STUB_MM = 15;

export function dragSegment(desk: Desk, key: ItemKey, segment: number): Drag {
	const route = desk.index.scene.items.get(key)!.route!;
	const conductor = parseItemKey(key).id;
	return dragCommand(desk, (pointer) => ({ command: setBends({ conductor, bends: pushed(route, segment, pointer) }) }), 'move');
}

/**
 * The bends of a route whose segment from point `segment` to the next was pushed to the pointer, on the grid.
 * The ends stay on their studs: a first or last segment keeps a short piece there.
 */
export function pushed(route: readonly Point[], segment: number, pointer: Point): Point[] {
	const a = route[segment]!;
	const b = route[segment + 1]!;
	const level = a.y === b.y;
	const push = (at: Point): Point => (level ? { x: at.x, y: snap(pointer.y, GRID_MM) } : { x: snap(pointer.x, GRID_MM), y: at.y });
	const stub = Math.min(0.4, STUB_MM / Math.max(distance(a, b), 1e-9));
	const start = segment === 0 ? [pointBetween(a, b, stub), push(pointBetween(a, b, stub))] : [push(a)];
	const end = segment === route.length - 2 ? [push(pointBetween(b, a, stub)), pointBetween(b, a, stub)] : [push(b)];
	const whole = [
		...route.slice(0, segment === 0 ? 1 : segment),
		...start,
		...end,
		...route.slice(segment === route.length - 2 ? segment + 1 : segment + 2)
	];
	return simplifyOrthogonal(whole).slice(1, -1);
}
