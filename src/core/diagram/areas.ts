/**
 * What an area says about the things in it. A part is in the smallest area around its centre; a conductor is in every
 * area where one of its ends or a bend set by hand lies, and the hottest of these counts for all of it.
 */
import { boxContainsPoint, type Box, type Point } from '#core/geometry';
import { has } from './ids.ts';
import { placeOf } from './mounts.ts';
import type { Area, AreaSpace, Conductor, Diagram, PartId } from './schema.ts';

type Areas = Pick<Diagram, 'areas'>;

const sizeOf = ({ widthMm, heightMm }: Area): number => widthMm * heightMm;

export const areaBox = ({ at, widthMm, heightMm }: Pick<Area, 'at' | 'widthMm' | 'heightMm'>): Box => ({
	minX: at.x,
	minY: at.y,
	maxX: at.x + widthMm,
	maxY: at.y + heightMm
});

/** The smallest area around a point, or null. */
export function areaAt({ areas }: Areas, place: Point): Area | null {
	let smallest: Area | null = null;
	for (const area of Object.values(areas))
		if (boxContainsPoint(areaBox(area), place) && (!smallest || sizeOf(area) < sizeOf(smallest))) smallest = area;
	return smallest;
}

export const areaOfPart = (diagram: Pick<Diagram, 'areas' | 'parts' | 'mounts'>, id: PartId): Area | null =>
	Object.keys(diagram.areas).length > 0 && has(diagram.parts, id) ? areaAt(diagram, placeOf(diagram, id)) : null;

/** What is around a conductor. */
export interface Surroundings {
	readonly environment: Conductor['environment'];
	/** Of the air, °C. */
	readonly ambientC: number;
	/** Name of the area that says so; null where the conductor or the diagram does. */
	readonly area: string | null;
}

/** What is set by hand on the conductor comes before any area; an area comes before what holds for the whole diagram. */
export function surroundingsOf(
	diagram: Pick<Diagram, 'areas' | 'parts' | 'mounts' | 'ambient'>,
	{ environment, placedByHand, from, to, bends }: Conductor
): Surroundings {
	const { outsideC, engineSpaceC } = diagram.ambient;
	const own: Surroundings = { environment, ambientC: environment === 'engine-space' ? engineSpaceC : outsideC, area: null };
	if (placedByHand || environment === 'engine-space' || Object.keys(diagram.areas).length === 0) return own;
	const places = [...[from.part, to.part].flatMap((id) => (has(diagram.parts, id) ? [placeOf(diagram, id)] : [])), ...(bends ?? [])];
	const around = places.map((place): Surroundings => {
		const area = areaAt(diagram, place);
		if (!area) return own;
		const isEngine = area.spaces.includes('engine');
		return {
			environment: isEngine ? 'engine-space' : 'outside',
			ambientC: area.ambientC ?? (isEngine ? engineSpaceC : outsideC),
			area: area.label.trim() || null
		};
	});
	return around.reduce(hotter, around[0] ?? own);
}

/** An engine space derates by a factor of its own, so it comes before any temperature. */
function hotter(a: Surroundings, b: Surroundings): Surroundings {
	if (a.environment !== b.environment) return a.environment === 'engine-space' ? a : b;
	return b.ambientC > a.ambientC ? b : a;
}

/** Temperature of the air around a part, °C. */
export function airAroundC(diagram: Pick<Diagram, 'areas' | 'parts' | 'mounts' | 'ambient'>, id: PartId, isEngineSpace: boolean): number {
	return areaOfPart(diagram, id)?.ambientC ?? (isEngineSpace ? diagram.ambient.engineSpaceC : diagram.ambient.outsideC);
}

/** What a part's place is, by the area it is in. */
export const spacesOfPart = (diagram: Pick<Diagram, 'areas' | 'parts' | 'mounts'>, id: PartId): readonly AreaSpace[] =>
	areaOfPart(diagram, id)?.spaces ?? [];
