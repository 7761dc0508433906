/** Published numbers, each with its source and how sure we are of it. */
export { FUSE_FAMILIES, THREADS, type FuseFamilyId, type ThreadId } from './ids.ts';
export type { Confidence, Sourced } from './sourced.ts';
