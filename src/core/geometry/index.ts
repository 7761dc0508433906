/** Plane geometry in millimetres: no drawing, no electricity. */
export type { Box, Point, Side } from './point.ts';
