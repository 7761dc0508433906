/** What protects each conductor: let-through as a maximum flow of fuse ratings. */
export type { ConductorProtection, LetThrough } from './types.ts';
