import type { Diagram } from '#core/diagram';
import { cableDiameterMm } from '#core/conductors';
import { partBox, placedTerminal, sideToward } from '#core/layout';
import type { Obstacle, RouteRequest } from '#core/routing';

/** What the router needs: every conductor whose two ends exist, and every part's body. */
export function routeRequests(diagram: Diagram): { requests: RouteRequest[]; obstacles: Obstacle[] } {
	const requests = Object.entries(diagram.conductors).flatMap(([id, { from, to, gauge, bends }]) => {
		const a = placedTerminal(diagram, from);
		const b = placedTerminal(diagram, to);
		if (!a || !b) return [];
		const firstBend = bends?.[0] ?? b.at;
		const lastBend = bends?.at(-1) ?? a.at;
		return [
			{
				id,
				from: { at: a.at, side: sideToward(a, firstBend) },
				to: { at: b.at, side: sideToward(b, lastBend) },
				bends,
				widthMm: cableDiameterMm(gauge)
			}
		];
	});
	const obstacles = Object.keys(diagram.parts).map((id) => ({ id, box: partBox(diagram, id)! }));
	return { requests, obstacles };
}
