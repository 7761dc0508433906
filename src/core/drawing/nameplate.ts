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

/** Both lines in the middle of a box, made smaller where it is narrow. */
export function wordsInside({ label, summary }: Words, box: Box): Primitive[] {
	const width = boxWidth(box) * 0.94;
	const scale = Math.min(1, boxHeight(box) / ((LABEL_MM + SUMMARY_MM) * LEADING));
	const labelSize = fitted(label, LABEL_MM * scale, width, true);
	const summarySize = fitted(summary, SUMMARY_MM * scale, width, false);
	const { x, y } = boxCentre(box);
	if (label === '') return [text(x, y, summary, summarySize, { fill: 'muted', upright: true })];
	const height = (labelSize + summarySize) * LEADING;
	return [
		text(x, y - height / 2 + (labelSize * LEADING) / 2, label, labelSize, { bold: true, upright: true }),
		text(x, y + height / 2 - (summarySize * LEADING) / 2, summary, summarySize, { fill: 'muted', upright: true })
	].filter((primitive) => primitive.kind !== 'text' || primitive.text !== '');
}

/** Where words go first when several sides are free. */
const PREFERRED: readonly Side[] = ['north', 'south', 'east', 'west'];

/** Both lines beside the body, on a side that no conductor leaves by. */
export function wordsBeside({ label, summary }: Words, body: Box, taken: ReadonlySet<Side>): Primitive[] {
	const side = PREFERRED.find((candidate) => !taken.has(candidate)) ?? 'north';
	const { x, y } = boxCentre(body);
	const lines = [
		{ content: label, size: LABEL_MM * 0.7, bold: true, fill: 'ink' as const },
		{ content: summary, size: SUMMARY_MM * 0.8, bold: false, fill: 'muted' as const }
	].filter(({ content }) => content !== '');
	const height = lines.reduce((sum, { size }) => sum + size * LEADING, 0);
	const top = side === 'north' ? body.minY - GAP_MM - height : side === 'south' ? body.maxY + GAP_MM : y - height / 2;
	const at = side === 'east' ? body.maxX + GAP_MM : side === 'west' ? body.minX - GAP_MM : x;
	const align = side === 'east' ? 'start' : side === 'west' ? 'end' : 'middle';
	let bottom = top;
	return lines.map(({ content, size, bold, fill }) => {
		bottom += size * LEADING;
		return text(at, bottom - (size * LEADING) / 2, content, size, { bold, fill, align, upright: true, halo: 'paper' });
	});
}
