/** Network → voltages and currents of each operating case. Knows nothing of parts. */
export { solveCase, solveCases } from './solve-case.ts';
export type { OperatingPoint } from './types.ts';
export { circuitOf, levelsOf, type Circuit, type Levels } from './circuit.ts';
export { planElimination, type Elimination, type Factors, type Topology } from './elimination.ts';
