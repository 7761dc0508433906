import { outward, type Point, type Side } from '#core/geometry';
import type { Terminal } from '../define.ts';
import { clamp, stud } from '../terminals.ts';
import type { OwnParams } from './params.ts';
import type { StudRow } from './rows.ts';

const SIDES: readonly Side[] = ['north', 'east', 'south', 'west'];

/** Smaller parts have no room for words beside their studs. */
const PRINT_FROM_MM = 40;
const PRINT_GAP_MM = 15;

/** A line whose id was used before is left out; one that lies off the part is moved to its edge. */
export function ownTerminals(part: OwnParams): Terminal[] {
	const seen = new Set<string>();
	return part.studs.flatMap((row) => {
		if (seen.has(row.id)) return [];
		seen.add(row.id);
		return [terminalOf(part, row)];
	});
}

function terminalOf(part: OwnParams, row: StudRow): Terminal {
	const at = { x: Math.min(row.leftMm, part.widthMm) - part.widthMm / 2, y: Math.min(row.topMm, part.heightMm) - part.heightMm / 2 };
	const side = row.side === 'any' ? nearestSide(at, part) : row.side;
	const label = row.name.trim() || row.id;
	const common = { role: row.role, maxTerminals: row.most, ratedA: row.ratedA, ...printed(label, at, side, part) };
	if (row.thread === 'clamp') return clamp(row.id, label, at, side, common);
	return stud(row.id, label, at, side, {
		...common,
		thread: row.thread,
		usableLengthMm: row.usableMm,
		coverHeightMm: row.coverMm,
		acceptsBlock: row.block,
		...(row.side === 'any' && { otherSides: SIDES.filter((other) => other !== side) })
	});
}

/** The side whose edge is nearest. */
function nearestSide({ x, y }: Point, { widthMm, heightMm }: OwnParams): Side {
	const toEdge: Record<Side, number> = { north: y + heightMm / 2, east: widthMm / 2 - x, south: heightMm / 2 - y, west: x + widthMm / 2 };
	return SIDES.toSorted((a, b) => toEdge[a] - toEdge[b])[0]!;
}

/** Its name on the part, away from the conductor. */
function printed(text: string, at: Point, side: Side, { widthMm, heightMm }: OwnParams): Pick<Terminal, 'print'> {
	if (Math.min(widthMm, heightMm) < PRINT_FROM_MM || text.length > 8) return {};
	const { x, y } = outward(side);
	return { print: { text, at: { x: at.x - x * PRINT_GAP_MM, y: at.y - y * PRINT_GAP_MM } } };
}
