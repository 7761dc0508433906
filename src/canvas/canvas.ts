/** Puts the pieces together: stage and painters below, pointer machine and tools above, the desk in between. */
import { parseItemKey, type ItemKey } from '#core/diagram';
import { boxCentre, inflateBox, pointAtFraction, type Box, type Point } from '#core/geometry';
import { PALETTES } from '#core/graphics';
import { CanvasDesk } from './desk.ts';
import { createGlide } from './glide.ts';
import type { Canvas, CanvasHost, Insets } from './host.ts';
import { listen } from './listen.ts';
import { paintGrid } from './paint/grid.ts';
import { paintOverlay } from './paint/overlay.ts';
import { Painter } from './paint/painter.ts';
import { paintItems } from './paint/still.ts';
import type { Keys, Press } from './pointer.ts';
import { createPointing } from './pointing.ts';
import { createScenes } from './scenes.ts';
import { createStage } from './stage.ts';
import { createPartPlacer } from './tools/place.ts';
import {
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
const NO_INSETS: Insets = { left: 0, top: 0, right: 0, bottom: 0 };

/** Zoom is reported as a share of life size. */
export function createCanvas(container: HTMLDivElement, host: CanvasHost): Canvas {
	container.style.touchAction = 'none';
	container.style.userSelect = 'none';
	if (getComputedStyle(container).position === 'static') container.style.position = 'relative';

	const painter = new Painter();
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
			paintGrid(context, view, size, palette());
			toMillimetres(context, view, ratio);
			paintItems(context, painter, scene.items, desk.index.visible(visibleBox(view, size)), {
				view,
				palette: palette(),
				hidden: dragged?.hidden
			});
		},
		drag(context, ratio) {
			const { view, dragged } = desk;
			if (!dragged) return;
			toMillimetres(context, view, ratio);
			paintItems(context, painter, dragged.items, dragged.items.keys(), { view, palette: palette() });
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
	const resized = new ResizeObserver(() => {
		size = { width: container.clientWidth, height: container.clientHeight };
		stage.resize(size);
		fitOnce();
	});
	resized.observe(container);
	stage.resize(size);

	/** The first drawing is fitted as soon as there is room for it. */
	function fitOnce(): void {
		if (fitted || !desk.shown || size.width < 2 || size.height < 2) return;
		fitted = true;
		setView(wholeDrawing());
	}
	const insets = (): Insets => host.insets?.() ?? NO_INSETS;
	const wholeDrawing = (): View =>
		withinInsets(insets(), size, desk.view, (_, free) =>
			desk.scene.bounds ? fitBox(desk.scene.bounds, free) : centredOn({ x: 0, y: 0 }, free, LIFE_SIZE / 4)
		);

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

	return {
		show(model) {
			pointing.show(model);
			// Halos are painted in the colour of the ground, so the ground must be of that colour.
			container.style.backgroundColor = palette().paper;
			fitOnce();
		},
		fit: () => glide.to(wholeDrawing()),
		zoomBy(factor) {
			const from = glide.target ?? desk.view;
			glide.to(zoomAbout(from, { x: size.width / 2, y: size.height / 2 }, clampZoom(from.zoom * factor) / from.zoom));
		},
		reveal(key) {
			const box = boxOf(key);
			if (!box) return;
			const from = glide.target ?? desk.view;
			const to = withinInsets(insets(), size, from, (view, free) => revealBox(view, box, free));
			if (to !== from) glide.to(to);
		},
		clientPoint(key) {
			if (!desk.shown) return null;
			const stud = desk.index.stud(key);
			if (stud) return toClient(toScreen(desk.view, stud.at));
			const item = desk.scene.items.get(key);
			if (!item || parseItemKey(key).kind === 'stud') return null;
			return toClient(toScreen(desk.view, item.route ? pointAtFraction(item.route, 0.5) : boxCentre(item.body ?? item.box)));
		},
		toDiagram: (client) => toDrawing(desk.view, fromClient(client)),
		carryPart: (kind, client) => desk.shown && placer.show(kind, carriedTo(client)),
		dropPart: (kind, client) => desk.shown && placer.place(kind, carriedTo(client)),
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
