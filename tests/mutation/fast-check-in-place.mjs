/** fast-check with fewer runs: what a mutant breaks shows in a few, and there are many mutants. */
import * as fc from 'fast-check';

const MOST_RUNS = Number(process.env.MUTATION_MOST_RUNS);

export * from 'fast-check';
export const assert = (property, parameters = {}) =>
	fc.assert(property, { ...parameters, numRuns: Math.min(parameters.numRuns ?? MOST_RUNS, MOST_RUNS) });
