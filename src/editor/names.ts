/** What the things of a diagram are called: by designation where there is one, otherwise by kind. */
import type { Diagram, PartId, TerminalRef } from '#core/diagram';
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

export function conductorName(diagram: Diagram, id: string): string {
	const conductor = diagram.conductors[id];
	if (!conductor) return id;
	return conductor.label.trim() || `${studName(diagram, conductor.from)} to ${studName(diagram, conductor.to)}`;
}
