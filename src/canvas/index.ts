/** The canvas: Konva as a drawing device. */
export type { Canvas, CanvasHost, CanvasModel, Tool } from './host.ts';
export { createCanvas } from './canvas.ts';
