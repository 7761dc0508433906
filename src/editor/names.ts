/** What the things of a diagram are called: by designation where there is one, otherwise by kind. */
import { drawingMessages } from './drawing-messages.ts';
import type { Diagram, FrameKind, PartId, TerminalRef } from '#core/diagram';
import { describe } from '#core/parts';

export function partName(diagram: Diagram, id: PartId): string {
	const part = diagram.parts[id];
	if (!part) return id;
	return part.label.trim() || describe(part).name;
}

/** "B1 +". */
export function studName(diagram: Diagram, { part: id, terminal }: TerminalRef): string {
	const part = diagram.parts[id];
	const label = part ? describe(part).terminal(terminal)?.label : undefined;
	return `${partName(diagram, id)} ${label ?? terminal}`;
}

/** An area's name, the first words of a note, a picture's name. */
export function frameName(diagram: Diagram, kind: FrameKind, id: string): string {
	if (kind === 'area') return diagram.areas[id]?.label.trim() || drawingMessages.area;
	if (kind === 'underlay') return diagram.underlays[id]?.label.trim() || drawingMessages.picture;
	const words = diagram.notes[id]?.text.trim() ?? '';
	return words.length > 40 ? `${words.slice(0, 39).trimEnd()}…` : words || drawingMessages.note;
}

export function conductorName(diagram: Diagram, id: string): string {
	const conductor = diagram.conductors[id];
	if (!conductor) return id;
	return conductor.label.trim() || `${studName(diagram, conductor.from)} to ${studName(diagram, conductor.to)}`;
}
