/** Designation and ratings of a part, on its nameplate or beside its body. */
import { boxCentre, boxHeight, boxWidth, type Box, type Side } from '#core/geometry';
import { text, textWidthMm, type Primitive } from '#core/graphics';

const LABEL_MM = 20;
const SUMMARY_MM = 12;
const LEADING = 1.25;
const GAP_MM = 6;

interface Words {
	readonly label: string;
	readonly summary: string;
}

/** Largest size up to `size` at which the text fits a width. */
const fitted = (content: string, size: number, width: number, bold: boolean): number =>
	Math.min(size, (size * width) / Math.max(textWidthMm(content, size, bold), 1e-6));

/** A summary that would come out smaller than this share of its size is broken at its commas. */
const BREAK_BELOW = 0.8;

/** Label and summary in the middle of a box, made smaller where there is little room. */
export function wordsInside({ label, summary }: Words, box: Box): Primitive[] {
	const width = boxWidth(box) * 0.94;
	const isBroken = fitted(summary, SUMMARY_MM, width, false) < SUMMARY_MM * BREAK_BELOW;
	const wanted: Line[] = [
		{ content: label, size: LABEL_MM, bold: true, fill: 'ink' },
		...(isBroken ? summary.split(', ') : [summary]).map((content): Line => ({ content, size: SUMMARY_MM, bold: false, fill: 'muted' }))
	];
	const lines = wanted.filter(({ content }) => content !== '');
	const scale = Math.min(1, boxHeight(box) / heightOf(lines));
	const summarySize = Math.min(...lines.slice(1).map(({ content, size, bold }) => fitted(content, size * scale, width, bold)));
	const fittedLines = lines.map((line, index) => ({
		...line,
		size: index > 0 ? summarySize : fitted(line.content, line.size * scale, width, line.bold)
	}));
	const { x, y } = boxCentre(box);
	return written(fittedLines, x, y - heightOf(fittedLines) / 2, { align: 'middle' });
}

interface Line {
	readonly content: string;
	readonly size: number;
	readonly bold: boolean;
	readonly fill: 'ink' | 'muted';
}

const heightOf = (lines: readonly Line[]): number => lines.reduce((sum, { size }) => sum + size * LEADING, 0);

/** Lines one under the other from `top`. */
function written(
	lines: readonly Line[],
	x: number,
	top: number,
	options: { align: 'start' | 'middle' | 'end'; halo?: 'paper' }
): Primitive[] {
	let bottom = top;
	return lines.map(({ content, size, bold, fill }) => {
		bottom += size * LEADING;
		return text(x, bottom - (size * LEADING) / 2, content, size, { bold, fill, upright: true, ...options });
	});
}

/** Where words go first when several sides are free. */
const PREFERRED: readonly Side[] = ['north', 'south', 'east', 'west'];

/** Both lines beside the body, on a side that no conductor leaves by. */
export function wordsBeside({ label, summary }: Words, body: Box, taken: ReadonlySet<Side>): Primitive[] {
	const side = PREFERRED.find((candidate) => !taken.has(candidate)) ?? 'north';
	const { x, y } = boxCentre(body);
	const wanted: Line[] = [
		{ content: label, size: LABEL_MM * 0.7, bold: true, fill: 'ink' },
		{ content: summary, size: SUMMARY_MM * 0.8, bold: false, fill: 'muted' }
	];
	const lines = wanted.filter(({ content }) => content !== '');
	const height = heightOf(lines);
	const top = side === 'north' ? body.minY - GAP_MM - height : side === 'south' ? body.maxY + GAP_MM : y - height / 2;
	const at = side === 'east' ? body.maxX + GAP_MM : side === 'west' ? body.minX - GAP_MM : x;
	return written(lines, at, top, { align: side === 'east' ? 'start' : side === 'west' ? 'end' : 'middle', halo: 'paper' });
}
