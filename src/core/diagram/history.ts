/**
 * Undo as a value: each entry keeps immer patches both ways, never a copy of the diagram. One gesture is one
 * entry, because a gesture runs one command when it ends. Typing runs many; runs that share a `group` within
 * half a second become one entry.
 */
import { applyPatches, type Patch } from 'immer';
import { change, type Command } from './command.ts';
import type { Diagram } from './schema.ts';

const DEPTH = 500;
const GROUP_MS = 500;

export interface Entry {
	readonly label: string;
	readonly patches: readonly Patch[];
	readonly inverse: readonly Patch[];
	/** What was selected before, so that undo returns the user to where they were. */
	readonly selection: readonly string[];
	readonly group: string | null;
	readonly atMs: number;
}

export interface History {
	readonly diagram: Diagram;
	readonly done: readonly Entry[];
	/** Most recently undone last. */
	readonly undone: readonly Entry[];
}

export interface RunOptions {
	readonly selection?: readonly string[];
	/** Runs with the same group close in time merge into one undo step. */
	readonly group?: string | null;
	readonly nowMs?: number;
}

export const start = (diagram: Diagram): History => ({ diagram, done: [], undone: [] });

/** Runs a command that was not refused. A command that changes nothing leaves no entry. */
export function run(history: History, command: Command, options: RunOptions = {}): History {
	const { selection = [], group = null, nowMs = 0 } = options;
	const { diagram, patches, inverse } = change(history.diagram, command);
	if (patches.length === 0) return history;

	const last = history.done.at(-1);
	const merges =
		last !== undefined && group !== null && last.group === group && nowMs - last.atMs < GROUP_MS && history.undone.length === 0;
	return append(history, diagram, { label: command.label, patches, inverse, selection, group, atMs: nowMs }, merges);
}

/** The history with one more entry; when it merges, the entry's patches are added to the last one's. */
export function append(history: History, diagram: Diagram, added: Entry, merges: boolean): History {
	const last = history.done.at(-1);
	if (!merges || !last) return { diagram, done: [...history.done.slice(-(DEPTH - 1)), added], undone: [] };
	const { patches, inverse, atMs } = added;
	const entry = { ...last, patches: [...last.patches, ...patches], inverse: [...inverse, ...last.inverse], atMs };
	return { diagram, done: [...history.done.slice(0, -1), entry], undone: [] };
}

export function undo(history: History): History {
	const entry = history.done.at(-1);
	if (!entry) return history;
	return {
		diagram: applyPatches(history.diagram, [...entry.inverse]),
		done: history.done.slice(0, -1),
		undone: [...history.undone, entry]
	};
}

export function redo(history: History): History {
	const entry = history.undone.at(-1);
	if (!entry) return history;
	return {
		diagram: applyPatches(history.diagram, [...entry.patches]),
		done: [...history.done, entry],
		undone: history.undone.slice(0, -1)
	};
}
