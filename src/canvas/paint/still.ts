/**
 * Paints the items of a scene that are on the screen. Far out, parts become plain blocks and conductors plain
 * lines, gathered into few paths: what cannot be seen is not drawn.
 */
import type { ItemKey } from '#core/diagram';
import type { DrawnItem } from '#core/drawing';
import type { Paint, Palette, Primitive } from '#core/graphics';
import type { View } from '../viewport.ts';
import { tracePolyline } from './compile.ts';
import type { Context, Painter } from './painter.ts';

export type SceneContext = Context &
	Pick<CanvasRenderingContext2D, 'beginPath' | 'moveTo' | 'lineTo' | 'arcTo' | 'rect'> & { fill(): void; stroke(): void };

/** Parts smaller than this on the screen are drawn as blocks. */
const BLOCK_PX = 20;
/** Conductors drawn thinner than this are drawn as plain lines. */
const PLAIN_PX = 1.5;
/** On each side of a conductor, so that its colour need not stand out by itself. */
const CASING_PX = 1;
const PLAIN_CASING_PX = 0.75;
/** As core/drawing draws them. */
const DRAWN_CASING_MM = 0.8;
const DRAWN_ROUND = 1.2;
const LABEL_PX = 5;
/** Texts of a drawing are smaller: below the zoom at which this one cannot be read, none is looked at. */
const LARGEST_TEXT_MM = 30;

export interface StillOptions {
	readonly view: View;
	readonly palette: Palette;
	/** Items drawn elsewhere just now: those being dragged. */
	readonly hidden?: ReadonlySet<ItemKey>;
	readonly opacity?: number;
	/** Parts whose own lettering is left out: their names are written at a fixed size, or there is no room for them. */
	readonly named?: ReadonlyMap<ItemKey, unknown>;
}

export function paintItems(
	context: SceneContext,
	painter: Painter,
	items: ReadonlyMap<ItemKey, DrawnItem>,
	keys: Iterable<ItemKey>,
	options: StillOptions
): void {
	const { palette, hidden, named } = options;
	const { zoom } = options.view;
	const opacity = options.opacity ?? 1;
	const paintOptions = { palette, zoom, opacity };
	const labelOptions = { palette, zoom, opacity, minTextPx: LABEL_PX };
	const labelled: DrawnItem[] = [];
	const mayRead = LARGEST_TEXT_MM * zoom >= LABEL_PX;
	const plain = new Plain(context, palette, zoom, opacity);

	for (const key of keys) {
		if (hidden?.has(key)) continue;
		const item = items.get(key);
		if (!item) continue;
		if (item.body && Math.max(item.body.maxX - item.body.minX, item.body.maxY - item.body.minY) * zoom < BLOCK_PX) plain.block(item);
		else if (item.route && item.widthMm * zoom < PLAIN_PX) plain.line(item);
		else {
			plain.flush();
			if (item.route) paintCasing(context, item, options);
			painter.paint(context, item.primitives, paintOptions);
		}
		if (mayRead && !named?.has(key) && item.labels.length > 0 && legible(item.labels, zoom)) labelled.push(item);
	}
	plain.flush();
	// Labels come last, so that no conductor runs through a name.
	for (const item of labelled) painter.paint(context, item.labels, labelOptions);
}

/** The labels of one item, where there is room to read them. */
export function paintLabels(
	context: SceneContext,
	painter: Painter,
	{ labels }: DrawnItem,
	{ palette, view: { zoom } }: StillOptions
): void {
	if (LARGEST_TEXT_MM * zoom < LABEL_PX || labels.length === 0 || !legible(labels, zoom)) return;
	painter.paint(context, labels, { palette, zoom, minTextPx: LABEL_PX });
}

/** Names are left out one by one as they get small, but a tag goes as a whole: its box says nothing without its text. */
function legible(labels: readonly Primitive[], zoom: number): boolean {
	const isTag = labels.some(({ kind }) => kind !== 'text');
	return !isTag || labels.every((label) => label.kind !== 'text' || label.size * zoom >= LABEL_PX);
}

/** Gathers blocks, and lines by colour, until something else has to be painted over them: so far out, order among them cannot be seen. */
class Plain {
	#blocks: DrawnItem[] = [];
	readonly #lines = new Map<Paint, DrawnItem[]>();

	constructor(
		readonly context: SceneContext,
		readonly palette: Palette,
		readonly zoom: number,
		readonly opacity: number
	) {}

	block(item: DrawnItem): void {
		this.#blocks.push(item);
	}

	line(item: DrawnItem): void {
		const colour = colourOf(item);
		const lines = this.#lines.get(colour);
		if (lines) lines.push(item);
		else this.#lines.set(colour, [item]);
	}

	flush(): void {
		if (this.#blocks.length === 0 && this.#lines.size === 0) return;
		const { context, palette, zoom } = this;
		context.globalAlpha = this.opacity;
		context.setLineDash([]);
		context.lineJoin = 'miter';
		if (this.#blocks.length > 0) {
			context.beginPath();
			for (const { body } of this.#blocks) context.rect(body!.minX, body!.minY, body!.maxX - body!.minX, body!.maxY - body!.minY);
			context.fillStyle = palette['case'];
			context.fill();
			context.lineWidth = 1 / zoom;
			context.strokeStyle = palette['case-edge'];
			context.stroke();
		}
		for (const [colour, items] of this.#lines) {
			context.beginPath();
			for (const { route } of items) route!.forEach(({ x, y }, i) => (i === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
			context.lineWidth = (PLAIN_PX + 2 * PLAIN_CASING_PX) / zoom;
			context.strokeStyle = palette['case-edge'];
			context.stroke();
			context.lineWidth = PLAIN_PX / zoom;
			context.strokeStyle = palette[colour];
			context.stroke();
		}
		this.#blocks = [];
		this.#lines.clear();
	}
}

/** The drawn casing gets thinner with the zoom; without one a white conductor on paper, or a black one on slate, is gone. */
function paintCasing(context: SceneContext, { route, widthMm }: DrawnItem, { view: { zoom }, palette, opacity = 1 }: StillOptions): void {
	if (DRAWN_CASING_MM * zoom >= CASING_PX) return;
	context.globalAlpha = opacity;
	context.setLineDash([]);
	context.lineCap = 'butt';
	context.lineJoin = 'round';
	context.lineWidth = widthMm + (2 * CASING_PX) / zoom;
	context.strokeStyle = palette['case-edge'];
	context.beginPath();
	tracePolyline(context, route!, widthMm * DRAWN_ROUND);
	context.stroke();
}

/** The colour of a conductor's insulation: the first such paint along it, under marks and lugs. */
function colourOf(item: DrawnItem): Paint {
	for (const primitive of item.primitives) {
		if (primitive.kind === 'text') continue;
		for (const paint of [primitive.fill, primitive.stroke]) if (paint?.startsWith('conductor:')) return paint;
	}
	return 'ink';
}
