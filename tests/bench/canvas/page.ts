/** What the benchmark measures, in the page: frames of our canvas, and of plain drawing of the same scene. */
import { createCanvas, type CanvasHost, type CanvasModel } from '#canvas';
import { change, type Command } from '#core/diagram';
import { composeScene, type Scene } from '#core/drawing';
import { PALETTES, type Primitive } from '#core/graphics';
import { trace } from '../../../src/canvas/paint/compile.ts';
import { Painter } from '../../../src/canvas/paint/painter.ts';
import { paintItems } from '../../../src/canvas/paint/still.ts';
import { SceneIndex } from '../../../src/canvas/scene-index.ts';
import { fitBox, panBy, visibleBox, type View } from '../../../src/canvas/viewport.ts';
import { field } from './field.ts';

const FRAMES = 60;
const size = { width: 1280, height: 800 };
const palette = PALETTES.light;

export interface Row {
	readonly parts: number;
	readonly conductors: number;
	/** Diagram to first picture, ms. */
	readonly showMs: number;
	/** Lower quartile of the ms of a frame, by what was done and who drew it. */
	readonly frames: Readonly<Record<string, number>>;
}

declare global {
	interface Window {
		bench(parts: number): Promise<Row>;
	}
}

const frame = (): Promise<number> => new Promise((resolve) => requestAnimationFrame(resolve));

/** Lower quartile of the times from frame to frame (others use this machine too) while `act` is done once a frame. The frame-rate limit must be off. */
async function frames(act: (i: number) => void, count = FRAMES): Promise<number> {
	const times: number[] = [];
	await frame();
	let last = performance.now();
	for (let i = 0; i < count; i++) {
		act(i);
		await frame();
		const now = performance.now();
		times.push(now - last);
		last = now;
	}
	return times.sort((a, b) => a - b)[count >> 2]!;
}

window.bench = async (parts) => {
	const container = document.querySelector<HTMLDivElement>('#canvas')!;
	const plain = document.querySelector<HTMLCanvasElement>('#raw')!;
	let model: CanvasModel = {
		diagram: field(parts),
		selection: new Set(),
		check: null,
		tool: { kind: 'select' },
		theme: 'light',
		focusedFinding: null
	};
	const show = (next: Partial<CanvasModel>): void => canvas.show((model = { ...model, ...next }));
	const host: CanvasHost = {
		run(command: Command) {
			show({ diagram: change(model.diagram, command).diagram });
			return null;
		},
		select: (keys) => show({ selection: new Set(keys) }),
		setTool: (tool) => show({ tool }),
		placePart: () => undefined,
		connect: () => undefined,
		openMenu: () => undefined,
		announce: () => undefined,
		viewChanged: () => undefined
	};
	// Made-up pointers cannot be captured.
	container.setPointerCapture = () => undefined;
	plain.hidden = true;

	const started = performance.now();
	const canvas = createCanvas(container, host);
	show({});
	await frame();
	await frame();
	const showMs = performance.now() - started;

	const scene = composeScene(model.diagram);
	const fitted = fitBox(scene.bounds!, size);
	const close: View = { x: -400, y: -300, zoom: 1 };
	const measured: Record<string, number> = {};

	const wheel = (deltaX: number, deltaY: number, ctrlKey = false): void =>
		void container.dispatchEvent(new WheelEvent('wheel', { deltaX, deltaY, ctrlKey, clientX: 640, clientY: 400, cancelable: true }));
	const pointer = (type: string, clientX: number, clientY: number): void =>
		void container.dispatchEvent(
			new PointerEvent(type, { pointerId: 1, pointerType: 'mouse', button: 0, clientX, clientY, bubbles: true })
		);

	measured['pan at fit'] = await frames((i) => wheel(i % 2 ? 9 : -9, 5));
	canvas.fit();
	await settled();
	measured['zoom sweep'] = await frames((i) => wheel(0, i < FRAMES / 2 ? -6 : 6, true));
	canvas.fit();
	await settled();
	await zoomTo(canvas, close.zoom);
	measured['pan close'] = await frames((i) => wheel(i % 2 ? 9 : -9, 5));
	measured['drag close'] = await dragged(canvas, model, pointer);
	canvas.destroy();

	plain.hidden = false;
	const ratio = window.devicePixelRatio;
	plain.width = size.width * ratio;
	plain.height = size.height * ratio;
	const context = plain.getContext('2d')!;
	measured['everything, plain'] = await frames((i) => everything(context, scene, panBy(close, i % 2 ? 9 : 0, 0), ratio), 16);
	measured['everything at fit, plain'] = await frames((i) => everything(context, scene, panBy(fitted, i % 2 ? 9 : 0, 0), ratio), 16);
	const index = new SceneIndex();
	index.update(scene);
	const painter = new Painter();
	const culled = (view: View): void => {
		clear(context, view, ratio);
		paintItems(context, painter, scene.items, index.visible(visibleBox(view, size)), { view, palette });
	};
	measured['visible, plain'] = await frames((i) => culled(panBy(close, i % 2 ? 9 : 0, 0)));
	measured['visible at fit, plain'] = await frames((i) => culled(panBy(fitted, i % 2 ? 9 : 0, 0)));
	return { parts, conductors: Object.keys(model.diagram.conductors).length, showMs, frames: measured };
};

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 400));

