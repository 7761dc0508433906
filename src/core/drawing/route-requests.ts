import type { Conductor, ConductorId, Diagram, Part } from '#core/diagram';
import { cableDiameterMm } from '#core/conductors';
import { partBox, placedTerminal, sideToward, type PlacedTerminal } from '#core/layout';
import type { Obstacle, RouteRequest } from '#core/routing';

/** What the router needs: every conductor whose two ends exist, and every part's body. */
export function routeRequests(diagram: Diagram): { requests: RouteRequest[]; obstacles: Obstacle[] } {
	const requests: RouteRequest[] = [];
	for (const [id, conductor] of Object.entries(diagram.conductors)) {
		const { request } = placedConductor(diagram, id, conductor);
		if (request) requests.push(request);
	}
	const obstacles = Object.entries(diagram.parts).map(([id, part]) => obstacleOf(diagram, id, part));
	return { requests, obstacles };
}

/** A conductor where it is on the drawing. */
export interface PlacedConductor {
	readonly from: PlacedTerminal | undefined;
	readonly to: PlacedTerminal | undefined;
	/** Null unless both ends exist. */
	readonly request: RouteRequest | null;
}

// Parts and conductors are never changed in place: what was worked out from the same ones is still right. Only a
// mounted block's place depends on another part, so nothing is kept for that.
const placed = new WeakMap<Conductor, { id: ConductorId; fromPart: Part; toPart: Part; result: PlacedConductor }>();
const obstacles = new WeakMap<Part, Obstacle>();

export function placedConductor(diagram: Diagram, id: ConductorId, conductor: Conductor): PlacedConductor {
	const fromPart = diagram.parts[conductor.from.part];
	const toPart = diagram.parts[conductor.to.part];
	const known = placed.get(conductor);
	const standsAlone = !isMounted(diagram, conductor.from.part) && !isMounted(diagram, conductor.to.part);
	if (standsAlone && known && known.id === id && known.fromPart === fromPart && known.toPart === toPart) return known.result;
	const result = placeConductor(diagram, id, conductor);
	if (standsAlone && result.request && fromPart && toPart) placed.set(conductor, { id, fromPart, toPart, result });
	return result;
}

function placeConductor(diagram: Diagram, id: ConductorId, { from, to, gauge, bends }: Conductor): PlacedConductor {
	const a = placedTerminal(diagram, from);
	const b = placedTerminal(diagram, to);
	if (!a || !b) return { from: a, to: b, request: null };
	const firstBend = bends?.[0] ?? b.at;
	const lastBend = bends?.at(-1) ?? a.at;
	const request = {
		id,
		from: { at: a.at, side: sideToward(a, firstBend) },
		to: { at: b.at, side: sideToward(b, lastBend) },
		bends,
		widthMm: cableDiameterMm(gauge)
	};
	return { from: a, to: b, request };
}

function obstacleOf(diagram: Diagram, id: string, part: Part): Obstacle {
	if (isMounted(diagram, id)) return { id, box: partBox(diagram, id)! };
	const known = obstacles.get(part);
	if (known?.id === id) return known;
	const obstacle = { id, box: partBox(diagram, id)! };
	obstacles.set(part, obstacle);
	return obstacle;
}

const isMounted = ({ mounts }: Diagram, id: string): boolean => Object.hasOwn(mounts, id);
