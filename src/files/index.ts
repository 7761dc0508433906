/** Opening and saving through the browser. Every errand answers with an outcome; none throws. */
export type { Outcome } from './outcome.ts';
export { fetchDiagram, openDiagram, readFile, readHandle, type OpenedDiagram } from './open.ts';
export { saveDiagram, saveDiagramAs, type Saved } from './save.ts';
export { askToWrite, diskState, modifiedMsOf, type OnDisk } from './disk.ts';
export { download } from './download.ts';
export { fileName } from './file-name.ts';
export { diagramFromLink, isLink, LINK_LIMIT, linkOf } from './link.ts';
export { PICTURE_TYPES, readPicture, type Picture } from './picture.ts';
export { askBeforeLeaving, hasUnsavedChanges } from './unsaved.ts';
export type { Pickers } from './pickers.ts';
