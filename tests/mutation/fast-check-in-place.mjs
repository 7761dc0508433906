/** fast-check with fewer runs: what a mutant breaks shows in a few, and there are many mutants. */
import * as fc from 'fast-check';

const MOST_RUNS = 80;

export * from 'fast-check';
export const assert = (property, parameters = {}) =>
	fc.assert(property, { ...parameters, numRuns: Math.min(parameters.numRuns ?? MOST_RUNS, MOST_RUNS) });
