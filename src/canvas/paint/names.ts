/** Writes designations at a fixed size on the screen; where they lie is canvas/names.ts's affair. */
import type { Diagram, ItemKey } from '#core/diagram';
import type { DrawnItem } from '#core/drawing';
import type { Palette } from '#core/graphics';
import { NAME_PX, placeNames, type PlacedName } from '../names.ts';
import type { View } from '../viewport.ts';
import { FONT } from './painter.ts';

const NAME_FONT = `600 ${NAME_PX}px ${FONT}`;

export type Names = ReadonlyMap<ItemKey, PlacedName | null>;

/** Remembers places while neither drawing nor zoom change, and the widths of texts for good. */
export class NamePainter {
	readonly #widths = new Map<string, number>();
	#last: { items: unknown; zoom: number; names: Names } | null = null;

	names(context: CanvasRenderingContext2D, diagram: Diagram, items: ReadonlyMap<ItemKey, DrawnItem>, zoom: number): Names {
		if (this.#last?.items === items && this.#last.zoom === zoom) return this.#last.names;
		context.font = NAME_FONT;
		const widthOf = (text: string): number => {
			const width = this.#widths.get(text) ?? context.measureText(text).width;
			this.#widths.set(text, width);
			return width;
		};
		const names = placeNames(diagram, items, { zoom, widthOf });
		this.#last = { items, zoom, names };
		return names;
	}

	/** In CSS pixels. */
	paint(context: CanvasRenderingContext2D, names: Names, view: View, palette: Palette, hidden?: ReadonlySet<ItemKey>): void {
		context.font = NAME_FONT;
		context.textAlign = 'center';
		context.textBaseline = 'middle';
		context.lineJoin = 'round';
		context.lineWidth = 3;
		context.globalAlpha = 1;
		context.setLineDash([]);
		context.strokeStyle = palette.paper;
		context.fillStyle = palette.ink;
		for (const [key, name] of names) {
			if (!name || hidden?.has(key)) continue;
			const x = name.at.x + view.x;
			const y = name.at.y + view.y;
			context.strokeText(name.text, x, y);
			context.fillText(name.text, x, y);
		}
	}
}
