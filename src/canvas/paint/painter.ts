/** Paints compiled primitives onto a 2D context whose unit is already the millimetre. */
import { BASELINE_SHIFT, type Palette, type Primitive } from '#core/graphics';
import { compile, type Op, type Pen, type TextPrimitive } from './compile.ts';

export type Context = Pick<
	CanvasRenderingContext2D,
	| 'fillStyle'
	| 'strokeStyle'
	| 'lineWidth'
	| 'lineCap'
	| 'lineJoin'
	| 'globalAlpha'
	| 'font'
	| 'textAlign'
	| 'textBaseline'
	| 'setLineDash'
	| 'fillText'
	| 'strokeText'
> & { fill(path: Path2D): void; stroke(path: Path2D): void };

/** The interface's own. */
export const FONT = "system-ui, -apple-system, 'Segoe UI', Roboto, 'Noto Sans', 'Liberation Sans', sans-serif";
/** As in the SVG writer: a drawing looks the same on paper. */
const HALO_SHARE = 0.3;

/** Details smaller than this on the screen are left out: nuts, threads and print of a drawing seen from afar. */
const SPECK_PX = 2;

export interface PaintOptions {
	readonly palette: Palette;
	/** Pixels per millimetre: thin lines never get thinner than a pixel, unreadable text is left out. */
	readonly zoom: number;
	readonly opacity?: number;
	/** Text below this height in pixels is left out. */
	readonly minTextPx?: number;
}

export class Painter {
	readonly #compiled = new WeakMap<readonly Primitive[], readonly Op[]>();
	readonly #newPath: () => Pen;

	/** @param newPath Stands in for Path2D where there is none (Node). */
	constructor(newPath: () => Pen = () => new Path2D()) {
		this.#newPath = newPath;
	}

	paint(context: Context, primitives: readonly Primitive[], options: PaintOptions): void {
		let ops = this.#compiled.get(primitives);
		if (!ops) {
			ops = compile(primitives, this.#newPath) as Op[];
			this.#compiled.set(primitives, ops);
		}
		for (const op of ops) {
			if (op.kind === 'text') this.#text(context, op.text, options);
			else if (op.sizeMm * options.zoom >= SPECK_PX) paintPath(context, op, options);
		}
	}

	#text(context: Context, text: TextPrimitive, { palette, zoom, opacity = 1, minTextPx = 3 }: PaintOptions): void {
		if (text.size * zoom < minTextPx) return;
		context.font = `${text.bold ? '600 ' : ''}${text.size}px ${FONT}`;
		context.textAlign = text.align === 'middle' ? 'center' : (text.align ?? 'start');
		context.textBaseline = 'alphabetic';
		const baseline = text.y + text.size * BASELINE_SHIFT;
		context.globalAlpha = (text.opacity ?? 1) * opacity;
		if (text.halo) {
			context.strokeStyle = palette[text.halo];
			context.lineWidth = text.size * HALO_SHARE;
			// Mitred halos grow spikes on letters such as M and 4.
			context.lineJoin = 'round';
			context.setLineDash([]);
			context.strokeText(text.text, text.x, baseline);
		}
		context.fillStyle = palette[text.fill ?? 'ink'];
		context.fillText(text.text, text.x, baseline);
	}
}

function paintPath(context: Context, op: Extract<Op, { kind: 'path' }>, { palette, zoom, opacity = 1 }: PaintOptions): void {
	context.globalAlpha = op.opacity * opacity;
	if (op.fill) {
		context.fillStyle = palette[op.fill];
		context.fill(op.path);
	}
	if (op.stroke) {
		context.strokeStyle = palette[op.stroke];
		context.lineWidth = Math.max(op.widthMm, 1 / zoom);
		context.lineCap = op.cap;
		context.lineJoin = 'round';
		context.setLineDash(op.dash as number[]);
		context.stroke(op.path);
	}
}
