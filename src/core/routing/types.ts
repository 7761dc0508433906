import type { Box, Point, Side } from '#core/geometry';

/** A conductor to be drawn: orthogonal, leaving each end by its side, around the obstacles. */
export interface RouteRequest {
	readonly id: string;
	readonly from: { readonly at: Point; readonly side: Side };
	readonly to: { readonly at: Point; readonly side: Side };
	/** Bends set by hand; kept as they are, joined orthogonally. */
	readonly bends: readonly Point[] | null;
	/** Drawn width, so that lanes keep their distance. */
	readonly widthMm: number;
}

export interface Obstacle {
	readonly id: string;
	readonly box: Box;
}

/** Route of each request by id, from `from` to `to`, end points included. */
export type Routes = ReadonlyMap<string, readonly Point[]>;
