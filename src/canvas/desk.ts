/**
 * Everything the canvas knows, without a screen: model, scene, view, what is hovered, what a drag would do. Tools
 * write to it, the painters read it, and it asks for a repaint of the layers that changed.
 */
import { change, type Command, type Diagram, type ItemKey } from '#core/diagram';
import type { Scene } from '#core/drawing';
import type { CanvasHost, CanvasModel } from './host.ts';
import { placeMarks, type Mark } from './marks.ts';
import { NOTHING, type Overlay } from './overlay.ts';
import { SceneIndex } from './scene-index.ts';
import type { Cursor, Desk } from './tools/tool.ts';
import type { View } from './viewport.ts';

export type LayerName = 'still' | 'drag' | 'overlay';

export interface Preview {
	readonly scene: Scene;
	/** Items that differ from the still scene: painted on the drag layer, left out of the still one. */
	readonly moved: ReadonlySet<ItemKey>;
}

export interface DeskOptions {
	readonly host: CanvasHost;
	/** Diagram → scene; items that did not change keep their identity. */
	readonly compose: (diagram: Diagram) => Scene;
	readonly repaint: (...layers: LayerName[]) => void;
	readonly setCursor: (cursor: Cursor) => void;
}

export class CanvasDesk implements Desk {
	readonly index = new SceneIndex();
	readonly host: CanvasHost;
	readonly #options: DeskOptions;
	#model: CanvasModel | null = null;
	#view: View = { x: 0, y: 0, zoom: 1 };
	#overlay: Overlay = NOTHING;
	#preview: Preview | null = null;
	#marks: readonly Mark[] | null = null;

	constructor(options: DeskOptions) {
		this.#options = options;
		this.host = options.host;
	}

	get model(): CanvasModel {
		if (!this.#model) throw new Error('The canvas was asked for its model before show() was called.');
		return this.#model;
	}

	get shown(): CanvasModel | null {
		return this.#model;
	}

	get scene(): Scene {
		return this.index.scene;
	}

	get view(): View {
		return this.#view;
	}

	set view(view: View) {
		if (view === this.#view) return;
		this.#view = view;
		this.#marks = null;
		this.#options.repaint('still', 'drag', 'overlay');
	}

	get overlay(): Overlay {
		return this.#overlay;
	}

	get selection(): ReadonlySet<ItemKey> {
		return this.model.selection;
	}

	get previewed(): Preview | null {
		return this.#preview;
	}

	get marks(): readonly Mark[] {
		// Placed when first asked for after a change: pointing asks more often than things change.
		return (this.#marks ??= this.#model?.check ? placeMarks(this.#model.check.findings, this.index, this.#view) : []);
	}

	show(model: CanvasModel): void {
		const before = this.#model;
		this.#model = model;
		if (before?.diagram !== model.diagram) {
			this.index.update(this.#options.compose(model.diagram));
			this.#preview = null;
			this.#options.repaint('still', 'drag');
		} else if (before.theme !== model.theme) this.#options.repaint('still', 'drag');
		this.#marks = null;
		this.#options.repaint('overlay');
	}

	lay(overlay: Partial<Overlay>): void {
		const changed = (Object.keys(overlay) as (keyof Overlay)[]).some((key) => overlay[key] !== this.#overlay[key]);
		if (!changed) return;
		this.#overlay = { ...this.#overlay, ...overlay };
		this.#options.repaint('overlay');
	}

	preview(command: Command | null): string | null {
		const refused = command?.refuse(this.model.diagram) ?? null;
		if (command === null || refused !== null) {
			if (this.#preview) {
				this.#preview = null;
				this.#options.repaint('still', 'drag', 'overlay');
			}
			return refused;
		}
		const scene = this.#options.compose(change(this.model.diagram, command).diagram);
		// The set only grows during a drag: a still layer that keeps changing would be painted on every frame.
		const moved = new Set(this.#preview?.moved);
		const before = moved.size;
		for (const [key, item] of scene.items) if (this.scene.items.get(key) !== item) moved.add(key);
		for (const key of this.scene.items.keys()) if (!scene.items.has(key)) moved.add(key);
		if (moved.size !== before) this.#options.repaint('still');
		this.#preview = { scene, moved };
		this.#options.repaint('drag', 'overlay');
		return null;
	}

	cursor(cursor: Cursor): void {
		this.#options.setCursor(cursor);
	}
}
