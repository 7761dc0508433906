/** Buses with positions behind fuses: the ones that can be full. */
import { parseItemKey, terminalRef, type Diagram, type ItemKey, type PartId } from '#core/diagram';
import { barOf } from '#core/bars';
import type { Workbench } from '../context.ts';

export const isFusedBus = (diagram: Diagram, id: PartId): boolean => barOf(diagram, id)?.slots.some(({ fused }) => fused) ?? false;

export const fusedBuses = (diagram: Diagram): PartId[] => Object.keys(diagram.parts).filter((id) => isFusedBus(diagram, id));

/** The bus among these things, or one of whose studs is. */
export const busAmong = (diagram: Diagram, keys: Iterable<ItemKey>): PartId | undefined =>
	[...keys]
		.map(parseItemKey)
		.flatMap(({ kind, id }) => (kind === 'part' ? [id] : kind === 'stud' ? [terminalRef(id).part] : []))
		.find((id) => isFusedBus(diagram, id));

/** Asks for room on a bus: on the one given, else the one selected, else the one asked about last. */
export function openFullBus({ editor, view }: Workbench, bus = busAmong(editor.diagram, editor.selection)): void {
	if (bus !== undefined) view.fullBus.bus = bus;
	view.dialog = 'full-bus';
}

/** Asks for the best order of the circuits on a bus. */
export function openPositions({ view }: Workbench, bus: PartId): void {
	view.fullBus.bus = bus;
	view.dialog = 'positions';
}

/** Rules that find too much at one place of a bus, or a circuit at a place that is not its own. */
export const ROOM_RULES: readonly string[] = [
	'stud-crowded',
	'stud-too-short',
	'cover-clearance',
	'lugs-clash',
	'block-misuse',
	'unprotected-conductor',
	'critical-circuit-shares-fuse',
	'bus-overloaded'
];
