import type { Content, Diagram } from '#core/diagram';

/** What a revision kept, as a diagram of its own. */
export const asDiagram = (content: Content): Diagram => ({ ...content, revisions: {}, remarks: {}, readings: {}, underlays: {} });
