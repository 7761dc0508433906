/**
 * Konva as a drawing device: one stage of the window's size, three layers with one shape each. Its own events and
 * hit canvases are switched off; nothing is ever read back from it.
 */
import { Layer } from 'konva/lib/Layer.js';
import { Shape } from 'konva/lib/Shape.js';
import { Stage } from 'konva/lib/Stage.js';
import type { LayerName } from './desk.ts';
import type { Size } from './viewport.ts';

/** A larger ratio costs memory and time and is hardly visible. */
const MAX_PIXEL_RATIO = 3;

export type Paint = (context: CanvasRenderingContext2D, pixelRatio: number) => void;

export interface DrawingStage {
	resize(size: Size): void;
	/** At the next frame, however often it is asked for. */
	repaint(layer: LayerName): void;
	destroy(): void;
}

export function createStage(container: HTMLDivElement, paint: Record<LayerName, Paint>): DrawingStage {
	const holder = document.createElement('div');
	// Pointer events go to the container, whose listeners are ours alone.
	holder.style.cssText = 'position:absolute;inset:0;pointer-events:none;overflow:hidden';
	container.append(holder);

	const stage = new Stage({ container: holder, width: 1, height: 1, listening: false });
	const layers = new Map<LayerName, Layer>();
	for (const name of ['still', 'drag', 'overlay'] as const) {
		const layer = new Layer({ listening: false });
		layer.add(
			new Shape({
				listening: false,
				perfectDrawEnabled: false,
				sceneFunc: (context) => {
					const raw = context._context as CanvasRenderingContext2D;
					raw.save();
					paint[name](raw, layer.getCanvas().getPixelRatio());
					raw.restore();
				}
			})
		);
		stage.add(layer);
		layers.set(name, layer);
	}

	function followPixelRatio(): void {
		const ratio = Math.min(MAX_PIXEL_RATIO, window.devicePixelRatio || 1);
		for (const layer of layers.values()) {
			layer.getCanvas().setPixelRatio(ratio);
			layer.batchDraw();
		}
	}
	const stopWatching = watchPixelRatio(followPixelRatio);
	followPixelRatio();

	return {
		resize({ width, height }) {
			stage.size({ width: Math.max(1, width), height: Math.max(1, height) });
		},
		repaint: (name) => layers.get(name)!.batchDraw(),
		destroy() {
			stopWatching();
			stage.destroy();
			holder.remove();
		}
	};
}

/** Browser zoom and moving the window to another screen change the ratio; a query only ever tells of one value. */
function watchPixelRatio(changed: () => void): () => void {
	let query: MediaQueryList | null = null;
	const listen = (): void => {
		query?.removeEventListener('change', listen);
		const again = query !== null;
		query = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
		query.addEventListener('change', listen);
		if (again) changed();
	};
	listen();
	return () => query?.removeEventListener('change', listen);
}
