import type { Diagram, TerminalRef } from '#core/diagram';
import { viewPart, type Terminal } from '#core/parts';

/** The terminal a reference names; undefined where the part, its kind or the terminal does not exist. */
export function findTerminal({ parts }: Diagram, { part, terminal }: TerminalRef): Terminal | undefined {
	if (!Object.hasOwn(parts, part)) return undefined;
	return viewPart(parts[part]!).terminals.find(({ id }) => id === terminal);
}

/** "part.terminal" of every post that carries its block's own fuse, in the diagram's order. */
export function ownFuseStuds({ parts }: Diagram): string[] {
	return Object.entries(parts).flatMap(([id, part]) =>
		viewPart(part)
			.terminals.filter(({ fuseInStack }) => fuseInStack !== undefined)
			.map(({ id: terminal }) => `${id}.${terminal}`)
	);
}
