/**
 * From what lies in the store to the history as it was after the last step that can be read. Whatever is damaged or
 * cut off, what comes before it is found; nothing is thrown.
 */
import { parseDiagram, start, takeStep, type History, type Problem } from '#core/diagram';
import { historyIn, stepIn, type JournalRecord, type RawHistory, type SnapshotRecord } from './records.ts';

export interface Recovered {
	readonly history: History;
	/** The number of the last step in the store, whether it could be read or not: the next one follows it. */
	readonly seq: number;
	/** Steps at the end that could not be read. */
	readonly lost: number;
	/** What was mended in the diagram, a sentence each; its undo history is then gone. */
	readonly notes: readonly string[];
}

export type Recovery =
	| ({ readonly ok: true } & Recovered)
	/** No problems: nothing of it can be read. */
	| { readonly ok: false; readonly problems: readonly Problem[] };

/** @param snapshots newest first, @param steps in order; those that a snapshot holds already are passed over */
export function recover(snapshots: readonly SnapshotRecord[], steps: readonly JournalRecord[]): Recovery {
	const seq = Math.max(0, ...snapshots.map((one) => one.seq), ...steps.slice(-1).map((one) => one.seq));
	let problems: readonly Problem[] = [];
	for (const record of snapshots) {
		const base = historyIn(record);
		if (!base) continue;
		const states = replay(base, record.seq, steps);
		for (let taken = states.length - 1; taken >= 0; taken -= 1) {
			const read = readable(states[taken]!);
			if (read.ok) return { ok: true, history: read.history, notes: read.notes, seq, lost: lostAfter(record.seq + taken, seq, steps) };
			problems = read.problems;
		}
	}
	return { ok: false, problems };
}

/** How many steps there were after this one; marks of other tabs are none. */
function lostAfter(read: number, last: number, steps: readonly JournalRecord[]): number {
	const marks = steps.filter((record) => record.seq > read && stepIn(record)?.kind === 'turn');
	return last - read - marks.length;
}

/** The history after none, one, two … of the steps that follow `seq`, as far as they can be taken. */
function replay(base: RawHistory, seq: number, steps: readonly JournalRecord[]): RawHistory[] {
	const states: RawHistory[] = [base];
	for (const record of steps) {
		if (record.seq <= seq) continue;
		if (record.seq !== seq + states.length) break;
		const step = stepIn(record);
		if (!step) break;
		try {
			const before = states.at(-1) as History;
			states.push(step.kind === 'turn' ? before : takeStep(before, step));
		} catch {
			break;
		}
	}
	return states;
}

/** The diagram passes the same gate as a file. Undo steps do not fit one that was migrated or mended. */
function readable(raw: RawHistory): { ok: true; history: History; notes: readonly string[] } | { ok: false; problems: readonly Problem[] } {
	const read = parseDiagram(raw.diagram);
	if (!read.ok) return read;
	const { diagram, notes, migratedFrom } = read;
	const same = notes.length === 0 && migratedFrom === null;
	return { ok: true, notes, history: same ? { diagram, done: raw.done, undone: raw.undone } : start(diagram) };
}
