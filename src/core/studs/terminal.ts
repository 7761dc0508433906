import { studKey, type Diagram, type StudKey, type TerminalRef } from '#core/diagram';
import { describe, type PartDescription, type Terminal } from '#core/parts';

/** The terminal a reference names; undefined where the part, its kind or the terminal does not exist. */
export function findTerminal({ parts }: Diagram, { part, terminal }: TerminalRef): Terminal | undefined {
	return Object.hasOwn(parts, part) ? describe(parts[part]!).terminal(terminal) : undefined;
}

/** Posts that carry a fuse block's own fuse; a post whose fuse is not fitted is not among them. */
export function fusePosts({ parts }: Diagram): Set<StudKey> {
	return new Set(
		Object.entries(parts).flatMap(([part, value]) => fusedTerminals(describe(value)).map(({ id }) => studKey({ part, terminal: id })))
	);
}

/** Whether the block's own fuse sits on this post. */
export function hasOwnFuse({ parts }: Diagram, { part, terminal }: TerminalRef): boolean {
	return Object.hasOwn(parts, part) && fusedTerminals(describe(parts[part]!)).some(({ id }) => id === terminal);
}

const fused = new WeakMap<PartDescription, readonly Terminal[]>();

function fusedTerminals(description: PartDescription): readonly Terminal[] {
	const { terminals, links } = description;
	let found = fused.get(description);
	if (!found) {
		found = terminals.filter(({ fuseInStack }) => fuseInStack !== undefined && links.some(({ id }) => id === fuseInStack));
		fused.set(description, found);
	}
	return found;
}
