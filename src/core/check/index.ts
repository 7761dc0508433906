/** The whole pipeline: diagram → network → operating points → rules → findings. */
export { checkDiagram, checkStudy } from './check-diagram.ts';
export { countAccepted, countFindings, countText } from './count.ts';
export { suggestedCases, type SuggestedCase } from './suggested-cases.ts';
export { subjectText } from './subject-text.ts';
export { faultCurrentA } from './fault-currents.ts';
export type { StudVoltsLost } from './stud-volts-lost.ts';
export { figuresOfAll, limitsItself } from './figures.ts';
export type { CheckResult, ConductorFigures, EndProtection, Protector } from './types.ts';
