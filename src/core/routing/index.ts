/** Orthogonal routes around parts. */
export type { Obstacle, RouteRequest, Routes } from './types.ts';
