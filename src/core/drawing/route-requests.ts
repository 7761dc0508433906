import type { Diagram } from '#core/diagram';
import { cableDiameterMm } from '#core/conductors';
import { partBox, placedTerminal } from '#core/layout';
import type { Obstacle, RouteRequest } from '#core/routing';

/** What the router needs: every conductor whose two ends exist, and every part's body. */
export function routeRequests(diagram: Diagram): { requests: RouteRequest[]; obstacles: Obstacle[] } {
	const requests = Object.entries(diagram.conductors).flatMap(([id, { from, to, gauge, bends }]) => {
		const a = placedTerminal(diagram, from);
		const b = placedTerminal(diagram, to);
		if (!a || !b) return [];
		return [{ id, from: { at: a.at, side: a.side }, to: { at: b.at, side: b.side }, bends, widthMm: cableDiameterMm(gauge) }];
	});
	const obstacles = Object.keys(diagram.parts).map((id) => ({ id, box: partBox(diagram, id)! }));
	return { requests, obstacles };
}
