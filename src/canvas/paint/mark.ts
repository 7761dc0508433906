/** Finding marks: told apart by outline and sign as well as by colour, and always of one size on the screen. */
import type { Severity } from '#core/rules';
import type { Point } from '#core/geometry';
import type { Paint, Palette } from '#core/graphics';
import type { Mark } from '../marks.ts';
import { MARK_PX } from '../theme.ts';
import { FONT } from './painter.ts';

/** What marks are painted with: little enough for a test to stand in for it. */
export type MarkContext = Pick<
	CanvasRenderingContext2D,
	| 'beginPath'
	| 'moveTo'
	| 'lineTo'
	| 'arc'
	| 'closePath'
	| 'fill'
	| 'stroke'
	| 'fillText'
	| 'fillStyle'
	| 'strokeStyle'
	| 'lineWidth'
	| 'lineJoin'
	| 'font'
	| 'textAlign'
	| 'textBaseline'
	| 'globalAlpha'
	| 'setLineDash'
>;

export const PAINT_OF: Record<Severity, Paint> = { fatal: 'error', error: 'error', warning: 'warning', note: 'note' };

/** Corners around the centre, for a mark of radius 1. A note is a circle and has none. */
const CORNERS: Record<Severity, readonly Point[] | null> = {
	fatal: ring(8, Math.PI / 8, 1),
	error: [
		{ x: 0, y: -1.05 },
		{ x: 1.08, y: 0.85 },
		{ x: -1.08, y: 0.85 }
	],
	warning: ring(4, 0, 1.08),
	note: null
};
const SIGN: Record<Severity, string> = { fatal: '!', error: '!', warning: '!', note: 'i' };

function ring(count: number, turn: number, radius: number): Point[] {
	return Array.from({ length: count }, (_, i) => {
		const angle = turn + (2 * Math.PI * i) / count;
		return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
	});
}

export type MarkStanding = 'plain' | 'focused' | 'dimmed';

/** In CSS pixels. While one finding is looked at, the marks of the others step back. */
export function paintMark(context: MarkContext, mark: Mark, palette: Palette, standing: MarkStanding): void {
	const { x, y } = mark.at;
	const radius = mark.radiusPx;
	const size = radius / MARK_PX;
	const focused = standing === 'focused';
	const opacity = standing === 'dimmed' ? 0.35 : 1;
	context.globalAlpha = opacity;
	context.setLineDash([]);
	context.lineJoin = 'round';
	if (focused) {
		context.beginPath();
		context.arc(x, y, radius * 1.7, 0, 2 * Math.PI);
		context.globalAlpha = 0.25;
		context.fillStyle = palette[PAINT_OF[mark.severity]];
		context.fill();
		context.globalAlpha = 1;
		context.strokeStyle = palette[PAINT_OF[mark.severity]];
		context.lineWidth = 1.5;
		context.stroke();
	}
	if (mark.findings.length > 1) outline(context, mark.severity, x + 3.5 * size, y - 3.5 * size, radius, palette);
	outline(context, mark.severity, x, y, radius, palette);
	context.fillStyle = palette.paper;
	context.font = `700 ${(mark.severity === 'fatal' ? 15 : 13) * size}px ${FONT}`;
	context.textAlign = 'center';
	context.textBaseline = 'middle';
	context.fillText(SIGN[mark.severity], x, y + (mark.severity === 'error' ? 2 : 0.5));
	if (mark.findings.length > 1) badge(context, x + radius, y - radius, mark.findings.length, palette);
}

function outline(context: MarkContext, severity: Severity, x: number, y: number, radius: number, palette: Palette): void {
	const corners = CORNERS[severity];
	context.beginPath();
	if (corners)
		corners.forEach((corner, i) =>
			i ? context.lineTo(x + radius * corner.x, y + radius * corner.y) : context.moveTo(x + radius * corner.x, y + radius * corner.y)
		);
	else context.arc(x, y, radius * 0.95, 0, 2 * Math.PI);
	context.closePath();
	// An edge of the background's colour keeps the mark apart from whatever it lies on.
	context.strokeStyle = palette.paper;
	context.lineWidth = 4;
	context.stroke();
	context.fillStyle = palette[PAINT_OF[severity]];
	context.fill();
}

function badge(context: MarkContext, x: number, y: number, count: number, palette: Palette): void {
	context.beginPath();
	context.arc(x, y, 7, 0, 2 * Math.PI);
	context.fillStyle = palette.ink;
	context.fill();
	context.strokeStyle = palette.paper;
	context.lineWidth = 1.5;
	context.stroke();
	context.fillStyle = palette.paper;
	context.font = `600 10px ${FONT}`;
	context.fillText(count > 9 ? '9+' : String(count), x, y + 0.5);
}
