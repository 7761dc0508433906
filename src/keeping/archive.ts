/** Everything at once, as one file: all diagrams with their versions. Undo steps stay behind. */
import * as z from 'zod';
import { gate, parseDiagram, type Diagram, type Gate, type Problem } from '#core/diagram';
import type { Cabinet } from './cabinet.ts';
import { sealVersion, type VersionReason } from './records.ts';
import { addDiagram, readKept } from './tidy.ts';
import { readVersion } from './versions.ts';

export const ARCHIVE_FORMAT = 'wireworthy-archive';
const ARCHIVE_VERSION = 1;

/** Bytes. A hundred large diagrams with forty versions each. */
const ARCHIVE_LIMIT = 200_000_000;
const MOST_DIAGRAMS = 10_000;
const MOST_VERSIONS = 100;

const REASONS = ['saved', 'worked', 'before-restoring', 'opened', 'mended'] as const satisfies readonly VersionReason[];
/** The last millisecond a Date can hold. */
const ms = z.number().min(0).max(8.64e15);
const Archive = z.object({
	format: z.literal(ARCHIVE_FORMAT),
	version: z.literal(ARCHIVE_VERSION),
	diagrams: z
		.array(
			z.object({
				createdMs: ms,
				changedMs: ms,
				diagram: z.unknown(),
				versions: z.array(z.object({ atMs: ms, why: z.enum(REASONS), diagram: z.unknown() })).max(MOST_VERSIONS)
			})
		)
		.max(MOST_DIAGRAMS)
});

export interface Exported {
	readonly text: string;
	readonly diagrams: number;
	/** Names of those that cannot be read, and are not in the file. */
	readonly unreadable: readonly string[];
}

/** What is in the bin is left out. */
export async function exportAll(cabinet: Cabinet): Promise<Exported> {
	const diagrams: z.input<typeof Archive>['diagrams'] = [];
	const unreadable: string[] = [];
	for (const { id, name, createdMs, changedMs, binnedMs } of await cabinet.cards()) {
		if (binnedMs !== null) continue;
		try {
			const { history } = await readKept(cabinet, id);
			const versions = (await cabinet.versions(id)).flatMap((record) => {
				const read = readVersion(record);
				return read.ok ? [{ atMs: record.atMs, why: record.why, diagram: read.diagram }] : [];
			});
			diagrams.push({ createdMs, changedMs, diagram: history.diagram, versions });
		} catch {
			unreadable.push(name);
		}
	}
	const archive = { format: ARCHIVE_FORMAT, version: ARCHIVE_VERSION, diagrams };
	return { text: `${JSON.stringify(archive, null, '\t')}\n`, diagrams: diagrams.length, unreadable };
}

interface Incoming {
	readonly createdMs: number;
	readonly changedMs: number;
	readonly diagram: Diagram;
	readonly versions: readonly { readonly atMs: number; readonly why: VersionReason; readonly diagram: Diagram }[];
}

export type ArchiveRead =
	| {
			readonly ok: true;
			readonly diagrams: readonly Incoming[];
			/** One for each that is not taken. */ readonly refused: readonly string[];
	  }
	| { readonly ok: false; readonly problem: Problem };

const refuse = (what: string, why: string, remedy: string): ArchiveRead => ({ ok: false, problem: { path: '', what, why, remedy } });

/** Every diagram passes the gate of a single file; one that does not is left out and named. Rejects when the browser cannot read the file. */
export async function readArchive(file: Blob): Promise<ArchiveRead> {
	if (file.size > ARCHIVE_LIMIT)
		return refuse('The file is too large.', `At most ${ARCHIVE_LIMIT / 1e6} MB are read.`, 'Choose a file exported by this program.');
	return archiveIn(await file.text());
}

const GATE: Gate = {
	format: ARCHIVE_FORMAT,
	thing: 'a file of all diagrams',
	characters: ARCHIVE_LIMIT,
	values: 40_000_000,
	remedy: 'Choose a file exported by this program; a single diagram is opened with "Open".'
};

function archiveIn(text: string): ArchiveRead {
	const passed = gate(text, GATE);
	if (!passed.ok) return passed;
	const parsed = Archive.safeParse(passed.raw);
	if (!parsed.success)
		return refuse(
			'The file does not hold exported diagrams.',
			parsed.error.issues[0]?.message ?? 'It has another form.',
			'Choose a file exported by this program; a single diagram is opened with "Open".'
		);
	const refused: string[] = [];
	const diagrams = parsed.data.diagrams.flatMap(({ createdMs, changedMs, diagram, versions }, index): Incoming[] => {
		const read = parseDiagram(diagram);
		if (!read.ok) {
			refused.push(`Diagram ${index + 1}: ${read.problems[0].what}`);
			return [];
		}
		const whole = versions.flatMap((version) => {
			const old = parseDiagram(version.diagram);
			return old.ok ? [{ ...version, diagram: old.diagram }] : [];
		});
		return [{ createdMs, changedMs, diagram: read.diagram, versions: whole }];
	});
	return { ok: true, diagrams, refused };
}

/** Adds the diagrams beside those that are there; none is replaced. */
export async function importAll(cabinet: Cabinet, diagrams: readonly Incoming[]): Promise<void> {
	for (const { diagram, versions, ...dates } of diagrams) {
		const id = await addDiagram(cabinet, diagram, dates);
		for (const { atMs, why, diagram: old } of versions) {
			const counts = { parts: Object.keys(old.parts).length, conductors: Object.keys(old.conductors).length };
			await cabinet.putVersion({ id, atMs, why, ...counts, ...sealVersion(id, atMs, old) });
		}
	}
}
