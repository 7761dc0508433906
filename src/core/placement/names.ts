/** What places are called in sentences about a plan. */
import { studKey, terminalRef, type ConductorId, type Diagram, type StudKey, type TerminalRef } from '#core/diagram';
import { describe } from '#core/parts';

export const partText = ({ parts }: Diagram, id: string): string => {
	const part = Object.hasOwn(parts, id) ? parts[id] : undefined;
	return part ? part.label.trim() || (describe(part).definition?.name.toLowerCase() ?? id) : id;
};

/** "D position 3". */
export function studText(diagram: Diagram, at: TerminalRef | StudKey): string {
	const { part, terminal } = typeof at === 'string' ? terminalRef(at) : at;
	const value = Object.hasOwn(diagram.parts, part) ? diagram.parts[part] : undefined;
	return `${partText(diagram, part)} ${(value && describe(value).terminal(terminal)?.label) ?? terminal}`;
}

export function conductorText(diagram: Diagram, id: ConductorId): string {
	const conductor = diagram.conductors[id];
	if (!conductor) return id;
	return conductor.label.trim() || `${studKey(conductor.from)} to ${studKey(conductor.to)}`;
}
