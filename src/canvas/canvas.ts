/** Puts the pieces together: stage and painters below, pointer machine and tools above, the desk in between. */
import { parseItemKey, type ItemKey } from '#core/diagram';
import { boxCentre, inflateBox, pointAtFraction, unionBoxes, type Box, type Point } from '#core/geometry';
import { underlayBox } from '#core/drawing';
import { PALETTES } from '#core/graphics';
import { CanvasDesk } from './desk.ts';
import { createGlide } from './glide.ts';
import type { Canvas, CanvasHost, Insets } from './host.ts';
import { listen } from './listen.ts';
import { paintGrid } from './paint/grid.ts';
import { paintThroughLens } from './paint/lens.ts';
import { paintOverlay } from './paint/overlay.ts';
import { NamePainter } from './paint/names.ts';
import { Painter } from './paint/painter.ts';
import { paintItems } from './paint/still.ts';
import type { Keys, Press } from './pointer.ts';
import { createPointing } from './pointing.ts';
import { createScenes } from './scenes.ts';
import { createStage } from './stage.ts';
import { MARK_PX, SMALL_MARK_PX, SMALL_SCREEN_PX } from './theme.ts';
import { UnderlayPainter } from './paint/underlays.ts';
import { createPartPlacer } from './tools/place.ts';
import {
	EMPTY_ZOOM,
	LIFE_SIZE,
	centredOn,
	clampZoom,
	fitBox,
	panBy,
	revealBox,
	toDrawing,
	toScreen,
	visibleBox,
	withinInsets,
	zoomAbout,
	type Size,
	type View
} from './viewport.ts';

const NO_KEYS: Keys = { shift: false, alt: false, ctrl: false };
/** Pixels per millimetre at which studs and tags can be made out, and what is shown around a thing looked at. */
const CLOSE_ZOOM = 0.9;
const CLOSE_MARGIN_MM = 60;
const NO_INSETS: Insets = { left: 0, top: 0, right: 0, bottom: 0 };

