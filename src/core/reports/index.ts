/** Tables of the hand-off packet, as data. */
export { reportInput, type ReportInput } from './input.ts';
export { SECTIONS, sectionsOf } from './sections.ts';
export { SECTION_IDS, type Section, type SectionId } from './section.ts';
export { type Cell, type Column, type Figure, type Row, type Table } from './table.ts';
export { csvOf } from './csv.ts';
export { cellText, columnTitle, shownUnit } from './cell-text.ts';
export { verdictOf } from './cover.ts';
export { CAUTIONS } from './cautions.ts';

/** Single tables and what they rest on. */
export { assemblyOrder, PHASES, type AssemblyStep, type Phase } from './assembly.ts';
export { conductorSchedule, cutList } from './conductors.ts';
export { cutLength, type CutLength } from './cut-length.ts';
export { changeSheet, changeSheetInput, FIGURE_NAMES, figureText, type ChangeSheetInput } from './change-sheet.ts';
export { torqueText } from './studs.ts';
