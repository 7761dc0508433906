/** How symbols are drawn: one weight of line, as wide at every size. */
import { circle, polyline, type Primitive } from '#core/graphics';
import type { Point } from '#core/geometry';

export const LINE = { stroke: 'ink', width: 1.3, cap: 'round' } as const;
export const HEAVY = { ...LINE, width: 2.6 } as const;
/** Filled with the ground, so that what lies under a closed shape does not show through. */
export const SHAPE = { ...LINE, fill: 'paper' } as const;

/** Connection inside the part, corner by corner. */
export const lead = (...points: readonly Point[]): Primitive => polyline(points, LINE);

/** Where two lines are joined. */
export const joint = ({ x, y }: Point): Primitive => circle(x, y, 1.6, { fill: 'ink' });
