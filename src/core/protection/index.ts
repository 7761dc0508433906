/** What protects each conductor: let-through as a maximum flow of fuse ratings. */
export { letThroughBound, protectionOf } from './let-through.ts';
export { unprotectedRun, type RunMeasures, type UnprotectedRun } from './run.ts';
export type { ConductorProtection, LetThrough } from './types.ts';
