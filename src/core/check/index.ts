/** The whole pipeline: diagram → network → operating points → rules → findings. */
export type { CheckResult, ConductorFigures } from './types.ts';
