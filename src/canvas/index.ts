/** The canvas: Konva as a drawing device. */
export type { Aids, Canvas, CanvasHost, CanvasModel, Insets, Tool } from './host.ts';
export { createCanvas } from './canvas.ts';
