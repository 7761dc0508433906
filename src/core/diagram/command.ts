/**
 * A command is the only way to change a diagram: a name, validated arguments, a reason to refuse, and a recipe.
 * `refuse` is the dry run ("could I, and if not, why not?") that menus and tooltips ask.
 */
import * as z from 'zod';
import { enablePatches, produceWithPatches, type Draft, type Patch } from 'immer';
import type { Diagram } from './schema.ts';

enablePatches();

export interface Command {
	readonly name: string;
	readonly args: unknown;
	/** What it does, for the undo menu and the live region: "move 3 parts". */
	readonly label: string;
	/** Why it cannot be done on this diagram, or null when it can. */
	refuse(diagram: Diagram): string | null;
	apply(draft: Draft<Diagram>): void;
	/** So that a failing property prints a story instead of closures. */
	toString(): string;
}

interface CommandDefinition<Args extends z.ZodType> {
	readonly name: string;
	readonly args: Args;
	label(args: z.output<Args>): string;
	refuse?(diagram: Diagram, args: z.output<Args>): string | null;
	/** The only code that mutates, and only a draft. */
	apply(draft: Draft<Diagram>, args: z.output<Args>): void;
}

/**
 * Makes a command's constructor. Wrong arguments are the programmer's fault and throw a ZodError at once;
 * the user's faults are answered by `refuse`.
 */
export function defineCommand<Args extends z.ZodType>(definition: CommandDefinition<Args>) {
	return (input: z.input<Args>): Command => {
		const args = definition.args.parse(input);
		return {
			name: definition.name,
			args,
			label: definition.label(args),
			refuse: (diagram) => definition.refuse?.(diagram, args) ?? null,
			apply: (draft) => definition.apply(draft, args),
			toString: () => `${definition.name} ${JSON.stringify(args)}`
		};
	};
}

/** Several commands as one step; each may rely on those before it. */
export function compose(label: string, commands: readonly Command[]): Command {
	return {
		name: 'compose',
		args: commands.map(({ name, args }) => ({ name, args })),
		label,
		refuse(diagram) {
			let current = diagram;
			for (const command of commands) {
				const reason = command.refuse(current);
				if (reason !== null) return reason;
				current = change(current, command).diagram;
			}
			return null;
		},
		apply: (draft) => commands.forEach((command) => command.apply(draft)),
		toString: () => commands.map(String).join('; ')
	};
}

/** Commands as one step that is called after the first; the only one as it is, null of none. */
export const together = (commands: readonly Command[]): Command | null =>
	commands.length > 1 ? compose(commands[0]!.label, commands) : (commands[0] ?? null);

export interface Change {
	readonly diagram: Diagram;
	readonly patches: readonly Patch[];
	readonly inverse: readonly Patch[];
}

/** Applies a command that was not refused. */
export function change(diagram: Diagram, command: Command): Change {
	const [next, patches, inverse] = produceWithPatches(diagram, (draft) => command.apply(draft));
	return { diagram: next, patches, inverse };
}
