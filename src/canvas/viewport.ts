/**
 * Pan and zoom as arithmetic. Screen points are CSS pixels from the container's corner, drawing points are
 * millimetres; `zoom` is CSS pixels per millimetre.
 */
import type { Box, Point } from '#core/geometry';
import type { Insets } from './host.ts';

export interface View {
	/** Where the drawing's origin is on the screen. */
	readonly x: number;
	readonly y: number;
	readonly zoom: number;
}

export interface Size {
	readonly width: number;
	readonly height: number;
}

/** CSS pixels per millimetre at life size: a CSS inch is 96 pixels (CSS Values 4, section 6.2). */
export const LIFE_SIZE = 96 / 25.4;
export const MIN_ZOOM = 0.02;
export const MAX_ZOOM = 12;
/** Fitting a single small part must not blow it up to fill the window. */
const MAX_FIT_ZOOM = 2;

export const clampZoom = (zoom: number): number => Math.min(MAX_ZOOM, Math.max(MIN_ZOOM, zoom));

export const toScreen = ({ x, y, zoom }: View, at: Point): Point => ({ x: at.x * zoom + x, y: at.y * zoom + y });

export const toDrawing = ({ x, y, zoom }: View, at: Point): Point => ({ x: (at.x - x) / zoom, y: (at.y - y) / zoom });

export const panBy = (view: View, dx: number, dy: number): View => ({ ...view, x: view.x + dx, y: view.y + dy });

/** Zooms so that the drawing point under `about` stays under it. */
export function zoomAbout(view: View, about: Point, factor: number): View {
	const zoom = clampZoom(view.zoom * factor);
	const ratio = zoom / view.zoom;
	return { x: about.x - (about.x - view.x) * ratio, y: about.y - (about.y - view.y) * ratio, zoom };
}

/** The part of the drawing that is on the screen, grown by `marginPx` on every side. */
export function visibleBox(view: View, size: Size, marginPx = 0): Box {
	const from = toDrawing(view, { x: -marginPx, y: -marginPx });
	const to = toDrawing(view, { x: size.width + marginPx, y: size.height + marginPx });
	return { minX: from.x, minY: from.y, maxX: to.x, maxY: to.y };
}

/** Centres a box and zooms so that all of it shows, with a margin in pixels. */
export function fitBox(box: Box, size: Size, marginPx = 40, maxZoom = MAX_FIT_ZOOM): View {
	const width = Math.max(box.maxX - box.minX, 1);
	const height = Math.max(box.maxY - box.minY, 1);
	const room = { width: Math.max(size.width - 2 * marginPx, 1), height: Math.max(size.height - 2 * marginPx, 1) };
	const zoom = clampZoom(Math.min(room.width / width, room.height / height, maxZoom));
	return centredOn({ x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 }, size, zoom);
}

/**
 * Brings a box into view: stays put when it shows already, keeps the zoom when it fits at that zoom,
 * and zooms out only as far as needed otherwise.
 */
export function revealBox(view: View, box: Box, size: Size, marginPx = 48): View {
	const shown = visibleBox(view, size, -Math.min(marginPx, size.width / 4, size.height / 4));
	if (box.minX >= shown.minX && box.minY >= shown.minY && box.maxX <= shown.maxX && box.maxY <= shown.maxY) return view;
	const fitted = fitBox(box, size, marginPx);
	const zoom = Math.min(view.zoom, fitted.zoom);
	return centredOn({ x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 }, size, zoom);
}

/** On an empty sheet: about 1.5 m of it show on a laptop, and the smallest clamps can still be aimed at. */
export const EMPTY_ZOOM = 0.15 * LIFE_SIZE;

/** Works out a view in the part of the window that panels leave free. */
export function withinInsets(insets: Insets, size: Size, view: View, find: (view: View, free: Size) => View): View {
	const free = {
		width: Math.max(1, size.width - insets.left - insets.right),
		height: Math.max(1, size.height - insets.top - insets.bottom)
	};
	const local = panBy(view, -insets.left, -insets.top);
	const found = find(local, free);
	return found === local ? view : panBy(found, insets.left, insets.top);
}

export function centredOn(centre: Point, size: Size, zoom: number): View {
	return { x: size.width / 2 - centre.x * zoom, y: size.height / 2 - centre.y * zoom, zoom };
}

/** Between two views, for gliding; zoom changes by equal factors in equal times. */
export function between(from: View, to: View, share: number): View {
	const zoom = from.zoom * (to.zoom / from.zoom) ** share;
	// The origin follows the zoom, not the clock, or the picture would swing about while it zooms.
	const blend = Math.abs(to.zoom / from.zoom - 1) < 1e-6 ? share : (zoom - from.zoom) / (to.zoom - from.zoom);
	return { x: from.x + (to.x - from.x) * blend, y: from.y + (to.y - from.y) * blend, zoom };
}
