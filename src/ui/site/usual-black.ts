import { type Diagram, type TerminalRef } from '#core/diagram';
import { describe } from '#core/parts';

/** Where the black lead stays while the red one goes round: the first battery's negative post; else the first stud. */
export function usualBlack({ parts }: Diagram): TerminalRef | null {
	for (const [part, value] of Object.entries(parts))
		for (const link of describe(value).links)
			if (link.kind === 'battery' && typeof link.negative === 'string') return { part, terminal: link.negative };
	for (const [part, value] of Object.entries(parts)) {
		const [first] = describe(value).terminals;
		if (first) return { part, terminal: first.id };
	}
	return null;
}
