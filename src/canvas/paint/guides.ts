/** Lines and distances while something is moved: thin, over everything, gone when it is let go. */
import type { Guide, Point } from '#core/geometry';
import type { Palette } from '#core/graphics';
import { tenthsText } from '#core/units';
import { toScreen, type View } from '../viewport.ts';
import { FONT } from './painter.ts';

const BEYOND_PX = 6;
const TICK_PX = 4;
/** Shorter gaps have no room for their number. */
const WRITTEN_PX = 14;

type GuideContext = Pick<
	CanvasRenderingContext2D,
	| 'strokeStyle'
	| 'fillStyle'
	| 'lineWidth'
	| 'globalAlpha'
	| 'font'
	| 'textAlign'
	| 'textBaseline'
	| 'beginPath'
	| 'moveTo'
	| 'lineTo'
	| 'stroke'
	| 'fill'
	| 'roundRect'
	| 'fillText'
	| 'setLineDash'
	| 'measureText'
>;

/** In CSS pixels. */
export function paintGuides(context: GuideContext, guides: readonly Guide[], view: View, palette: Palette): void {
	context.globalAlpha = 1;
	context.strokeStyle = palette.accent;
	context.lineWidth = 1;
	for (const guide of guides) if (guide.kind === 'line') paintLine(context, guide, view);
	for (const guide of guides) if (guide.kind === 'gap') paintGap(context, guide, view, palette);
	context.setLineDash([]);
}

/** Sharp on screens whose pixels are CSS pixels. */
const crisp = (value: number): number => Math.round(value) + 0.5;

function paintLine(context: GuideContext, { axis, at, from, to }: Guide, view: View): void {
	context.setLineDash([5, 3]);
	context.beginPath();
	if (axis === 'x') {
		const [a, b] = [toScreen(view, { x: at, y: from }), toScreen(view, { x: at, y: to })];
		context.moveTo(crisp(a.x), a.y - BEYOND_PX);
		context.lineTo(crisp(b.x), b.y + BEYOND_PX);
	} else {
		const [a, b] = [toScreen(view, { x: from, y: at }), toScreen(view, { x: to, y: at })];
		context.moveTo(a.x - BEYOND_PX, crisp(a.y));
		context.lineTo(b.x + BEYOND_PX, crisp(b.y));
	}
	context.stroke();
}

function paintGap(context: GuideContext, { axis, at, from, to }: Guide, view: View, palette: Palette): void {
	const level = axis === 'x';
	const end = (value: number): Point => toScreen(view, level ? { x: value, y: at } : { x: at, y: value });
	const [a, b] = [end(from), end(to)];
	context.setLineDash([]);
	context.beginPath();
	context.moveTo(crisp(a.x), crisp(a.y));
	context.lineTo(crisp(b.x), crisp(b.y));
	for (const { x, y } of [a, b]) {
		context.moveTo(crisp(x) - (level ? 0 : TICK_PX), crisp(y) - (level ? TICK_PX : 0));
		context.lineTo(crisp(x) + (level ? 0 : TICK_PX), crisp(y) + (level ? TICK_PX : 0));
	}
	context.stroke();
	if ((to - from) * view.zoom >= WRITTEN_PX) write(context, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, distanceText(to - from), palette);
}

/** Whole millimetres: nobody drills to a tenth from a drawing. */
const distanceText = (mm: number): string => tenthsText(Math.round(mm));

function write(context: GuideContext, { x, y }: Point, text: string, palette: Palette): void {
	context.font = `600 11px ${FONT}`;
	context.textAlign = 'center';
	context.textBaseline = 'middle';
	const width = context.measureText(text).width + 8;
	context.fillStyle = palette.accent;
	context.beginPath();
	context.roundRect(x - width / 2, y - 8, width, 16, 4);
	context.fill();
	context.fillStyle = palette.paper;
	context.fillText(text, x, y + 0.5);
	context.textAlign = 'start';
}
