/** What would mend a finding, tried on a copy before it is offered. */
export type { Difference, Remedy } from './types.ts';
export { MENDABLE_RULES, remediesFor } from './remedies-for.ts';
