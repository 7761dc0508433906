/** The mark of remarks: a sheet with a turned-down corner and their number. Dark lines on paper, so it needs no colour. */
import type { Palette } from '#core/graphics';
import type { RemarkMark } from '../remark-marks.ts';
import type { MarkContext } from './mark.ts';
import { FONT } from './painter.ts';

/** In CSS pixels. */
export function paintRemark(context: MarkContext, { at: { x, y }, radiusPx: r, count }: RemarkMark, palette: Palette): void {
	const fold = r * 0.6;
	context.globalAlpha = 1;
	context.setLineDash([]);
	context.lineJoin = 'round';
	context.beginPath();
	context.moveTo(x - r * 0.85, y - r);
	context.lineTo(x + r * 0.85 - fold, y - r);
	context.lineTo(x + r * 0.85, y - r + fold);
	context.lineTo(x + r * 0.85, y + r);
	context.lineTo(x - r * 0.85, y + r);
	context.closePath();
	// An edge of the background's colour keeps the mark apart from whatever it lies on.
	context.strokeStyle = palette.paper;
	context.lineWidth = 5;
	context.stroke();
	context.fillStyle = palette.paper;
	context.fill();
	context.strokeStyle = palette.ink;
	context.lineWidth = 1.5;
	context.stroke();
	context.beginPath();
	context.moveTo(x + r * 0.85 - fold, y - r);
	context.lineTo(x + r * 0.85 - fold, y - r + fold);
	context.lineTo(x + r * 0.85, y - r + fold);
	context.closePath();
	context.fillStyle = palette.ink;
	context.fill();
	context.font = `700 ${r * 1.15}px ${FONT}`;
	context.textAlign = 'center';
	context.textBaseline = 'middle';
	context.fillText(count > 9 ? '9+' : String(count), x - r * 0.1, y + r * 0.2);
}
