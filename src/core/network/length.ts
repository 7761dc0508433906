import type { Conductor } from '#core/diagram';

/** Length of a conductor that is not measured yet; whatever shows results must say so. */
export const ASSUMED_LENGTH_M = 1;

/** One-way length to compute with. */
export const usedLengthM = ({ lengthM }: Pick<Conductor, 'lengthM'>): { readonly lengthM: number; readonly lengthAssumed: boolean } => ({
	lengthM: lengthM ?? ASSUMED_LENGTH_M,
	lengthAssumed: lengthM === null
});
