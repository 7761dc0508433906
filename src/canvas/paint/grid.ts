/** The dots behind the drawing: a help for the eye that fades before it becomes a carpet. */
import type { Palette } from '#core/graphics';
import { toScreen, visibleBox, type Size, type View } from '../viewport.ts';

/** Pitches that divide one another, so that zooming adds dots between those already there. */
const PITCHES_MM = [10, 50, 250, 1000];
const FADE_IN_PX = 12;
const FULL_PX = 36;

type GridContext = Pick<CanvasRenderingContext2D, 'fillStyle' | 'globalAlpha' | 'beginPath' | 'rect' | 'fill'>;

/** How strongly dots of this pitch show: 0 when closer than 12 px, fully from 36 px. */
export const dotStrength = (pitchMm: number, zoom: number): number =>
	Math.min(1, Math.max(0, (pitchMm * zoom - FADE_IN_PX) / (FULL_PX - FADE_IN_PX)));

/** In CSS pixels. */
export function paintGrid(context: GridContext, view: View, size: Size, palette: Palette): void {
	const finest = PITCHES_MM.findIndex((pitch) => dotStrength(pitch, view.zoom) > 0);
	if (finest < 0) return;
	// The next coarser dots are painted over the fading ones, so that they stand out.
	for (const pitch of PITCHES_MM.slice(finest, finest + 2)) paintDots(context, pitch, view, size, palette);
	context.globalAlpha = 1;
}

function paintDots(context: GridContext, pitch: number, view: View, size: Size, palette: Palette): void {
	const box = visibleBox(view, size);
	const radius = 1;
	context.globalAlpha = dotStrength(pitch, view.zoom);
	context.fillStyle = palette.faint;
	context.beginPath();
	for (let x = Math.ceil(box.minX / pitch) * pitch; x <= box.maxX; x += pitch) {
		for (let y = Math.ceil(box.minY / pitch) * pitch; y <= box.maxY; y += pitch) {
			const at = toScreen(view, { x, y });
			context.rect(Math.round(at.x) - radius / 2, Math.round(at.y) - radius / 2, 2 * radius, 2 * radius);
		}
	}
	context.fill();
}