/** Zoom is reported as a share of life size. */
export function createCanvas(container: HTMLDivElement, host: CanvasHost): Canvas {
	container.style.touchAction = 'none';
	container.style.userSelect = 'none';
	if (getComputedStyle(container).position === 'static') container.style.position = 'relative';

	const painter = new Painter();
	const underlays = new UnderlayPainter(() => stage.repaint('still'));
	const names = { still: new NamePainter(), drag: new NamePainter() };
	let size: Size = { width: container.clientWidth, height: container.clientHeight };
	const palette = () => PALETTES[desk.shown?.theme ?? 'light'];

	const desk: CanvasDesk = new CanvasDesk({
		host,
		scenes: createScenes(),
		repaint: (...layers) => layers.forEach((layer) => stage.repaint(layer)),
		setCursor: (cursor) => {
			if (container.style.cursor !== cursor) container.style.cursor = cursor;
		}
	});

	const stage = createStage(container, {
		still(context, ratio) {
			const { view, scene, dragged } = desk;
			context.setTransform(ratio, 0, 0, ratio, 0, 0);
			if (!desk.shown) return paintGrid(context, view, size, palette());
			if (desk.aids.grid) paintGrid(context, view, size, palette());
			const named = names.still.names(context, desk.model.diagram, scene.items, view.zoom);
			toMillimetres(context, view, ratio);
			const visible = desk.index.visible(visibleBox(view, size));
			const options = { view, palette: palette(), hidden: dragged?.hidden, named };
			underlays.paint(context, desk.model.diagram, scene.items, dragged?.hidden);
			const { lens, theme } = desk.model;
			if (lens) paintThroughLens(context, painter, scene.items, visible, { ...options, lens, theme });
			else paintItems(context, painter, scene.items, visible, options);
			context.setTransform(ratio, 0, 0, ratio, 0, 0);
			names.still.paint(context, named, view, palette(), dragged?.hidden);
		},
		drag(context, ratio) {
			const { view, dragged } = desk;
			if (!dragged) return;
			const named = names.drag.names(context, desk.model.diagram, dragged.items, view.zoom);
			toMillimetres(context, view, ratio);
			underlays.paint(context, desk.model.diagram, dragged.items);
			paintItems(context, painter, dragged.items, dragged.items.keys(), { view, palette: palette(), named });
			context.setTransform(ratio, 0, 0, ratio, 0, 0);
			names.drag.paint(context, named, view, palette());
		},
		overlay(context, ratio) {
			context.setTransform(ratio, 0, 0, ratio, 0, 0);
			paintOverlay(desk, { context, painter, palette: palette(), size });
		}
	});

	const glide = createGlide(
		() => desk.view,
		(view) => setView(view)
	);
	function setView(view: View): void {
		const zoomed = view.zoom !== desk.view.zoom;
		desk.view = view;
		if (zoomed) host.viewChanged({ zoom: view.zoom / LIFE_SIZE });
	}
	function takeView(view: View): void {
		wholeInView = false;
		glide.stop();
		setView(view);
	}

	const placer = createPartPlacer(desk);
	const carriedTo = (client: Point): Press => ({ at: fromClient(client), keys: NO_KEYS, device: 'mouse' });
	const pointing = createPointing(desk, { takeView, openMenu: (at, key) => host.openMenu(toClient(at), key) });

	const stopListening = listen(container, {
		input: pointing.feed,
		wheel(at, meaning) {
			if (meaning.kind === 'zoom') takeView(zoomAbout(desk.view, at, meaning.factor));
			else takeView(panBy(desk.view, meaning.dx, meaning.dy));
		},
		escape: pointing.cancel
	});

	let fitted = false;
	/** Until the user looks at something else, the whole drawing stays in view when the room for it changes. */
	let wholeInView = false;
	const resized = new ResizeObserver(() => {
		size = { width: container.clientWidth, height: container.clientHeight };
		stage.resize(size);
		desk.markPx = Math.min(size.width, size.height) < SMALL_SCREEN_PX ? SMALL_MARK_PX : MARK_PX;
		if (fitted) refit();
		else fitOnce();
	});
	resized.observe(container);
	stage.resize(size);

	/** The first drawing is fitted as soon as there is room for it. */
	function fitOnce(): void {
		if (fitted || !desk.shown || size.width < 2 || size.height < 2) return;
		fitted = true;
		showWhole('at once');
	}
	function showWhole(how: 'gliding' | 'at once'): void {
		// The first part on an empty sheet must not become the measure of it.
		wholeInView = wholeBounds() !== null;
		if (how === 'gliding') return glide.to(wholeDrawing());
		glide.stop();
		setView(wholeDrawing());
	}
	function refit(): void {
		if (wholeInView && desk.shown) showWhole('at once');
	}
	const insets = (): Insets => host.insets?.() ?? NO_INSETS;
	const wholeDrawing = (): View =>
		withinInsets(insets(), size, desk.view, (_, free) => {
			const bounds = wholeBounds();
			return bounds ? fitBox(bounds, free) : centredOn({ x: 0, y: 0 }, free, EMPTY_ZOOM);
		});

	function toClient(at: Point): Point {
		const { left, top } = container.getBoundingClientRect();
		return { x: at.x + left, y: at.y + top };
	}

	function fromClient(client: Point): Point {
		const { left, top } = container.getBoundingClientRect();
		return { x: client.x - left, y: client.y - top };
	}

	function boxOf(key: ItemKey): Box | null {
		const stud = desk.index.stud(key);
		if (stud) return inflateBox({ minX: stud.at.x, minY: stud.at.y, maxX: stud.at.x, maxY: stud.at.y }, 40);
		return desk.scene.items.get(key)?.box ?? null;
	}

	/** Where a frame is taken hold of: a note in its middle, others by their upper edge. */
	const takenBy = (key: ItemKey, frame: Box): Point =>
		parseItemKey(key).kind === 'note' ? boxCentre(frame) : { x: (frame.minX + frame.maxX) / 2, y: frame.minY };
	const wholeBounds = (): Box | null => {
		const pictures = Object.values(desk.model.diagram.underlays).map(underlayBox);
		const all = [...(desk.scene.bounds ? [desk.scene.bounds] : []), ...pictures];
		return all.length > 0 ? all.reduce(unionBoxes) : null;
	};

	return {
		show(model) {
			pointing.show(model);
			// Halos are painted in the colour of the ground, so the ground must be of that colour.
			container.style.backgroundColor = palette().paper;
			fitOnce();
		},
		scene: () => desk.scene,
		fit: (how = 'gliding') => showWhole(how),
		refit,
		zoomBy(factor) {
			wholeInView = false;
			const from = glide.target ?? desk.view;
			glide.to(zoomAbout(from, { x: size.width / 2, y: size.height / 2 }, clampZoom(from.zoom * factor) / from.zoom));
		},
		reveal(key, close = false) {
			const box = boxOf(key);
			if (!box) return;
			const from = glide.target ?? desk.view;
			const to = withinInsets(insets(), size, from, (view, free) => {
				if (close && view.zoom < CLOSE_ZOOM) return fitBox(inflateBox(box, CLOSE_MARGIN_MM), free, 16, CLOSE_ZOOM);
				return revealBox(view, box, free);
			});
			if (to === from) return;
			wholeInView = false;
			glide.to(to);
		},
		clientPoint(key) {
			if (!desk.shown) return null;
			const stud = desk.index.stud(key);
			if (stud) return toClient(toScreen(desk.view, stud.at));
			const item = desk.scene.items.get(key);
			if (!item || parseItemKey(key).kind === 'stud') return null;
			return toClient(
				toScreen(
					desk.view,
					item.route ? pointAtFraction(item.route, 0.5) : item.frame ? takenBy(key, item.frame) : boxCentre(item.body ?? item.box)
				)
			);
		},
		toDiagram: (client) => toDrawing(desk.view, fromClient(client)),
		carryPart: (kind, client, params) => desk.shown && placer.show({ kind, params }, carriedTo(client)),
		dropPart: (kind, client, params) => desk.shown && placer.place({ kind, params }, carriedTo(client)),
		carryEnd: placer.hide,
		focus: () => container.focus({ preventScroll: true }),
		cancelGesture() {
			if (!pointing.cancel()) pointing.escape();
		},
		destroy() {
			pointing.stop();
			glide.stop();
			stopListening();
			resized.disconnect();
			stage.destroy();
		}
	};
}

function toMillimetres(context: CanvasRenderingContext2D, { x, y, zoom }: View, ratio: number): void {
	context.setTransform(ratio * zoom, 0, 0, ratio * zoom, ratio * x, ratio * y);
}
