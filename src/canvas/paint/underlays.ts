/** Pictures below the drawing. They are decoded once, and painted when they are ready. */
import type { Diagram, ItemKey } from '#core/diagram';
import type { DrawnItem } from '#core/drawing';

export class UnderlayPainter {
	readonly #images = new Map<string, HTMLImageElement>();

	constructor(readonly ready: () => void) {}

	/** On a context whose unit is the millimetre. */
	paint(
		context: Pick<CanvasRenderingContext2D, 'drawImage' | 'globalAlpha'>,
		{ underlays }: Pick<Diagram, 'underlays'>,
		items: ReadonlyMap<ItemKey, DrawnItem>,
		hidden?: ReadonlySet<ItemKey>
	): void {
		for (const [id, { picture, opacity }] of Object.entries(underlays)) {
			const frame = items.get(`underlay:${id}`)?.frame;
			const image = this.#image(picture);
			if (!frame || hidden?.has(`underlay:${id}`) || !image.complete || image.naturalWidth === 0) continue;
			context.globalAlpha = opacity;
			context.drawImage(image, frame.minX, frame.minY, frame.maxX - frame.minX, frame.maxY - frame.minY);
			context.globalAlpha = 1;
		}
	}

	#image(picture: string): HTMLImageElement {
		const known = this.#images.get(picture);
		if (known) return known;
		// Pictures of other diagrams are not kept.
		if (this.#images.size > 8) this.#images.clear();
		const image = new Image();
		image.onload = this.ready;
		image.src = picture;
		this.#images.set(picture, image);
		return image;
	}
}
