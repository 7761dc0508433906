/** The whole pipeline: diagram → network → operating points → rules → findings. */
export { checkDiagram } from './check-diagram.ts';
export type { CheckResult, ConductorFigures } from './types.ts';
