/** What is written beside a stud's elevation. */
import type { Side } from '#core/geometry';
import { COVER_AIR_MM, threadText, type Joint, type Layer, type Stack } from '#core/studs';
import { thread } from '#core/tables';
import { ampsText, compactNumber, tenthsText, wattsText } from '#core/units';

export const seenFromText = (side: Side): string =>
	`Seen from the ${{ south: 'lower', north: 'upper', east: 'right', west: 'left' }[side]} side of the drawing`;

/** "4.8 mm, 184 A, 0.68 W" under a label where room is scarce; in full where it is not. */
export function layerDetail({ thicknessMm, widthMm, item }: Layer, joint: Joint | undefined, stack: Stack, wide: boolean): string {
	const size =
		wide && (item.kind === 'lug' || item.kind === 'block')
			? `${tenthsText(thicknessMm)} thick, ${tenthsText(widthMm)} wide${stack.terminal.thread ? `, hole ${tenthsText(thread(stack.terminal.thread).holeMm)}` : ''}`
			: wide
				? `${tenthsText(thicknessMm)} high, ${tenthsText(widthMm)} across`
				: tenthsText(thicknessMm);
	if (!joint) return size;
	const amps = ampsText(round(joint.currentA));
	return wide ? `${size}; below it ${amps}, ${wattsText(joint.heatW)}` : `${size}, ${amps}, ${compactNumber(joint.heatW, 2)} W`;
}

const round = (amps: number): number => (amps < 10 ? Number(amps.toFixed(1)) : Math.round(amps));

/** Thread beyond the nut, or what is missing of it. */
export function threadWords({ threadLeftMm }: Stack, neededMm: number): { readonly text: string; readonly isShort: boolean } | null {
	if (threadLeftMm === null) return null;
	if (threadLeftMm >= neededMm - 1e-6) return { text: `thread left ${tenthsText(threadLeftMm)}`, isShort: false };
	return { text: `${tenthsText(neededMm - threadLeftMm)} too short`, isShort: true };
}

export function coverWords(topMm: number, coverMm: number): { readonly text: string; readonly closes: boolean } {
	const freeMm = coverMm - topMm;
	if (freeMm >= COVER_AIR_MM - 1e-6) return { text: `cover, ${tenthsText(freeMm)} free`, closes: true };
	return { text: `cover ${tenthsText(COVER_AIR_MM - freeMm)} too low`, closes: false };
}

export const seatText = ({ terminal }: Stack): string =>
	`${terminal.fuseInStack === undefined ? 'seat' : 'insulated base'}${terminal.thread ? `, ${threadText(terminal.thread)}` : ''}`;

/** Shortened to a width in millimetres; what is cut off is said elsewhere in full. */
export function fitted(text: string, widthMm: number, width: (text: string) => number): string {
	if (width(text) <= widthMm) return text;
	let end = text.length;
	while (end > 1 && width(`${text.slice(0, end).trimEnd()}…`) > widthMm) end--;
	return `${text.slice(0, end).trimEnd()}…`;
}
