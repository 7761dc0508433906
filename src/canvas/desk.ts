/**
 * Everything the canvas knows, without a screen: model, scene, view, what is hovered, what a drag would do. Tools
 * write to it, the painters read it, and it asks for a repaint of the layers that changed.
 */
import { isLockedIn, type Command, type ItemKey } from '#core/diagram';
import type { DrawnItem, Scene } from '#core/drawing';
import { isOpen } from '#core/rules';
import type { Aids, CanvasHost, CanvasModel } from './host.ts';
import { placeMarks, type Mark } from './marks.ts';
import { placeRemarks, type RemarkMark } from './remark-marks.ts';
import { NOTHING, type Overlay } from './overlay.ts';
import { MARK_PX } from './theme.ts';
import { SceneIndex } from './scene-index.ts';
import type { Scenes } from './scenes.ts';
import type { Cursor, Desk } from './tools/tool.ts';
import type { View } from './viewport.ts';
import { reader, type Reader } from '#core/units';

export type LayerName = 'still' | 'drag' | 'overlay';

/** What the drag layer shows in place of the still one. */
export interface Dragged {
	/** Back to front. */
	readonly items: ReadonlyMap<ItemKey, DrawnItem>;
	/** Items left out of the still layer meanwhile. */
	readonly hidden: ReadonlySet<ItemKey>;
}

export interface DeskOptions {
	readonly host: CanvasHost;
	readonly scenes: Scenes;
	readonly repaint: (...layers: LayerName[]) => void;
	readonly setCursor: (cursor: Cursor) => void;
}

const ALL_AIDS: Aids = { grid: true, guides: true };

export class CanvasDesk implements Desk {
	readonly index = new SceneIndex();
	readonly host: CanvasHost;
	readonly #options: DeskOptions;
	#model: CanvasModel | null = null;
	#view: View = { x: 0, y: 0, zoom: 1 };
	#overlay: Overlay = NOTHING;
	#drag: Dragged | null = null;
	#markPx = MARK_PX;
	#marks: readonly Mark[] | null = null;
	/** For whom the figures on it are written. */
	#reader: Reader | null = null;
	#remarks: readonly RemarkMark[] | null = null;

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
		this.#remarks = null;
		this.#options.repaint('still', 'drag', 'overlay');
	}

	/** Radius of finding marks, in pixels. */
	set markPx(markPx: number) {
		if (markPx === this.#markPx) return;
		this.#markPx = markPx;
		this.#marks = null;
		this.#remarks = null;
		this.#options.repaint('overlay');
	}

	get overlay(): Overlay {
		return this.#overlay;
	}

	get selection(): ReadonlySet<ItemKey> {
		return this.model.selection;
	}

	get aids(): Aids {
		return this.model.aids ?? ALL_AIDS;
	}

	isLocked(key: ItemKey): boolean {
		return isLockedIn(this.model.diagram, key);
	}

	get dragged(): Dragged | null {
		return this.#drag;
	}

	get marks(): readonly Mark[] {
		// Placed when first asked for after a change: pointing asks more often than things change.
		return (this.#marks ??= this.#model?.check
			? placeMarks(this.#model.check.findings.filter(isOpen), this.index, this.#view, this.#markPx)
			: []);
	}

	/** Radius of marks, in pixels. */
	get markPx(): number {
		return this.#markPx;
	}

	get remarks(): readonly RemarkMark[] {
		return (this.#remarks ??= placeRemarks(this.#model?.remarks ?? new Map(), this.index, this.#view, this.#markPx));
	}

	show(model: CanvasModel): void {
		const before = this.#model;
		this.#model = model;
		if (before?.diagram !== model.diagram || before.symbols !== model.symbols || this.#reader !== reader()) {
			this.#reader = reader();
			this.index.update(this.#options.scenes.compose(model.diagram, model.symbols));
			this.#drag = null;
			this.#options.repaint('still', 'drag');
		} else if (before.theme !== model.theme || before.lens !== model.lens || before.aids !== model.aids)
			this.#options.repaint('still', 'drag');
		this.#marks = null;
		this.#remarks = null;
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
			if (this.#drag) {
				this.#drag = null;
				this.#options.repaint('still', 'drag', 'overlay');
			}
			return refused;
		}
		const preview = this.#options.scenes.preview(this.model.diagram, command, this.index);
		// The set only grows during a drag: a still layer that keeps changing would be painted on every frame.
		const before = this.#drag?.hidden ?? new Set<ItemKey>();
		const grows = [...preview.moved].some((key) => !before.has(key));
		if (grows) this.#options.repaint('still');
		const hidden = grows ? new Set([...before, ...preview.moved]) : before;
		const items = new Map<ItemKey, DrawnItem>();
		for (const key of [...hidden].sort((a, b) => this.index.rank(a) - this.index.rank(b))) {
			const item = (preview.moved.has(key) ? preview.scene : this.scene).items.get(key);
			if (item) items.set(key, item);
		}
		this.#drag = { items, hidden };
		this.#options.repaint('drag', 'overlay');
		return null;
	}

	cursor(cursor: Cursor): void {
		this.#options.setCursor(cursor);
	}
}
