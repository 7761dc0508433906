/** What would mend a finding, tried on a copy before it is offered; sizes for everything at once. */
export type { Difference, Remedy } from './types.ts';
export { difference, findingsOf, studyOf } from './findings.ts';
export { MENDABLE_RULES, remediesFor } from './remedies-for.ts';
export { sizeEverything, type SizeOptions, type Sizing } from './size-everything.ts';
export { arrangementOf, tryOrder, type StudArrangement, type StudTrial } from './try-order.ts';
