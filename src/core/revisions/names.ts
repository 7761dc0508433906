import { studKey, terminalRef, type ConductorId, type Content, type PartId, type StudKey, type TerminalRef } from '#core/diagram';
import { describe } from '#core/parts';
import { partName } from '#core/rules';

/** "B1", "unlabelled battery". */
export function partText({ parts }: Content, id: PartId): string {
	const part = Object.hasOwn(parts, id) ? parts[id] : undefined;
	return part ? partName({ label: part.label, definition: describe(part).definition }) : id;
}

/** "D1 end stud L". */
export function terminalText(content: Content, { part, terminal }: TerminalRef): string {
	const drawn = Object.hasOwn(content.parts, part) ? content.parts[part] : undefined;
	return `${partText(content, part)} ${(drawn && describe(drawn).terminal(terminal)?.label) ?? terminal}`;
}

export const studText = (content: Content, key: StudKey): string => terminalText(content, terminalRef(key));

/** The label, or where it runs. */
export function conductorText(content: Content, id: ConductorId): string {
	const { label, from, to } = content.conductors[id]!;
	return label.trim() || `unlabelled conductor from ${studText(content, studKey(from))} to ${studText(content, studKey(to))}`;
}
