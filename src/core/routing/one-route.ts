/** The route of one conductor by itself: by its bends set by hand, or along the best path. */
import { samePoint, simplifyOrthogonal, type Point } from '#core/geometry';
import { throughBends } from './hand-set.ts';
import { pathOf, type Around } from './path.ts';
import { stubOf, type Stub } from './stub.ts';
import type { RouteRequest } from './types.ts';

export interface Routed {
	readonly points: readonly Point[];
	readonly from: Stub;
	readonly to: Stub;
}

export function routeOne(request: RouteRequest, around: Around): Routed {
	const from = stubOf(request.from, request.widthMm, around.find);
	const to = stubOf(request.to, request.widthMm, around.find);
	if (hasBends(request)) return { from, to, points: throughBends(from, request.bends!, to, around.find) };
	if (samePoint(from.at, to.at)) return { from, to, points: [from.at, to.at] };
	const path = pathOf(from, to, request.widthMm, around);
	return { from, to, points: simplifyOrthogonal([from.at, ...path, to.at]) };
}

export const hasBends = ({ bends }: RouteRequest): boolean => bends !== null && bends.length > 0;
