/** Snapping to a grid through the origin. */
import type { Point } from './point.ts';

/** The nearest multiple of `pitch`; unchanged when the pitch is 0 or less (no grid). */
export const snap = (value: number, pitch: number): number => (pitch > 0 ? Math.round(value / pitch) * pitch + 0 : value);

export const snapPoint = (point: Point, pitch: number): Point => ({ x: snap(point.x, pitch), y: snap(point.y, pitch) });
