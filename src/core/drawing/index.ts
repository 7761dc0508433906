/** The drawing: what canvas, SVG and print paint. */
export type { DrawnItem, DrawnTerminal, PartSymbols, Scene } from './types.ts';
export { composeScene, conductorPoles, sceneComposer, type ComposeOptions } from './compose.ts';
export { thumbnails } from './thumbnail.ts';
export { routeRequests } from './route-requests.ts';
export { insulationColour, type Insulation, type Use } from './colours.ts';
export { areaWords, drawArea } from './area.ts';
export { drawNote, noteBox } from './note.ts';
export { underlayBox } from './underlay.ts';
export { drawPart } from './part.ts';
export { nut, terminalRadiusMm } from './terminal.ts';
export { changeMarks, withDrawnOver, type ChangeMarks, type ChangeSign } from './change-marks.ts';
export { changedItems, pictureOfChange, type Picture } from './change-picture.ts';
