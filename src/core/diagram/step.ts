/**
 * What led from one history to the next, as data: a journal of steps, replayed, gives the same history again, undo
 * and all. Only what a run added is in it, so that typing does not write its whole group at each letter.
 */
import { applyPatches } from 'immer';
import { append, redo, undo, type Entry, type History } from './history.ts';

export type Step =
	| { readonly kind: 'undo' }
	| { readonly kind: 'redo' }
	/** `merges`: the entry adds to the last one instead of following it. */
	| { readonly kind: 'run'; readonly entry: Entry; readonly merges: boolean };

/** The step between two histories of which the second came from the first by one run, undo or redo. */
export function stepBetween(before: History, after: History): Step {
	const last = before.done.at(-1);
	const entry = after.done.at(-1);
	if (last && after.undone.at(-1) === last) return { kind: 'undo' };
	if (entry && before.undone.at(-1) === entry) return { kind: 'redo' };
	if (!entry) throw new RangeError('No step leads from the one history to the other.');
	if (!last || after.done.at(-2) === last) return { kind: 'run', entry, merges: false };
	const added = {
		...entry,
		patches: entry.patches.slice(last.patches.length),
		inverse: entry.inverse.slice(0, entry.inverse.length - last.inverse.length)
	};
	return { kind: 'run', entry: added, merges: true };
}

/** Takes the step again. Throws when its patches do not fit this diagram. */
export function takeStep(history: History, step: Step): History {
	if (step.kind === 'run') return append(history, applyPatches(history.diagram, [...step.entry.patches]), step.entry, step.merges);
	const next = step.kind === 'undo' ? undo(history) : redo(history);
	if (next === history) throw new RangeError(`There is nothing to ${step.kind}.`);
	return next;
}
