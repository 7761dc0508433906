/** The usual case of chargers, converters and inverters: heat sink, front with nameplate, terminals along the lower edge. */
import type { Box } from '#core/geometry';
import { rect, type Primitive } from '#core/graphics';
import { body, fins, fixingHole, raised } from './sketch.ts';

const SINK_SHARE = 0.2;
const FLANGE_MM = 7;

export interface ElectronicsCase {
	readonly box: Box;
	/** Height of the strip that holds the terminals. */
	readonly stripMm: number;
	/** Drawn in the upper left corner of the front. */
	readonly symbol: (x: number, y: number, size: number) => Primitive[];
}

const symbolSize = (box: Box): number => Math.min(34, (box.maxX - box.minX) * 0.2);

/** Upper edge of the front, below the heat sink. */
const frontTop = ({ minY, maxY }: Box): number => minY + FLANGE_MM + Math.min(70, (maxY - minY) * SINK_SHARE);

export function electronicsCase({ box, stripMm, symbol }: ElectronicsCase): Primitive[] {
	const { minX, minY, maxX, maxY } = box;
	const width = maxX - minX;
	const top = frontTop(box);
	const size = symbolSize(box);
	return [
		body(box, 4),
		...[minX + 9, maxX - 9].map((x) => fixingHole(x, minY + 6, 2.2)),
		rect(minX + 5, minY + FLANGE_MM + 5, width - 10, top - minY - FLANGE_MM - 5, { fill: 'case-raised', stroke: 'case-edge', width: 0.35 }),
		...fins(minX + 9, minY + FLANGE_MM + 8, width - 18, top - minY - FLANGE_MM - 11, Math.round(width / 9)),
		...symbol(minX + 10 + size / 2, top + 8 + size / 2, size),
		raised(minX + 5, maxY - stripMm, width - 10, stripMm - 4, 2)
	];
}

/** Beside the symbol where there is room, else under it. */
export function electronicsNameplate(box: Box, stripMm: number): Box {
	const { minX, maxX, maxY } = box;
	return { minX: minX + 14 + symbolSize(box), maxX: maxX - 8, minY: frontTop(box) + 4, maxY: maxY - stripMm - 12 };
}
