/** Bodies that may be in the way of a conductor, taken from what is drawn. */
import { parseItemKey, type PartId } from '#core/diagram';
import { boxOfPoints, inflateBox } from '#core/geometry';
import type { Obstacle, RouteRequest } from '#core/routing';
import type { SceneIndex } from './scene-index.ts';

/** A drag's routes do not look farther than this for a way around parts. */
const NEARBY_MM = 400;

export function standingNear({ from, to }: Pick<RouteRequest, 'from' | 'to'>, index: SceneIndex, moving?: ReadonlySet<PartId>): Obstacle[] {
	const window = inflateBox(boxOfPoints([from.at, to.at]), NEARBY_MM);
	return index.items.search(window).flatMap((key) => {
		const body = index.scene.items.get(key)?.body;
		const { id } = parseItemKey(key);
		return body && !moving?.has(id) ? [{ id, box: body }] : [];
	});
}
