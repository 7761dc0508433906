import { studKey, type ConductorEnd, type ConductorId, type Diagram, type Part, type PartId, type TerminalRef } from '#core/diagram';
import type { Link, Terminal } from '#core/parts';
import type { PartLookup, Unresolved } from './types.ts';

/** The metal a conductor's end touches: a stud key, or "part.@node". */
export type Metal = string;

/** Finds the metal that conductor ends and fuse blocks land on, and says why where there is none. */
export interface Landing {
	part(id: PartId): Part | null;
	terminal(ref: TerminalRef): Terminal | null;
	/** Null when the reference leads nowhere. */
	metalOfEnd(id: ConductorId, end: ConductorEnd): Metal | null;
	whyNot(ref: TerminalRef): Unresolved['reason'];
}

export function landing(diagram: Diagram, lookup: PartLookup): Landing {
	const part = (id: PartId): Part | null => (Object.hasOwn(diagram.parts, id) ? diagram.parts[id]! : null);

	const terminal = (ref: TerminalRef): Terminal | null => {
		const found = part(ref.part);
		return found ? (lookup(found).terminals.find(({ id }) => id === ref.terminal) ?? null) : null;
	};

	return {
		part,
		terminal,
		metalOfEnd(id, end) {
			const ref = diagram.conductors[id]![end];
			const stud = terminal(ref);
			if (!stud) return null;
			if (stud.fuseInStack === undefined || !liesUnderFuse(diagram, id, end)) return studKey(ref);
			const fuse = lookup(part(ref.part)!).links.find((link) => link.id === stud.fuseInStack);
			return fuse ? `${ref.part}.${otherEnd(fuse, ref.terminal)}` : studKey(ref);
		},
		whyNot(ref) {
			const found = part(ref.part);
			if (!found) return 'no-such-part';
			return lookup(found).definition === null ? 'unknown-kind' : 'no-such-terminal';
		}
	};
}

/** A lug not yet given a place in the stack is taken to lie where it belongs, above the fuse. */
function liesUnderFuse(diagram: Diagram, id: ConductorId, end: ConductorEnd): boolean {
	const stack = diagram.stacks[studKey(diagram.conductors[id]![end])] ?? [];
	const fuse = stack.findIndex((item) => item.kind === 'fuse');
	const lug = stack.findIndex((item) => item.kind === 'lug' && item.conductor === id && item.end === end);
	return lug >= 0 && lug < fuse;
}

function otherEnd(link: Link, end: string): string {
	const [a, b] = 'between' in link ? link.between : [link.positive, link.negative];
	return a === end ? b : a;
}
