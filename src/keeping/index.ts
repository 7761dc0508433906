/** Keeps diagrams in the browser: every step at once, many diagrams, earlier versions, one editing tab for each. */
export { Cabinet } from './cabinet.ts';
export type { Card, DiagramKey, KeptFile, ShelfRecord, Thumbnail, VersionReason, VersionRecord } from './records.ts';
export { Session, type Host, type News, type Opened, type SessionState } from './session.ts';
export { Turns, type Turn } from './turns.ts';
export { Bell, type Call } from './bell.ts';
export { faultOf, KeepingError, type Fault, type FaultKind } from './fault.ts';
export { checksum } from './sealed.ts';
export { keepVersion, readVersion, VERSION_EVERY_MS } from './versions.ts';
export { addDiagram, binKept, duplicateKept, emptyBin, readKept, renameKept, restoreKept, withTurn } from './tidy.ts';
export { exportAll, importAll, readArchive, type ArchiveRead, type Exported } from './archive.ts';
export { askToPersist, persistence, type Persistence } from './persistence.ts';
