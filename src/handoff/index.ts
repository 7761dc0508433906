/** What leaves the program: the packet, the drawing as a picture, tables for spreadsheets, print. */
export { packetPdf, type Packet, type Progress } from './pdf.ts';
export { packetPages, type PacketInput, type PacketOptions } from './packet.ts';
export type { Placing } from './drawing-sheets.ts';
export { PAPER_IDS, PAPERS, sheetSize, type PaperId } from './paper.ts';
export { FONT_FILES, loadFonts, type Fonts } from './fonts.ts';
export { drawingSvg } from './drawing-svg.ts';
export { drawingPng, pictureSize, PNG_SCALES, type PictureSize, type PngScale } from './png.ts';
export { printPages, printRules } from './print.ts';
export { measureBy } from './measure.ts';
