/**
 * The drawing seen through a lens: conductors and studs in five bands that differ in colour, width and pattern, over
 * parts that stand back. What the lens says nothing of is a thin grey line.
 */
import { parseItemKey, type ItemKey } from '#core/diagram';
import type { DrawnItem } from '#core/drawing';
import type { LensBand, LensValue, LensView } from '#core/explain';
import { tracePolyline } from './compile.ts';
import type { Painter } from './painter.ts';
import { paintItems, paintLabels, type SceneContext, type StillOptions } from './still.ts';

const PARTS_OPACITY = 0.5;
/** A line of factor 1 is no thinner than this on the screen: thin ones could not be told apart. */
const LEAST_PX = 2;
/** A millimetre of a pattern is no shorter than this on the screen. */
const LEAST_DASH_PX = 0.7;
const SILENT_PX = 1;
const RIM_PX = 1.5;
/** As core/drawing draws conductors. */
const ROUND = 1.2;

export interface LensOptions extends StillOptions {
	readonly lens: LensView;
	readonly theme: 'light' | 'dark';
}

type LensContext = SceneContext & Pick<CanvasRenderingContext2D, 'arc'>;

export function paintThroughLens(
	context: LensContext,
	painter: Painter,
	items: ReadonlyMap<ItemKey, DrawnItem>,
	keys: readonly ItemKey[],
	options: LensOptions
): void {
	const { lens, hidden } = options;
	const shown = keys.flatMap((key) => (hidden?.has(key) ? [] : (items.get(key) ?? [])));
	const parts = shown.filter(({ route }) => route === null);
	const conductors = shown.filter(({ route }) => route !== null);
	paintItems(
		context,
		painter,
		items,
		parts.map(({ key }) => key),
		{ ...options, opacity: PARTS_OPACITY }
	);
	// The bands that matter most come last, over the others.
	const pen = new LensPen(context, options);
	const valued = conductors.map((item) => ({ item, value: valueOf(lens.conductors, item.key) }));
	for (const { item, value } of valued.toSorted((a, b) => (a.value?.band ?? -1) - (b.value?.band ?? -1))) pen.conductor(item, value);
	for (const { terminals } of parts)
		for (const { key, at, radiusMm } of terminals) {
			const value = valueOf(lens.studs, key);
			if (value) pen.stud(at.x, at.y, radiusMm, value);
		}
	for (const item of conductors) paintLabels(context, painter, item, options);
}

const valueOf = (values: Readonly<Record<string, LensValue | null>>, key: ItemKey): LensValue | null => {
	const { id } = parseItemKey(key);
	return Object.hasOwn(values, id) ? values[id]! : null;
};

class LensPen {
	readonly #bands: ReadonlyMap<number, LensBand>;

	constructor(
		readonly context: LensContext,
		readonly options: LensOptions
	) {
		this.#bands = new Map(options.lens.legend.map((band) => [band.band, band]));
	}

	conductor({ route, widthMm }: DrawnItem, value: LensValue | null): void {
		const { context, options } = this;
		const { zoom } = options.view;
		const band = value && this.#bands.get(value.band);
		const ordinary = Math.max(widthMm, LEAST_PX / zoom);
		const width = band ? ordinary * band.widthFactor : SILENT_PX / zoom;
		context.globalAlpha = 1;
		context.lineCap = 'butt';
		context.lineJoin = 'round';
		context.beginPath();
		tracePolyline(context, route!, widthMm * ROUND);
		// A rim of the ground's colour keeps crossing lines apart.
		context.setLineDash([]);
		context.lineWidth = width + (2 * RIM_PX) / zoom;
		context.strokeStyle = options.palette.paper;
		context.stroke();
		context.lineWidth = width;
		context.strokeStyle = band ? band.colour[options.theme] : options.palette['case-edge'];
		const scale = Math.max(1, LEAST_DASH_PX / zoom);
		context.setLineDash(band ? band.dashMm.map((mm) => mm * scale) : []);
		context.stroke();
		context.setLineDash([]);
	}

	stud(x: number, y: number, radiusMm: number, value: LensValue): void {
		const band = this.#bands.get(value.band);
		if (!band) return;
		const { context, options } = this;
		const { zoom } = options.view;
		const width = Math.max(radiusMm * 0.3, 1 / zoom) * band.widthFactor;
		context.globalAlpha = 1;
		context.setLineDash([]);
		context.lineWidth = width;
		context.strokeStyle = band.colour[options.theme];
		context.beginPath();
		context.arc(x, y, radiusMm * 1.2 + width / 2, 0, 2 * Math.PI);
		context.stroke();
	}
}
