/** What sits on each stud, in order and to scale. */
export type { Layer, Stack } from './types.ts';
