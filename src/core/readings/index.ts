/** Readings of a meter → which single joint, conductor or battery explains what differs from the model. */
export { responsesOf, type Responses } from './responses.ts';
export { compareReadings } from './compare.ts';
export type { Comparison, Reading, Suspect, SuspectRef, Verdict } from './types.ts';
