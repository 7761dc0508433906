import { terminalRef, type Diagram } from '#core/diagram';
import { describe } from '#core/parts';
import type { Subject } from '#core/rules';

/** Where a finding is, in a few words: "B1", "W3", "D1 end stud L", "the whole diagram". */
export function subjectText(diagram: Diagram, { kind, id }: Subject): string {
	if (kind === 'diagram') return 'the whole diagram';
	if (kind === 'conductor') return labelOf(diagram.conductors, id);
	if (kind === 'part') return labelOf(diagram.parts, id);
	const { part, terminal } = terminalRef(id);
	const label = Object.hasOwn(diagram.parts, part) ? describe(diagram.parts[part]!).terminal(terminal)?.label : undefined;
	return `${labelOf(diagram.parts, part)} ${label ?? terminal}`;
}

/** The label, or the id in quotation marks where there is none. */
const labelOf = (record: Readonly<Record<string, { readonly label: string }>>, id: string): string =>
	(Object.hasOwn(record, id) && record[id]!.label.trim()) || `“${id}”`;
