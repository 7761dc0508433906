import type { Content } from '#core/diagram';
import type { Subject } from '#core/rules';

/** "electrical": anything that is built, set or checked; "moved": only on the drawing; "words": notes and title block. */
export type ChangeSort = 'electrical' | 'moved' | 'words';

/** One thing that differs between two issues, in the trade's words. */
export interface DrawingChange {
	readonly sort: ChangeSort;
	readonly how: 'added' | 'removed' | 'changed';
	readonly subject: Subject;
	/** What it is about: "F3", "C2+", "D1 end stud L". */
	readonly name: string;
	/** "100 A to 80 A", "added: strip-fuse holder, 60 A". Reads on after the name. */
	readonly text: string;
}

export interface Pair {
	readonly before: Content;
	readonly after: Content;
}

/** Ids of two records, those of the first before those that are new. */
export function ids(before: Readonly<Record<string, unknown>>, after: Readonly<Record<string, unknown>>): readonly string[] {
	return [...Object.keys(before), ...Object.keys(after).filter((id) => !Object.hasOwn(before, id))];
}

/** Equal as data: revisions come from files as well as from memory. */
export const same = (a: unknown, b: unknown): boolean => a === b || canonical(a) === canonical(b);

function canonical(value: unknown): string {
	return JSON.stringify(value, (_, inner: unknown) => {
		if (typeof inner !== 'object' || inner === null || Array.isArray(inner)) return inner;
		return Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)));
	});
}
