/** One stud, to scale: from the side and from above. */
export type { DrawnLayer, Elevation, ElevationInput, ElevationRoom, LayerMark } from './types.ts';
export { drawElevation } from './elevation.ts';
export { drawPlan, type PlanDrawing, type PlanInput, type PlanRoom } from './plan.ts';
export { heatPaint } from './current-path.ts';
export { layersConcerned } from './concern.ts';
