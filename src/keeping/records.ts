/** What lies in the store. Diagrams and steps are sealed text; everything else is small and plain. */
import * as z from 'zod';
import type { Entry, History, Step } from '#core/diagram';
import { seal, unseal, type Sealed } from './sealed.ts';

export type DiagramKey = string;

/** What the list of diagrams shows. */
export interface Card {
	readonly id: DiagramKey;
	readonly name: string;
	readonly createdMs: number;
	readonly changedMs: number;
	/** When it was put in the bin; null when it was not. */
	readonly binnedMs: number | null;
	readonly parts: number;
	readonly conductors: number;
	/** The file it was opened from or saved to. */
	readonly file: KeptFile | null;
}

export interface KeptFile {
	readonly name: string;
	/** Null where the browser gives no way back to the file. */
	readonly handle: FileSystemFileHandle | null;
	/** When the file was last written, as the disk says; null when unknown. */
	readonly modifiedMs: number | null;
	/** Sum of the text that was in it, to tell whether there is something to save. */
	readonly sum: number;
	/** Sum of a text that was being written to it when it was last heard of. */
	readonly writing?: number;
}

/** A part somebody made, for all diagrams on this device; `text` is a file of it. */
export interface ShelfRecord {
	readonly id: string;
	readonly addedMs: number;
	readonly text: string;
}

/** A whole history after a number of steps. */
export interface SnapshotRecord extends Sealed {
	readonly id: DiagramKey;
	/** Steps that are in it already. */
	readonly seq: number;
}

/** One step, or a mark where another tab began to edit: whoever edited before finds its place taken. */
export type Journalled = Step | { readonly kind: 'turn'; readonly mark: string };

export interface JournalRecord extends Sealed {
	readonly id: DiagramKey;
	readonly seq: number;
}

export type VersionReason = 'saved' | 'worked' | 'before-restoring' | 'opened' | 'mended';

export interface VersionRecord extends Sealed {
	readonly id: DiagramKey;
	readonly atMs: number;
	readonly why: VersionReason;
	readonly parts: number;
	readonly conductors: number;
}

export interface Thumbnail {
	readonly id: DiagramKey;
	/** `changedMs` of the card it was drawn for. */
	readonly of: number;
	readonly light: string;
	readonly dark: string;
}

const patch = z.object({
	op: z.enum(['add', 'remove', 'replace']),
	path: z.array(z.union([z.string(), z.number()])),
	// A removal has none.
	value: z.unknown().optional()
});
const entry: z.ZodType<Entry> = z.object({
	label: z.string(),
	patches: z.array(patch),
	inverse: z.array(patch),
	selection: z.array(z.string()),
	group: z.string().nullable(),
	atMs: z.number()
});
const step: z.ZodType<Journalled> = z.discriminatedUnion('kind', [
	z.object({ kind: z.literal('undo') }),
	z.object({ kind: z.literal('redo') }),
	z.object({ kind: z.literal('turn'), mark: z.string() }),
	z.object({ kind: z.literal('run'), entry, merges: z.boolean() })
]);
const snapshot = z.object({ diagram: z.unknown(), done: z.array(entry), undone: z.array(entry) });

/** A history whose diagram was not looked at yet: it may be of an older version of the format. */
export type RawHistory = Pick<History, 'done' | 'undone'> & { readonly diagram: unknown };

const place = (what: string, id: DiagramKey, n: number): string => `${what} ${id} ${n}`;

export const snapshotRecord = (id: DiagramKey, seq: number, history: History): SnapshotRecord => ({
	id,
	seq,
	...seal(history, place('snapshot', id, seq))
});

export const stepRecord = (id: DiagramKey, seq: number, taken: Journalled): JournalRecord => ({
	id,
	seq,
	...seal(taken, place('step', id, seq))
});

/** Null when the record is damaged. */
export function historyIn(record: SnapshotRecord): RawHistory | null {
	const read = snapshot.safeParse(unseal(record, place('snapshot', record.id, record.seq)));
	return read.success ? read.data : null;
}

/** Null when the record is damaged. */
export function stepIn(record: JournalRecord): Journalled | null {
	const read = step.safeParse(unseal(record, place('step', record.id, record.seq)));
	return read.success ? read.data : null;
}

export const sealVersion = (id: DiagramKey, atMs: number, diagram: unknown): Sealed => seal(diagram, place('version', id, atMs));
export const unsealVersion = (record: VersionRecord): unknown => unseal(record, place('version', record.id, record.atMs));
