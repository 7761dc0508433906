/** Where on a bus and the panels it feeds there is room. */
import { studKey, type Diagram, type PartId } from '#core/diagram';
import { describe } from '#core/parts';
import { landings } from '#core/studs';
import { barOf } from '#core/bars';
import type { OldCircuit } from './circuits.ts';
import { fuseBehind } from './holders.ts';
import { panelsOn } from './landing-kinds.ts';

export interface Place {
	readonly kind: 'position' | 'end' | 'way';
	readonly part: PartId;
	readonly terminal: string;
	readonly room: number;
}

/** A twin block carries two. */
const PER_END = 2;
const PER_PANEL = 4;

/** Terminals of positions with nothing on them and no fuse behind them. */
export const freePositions = (diagram: Diagram, bus: PartId): string[] => {
	const landed = landings(diagram);
	return (barOf(diagram, bus)?.slots ?? [])
		.filter(({ terminal, fused }) => fused && !landed.has(studKey({ part: bus, terminal })) && !fuseBehind(diagram.parts[bus]!, terminal))
		.map(({ terminal }) => terminal);
};

export function placesOn(diagram: Diagram, bus: PartId, old: readonly OldCircuit[]): Place[] {
	const landed = landings(diagram);
	const load = (terminal: string) => landed.get(studKey({ part: bus, terminal }))?.length ?? 0;
	const part = describe(diagram.parts[bus]!);
	return [
		...freePositions(diagram, bus).map((terminal) => ({ kind: 'position' as const, part: bus, terminal, room: 1 })),
		...panelsOn(diagram, old).map((panel) => ({ kind: 'way' as const, part: panel, terminal: '', room: PER_PANEL })),
		// The emptier end first; a feed shares its stud only if it must.
		...(barOf(diagram, bus)?.slots ?? [])
			.filter(({ terminal, fused }) => !fused && part.terminal(terminal)?.acceptsBlock !== false)
			.sort((a, b) => load(a.terminal) - load(b.terminal))
			.map(({ terminal }) => ({ kind: 'end' as const, part: bus, terminal, room: PER_END }))
	];
}