async function zoomTo(canvas: ReturnType<typeof createCanvas>, zoom: number): Promise<void> {
	const a = canvas.toDiagram({ x: 0, y: 0 });
	const b = canvas.toDiagram({ x: 100, y: 0 });
	canvas.zoomBy((zoom * (b.x - a.x)) / 100);
	await settled();
}

/** A part near the middle of the window, dragged to and fro. */
async function dragged(
	canvas: ReturnType<typeof createCanvas>,
	model: CanvasModel,
	pointer: (type: string, x: number, y: number) => void
): Promise<number> {
	const near = Object.keys(model.diagram.parts)
		.map((id) => ({ id, at: canvas.clientPoint(`part:${id}`)! }))
		.sort((a, b) => Math.hypot(a.at.x - 640, a.at.y - 400) - Math.hypot(b.at.x - 640, b.at.y - 400))[0]!;
	// Off the middle, where a conductor is less likely to lie.
	const { x, y } = { x: near.at.x - 12, y: near.at.y + 6 };
	pointer('pointerdown', x, y);
	pointer('pointermove', x + 20, y + 20);
	const ms = await frames((i) => pointer('pointermove', x + 20 + (i % 20) * 6, y + 20 + (i % 7) * 6));
	pointer('pointercancel', x, y);
	return ms;
}

function clear(context: CanvasRenderingContext2D, view: View, ratio: number): void {
	context.setTransform(1, 0, 0, 1, 0, 0);
	context.globalAlpha = 1;
	context.fillStyle = palette.paper;
	context.fillRect(0, 0, size.width * ratio, size.height * ratio);
	context.setTransform(ratio * view.zoom, 0, 0, ratio * view.zoom, ratio * view.x, ratio * view.y);
}

/** The reference: every primitive of every item, each frame, straight to a 2D context. Nothing kept, nothing left out. */
function everything(context: CanvasRenderingContext2D, scene: Scene, view: View, ratio: number): void {
	clear(context, view, ratio);
	for (const key of scene.order) {
		const { primitives, labels } = scene.items.get(key)!;
		for (const list of [primitives, labels]) for (const primitive of list) plainly(context, primitive);
	}
}

function plainly(context: CanvasRenderingContext2D, primitive: Primitive): void {
	context.globalAlpha = primitive.opacity ?? 1;
	if (primitive.kind === 'text') {
		context.font = `${primitive.bold ? '600 ' : ''}${primitive.size}px sans-serif`;
		context.textAlign = primitive.align === 'middle' ? 'center' : (primitive.align ?? 'start');
		context.fillStyle = palette[primitive.fill ?? 'ink'];
		context.fillText(primitive.text, primitive.x, primitive.y);
		return;
	}
	context.beginPath();
	trace(context, primitive);
	if (primitive.fill) {
		context.fillStyle = palette[primitive.fill];
		context.fill();
	}
	if (primitive.stroke) {
		context.strokeStyle = palette[primitive.stroke];
		context.lineWidth = primitive.width ?? 0.35;
		context.stroke();
	}
}
