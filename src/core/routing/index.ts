/** Orthogonal routes around parts. */
export type { Obstacle, RouteRequest, Routes } from './types.ts';
export { createRouter, previewRoute, routeConductors, type Router } from './router.ts';
