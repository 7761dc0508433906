/** Opening and saving through the browser. Every errand answers with an outcome; none throws. */
export type { Outcome } from './outcome.ts';
export { fetchDiagram, openDiagram, readFile, type OpenedDiagram } from './open.ts';
export { saveDiagram, saveDiagramAs, type Saved } from './save.ts';
export { askToWrite, diskState, modifiedMsOf, type DiskState } from './disk.ts';
export { download } from './download.ts';
export { fileName } from './file-name.ts';
export { diagramFromLink, isLink, LINK_LIMIT, linkOf } from './link.ts';
export { askBeforeLeaving, hasUnsavedChanges } from './unsaved.ts';
export type { Pickers } from './pickers.ts';
