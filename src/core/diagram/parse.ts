/** Reading a file. Whatever is in it, the answer is a diagram or sentences; nothing is thrown. */
import { explainIssues, shown } from './explain-issue.ts';
import { gate, type Gate } from './gate.ts';
import { migrate, OLDEST } from './migrate.ts';
import type { Problem } from './problem.ts';
import { repair } from './repair.ts';
import { DiagramSchema, FORMAT, VERSION, type Diagram } from './schema.ts';

/** Characters. The largest real diagrams are well under a million; beyond this something else was opened. */
export const SIZE_LIMIT = 20_000_000;

export type ParseResult =
	| {
			readonly ok: true;
			readonly diagram: Diagram;
			/** What was mended while reading, one sentence each. */
			readonly notes: readonly string[];
			/** The file's version if it was older than this program's, otherwise null. */
			readonly migratedFrom: number | null;
	  }
	| { readonly ok: false; readonly problems: readonly [Problem, ...Problem[]] };

const refused = (path: string, what: string, why: string, remedy: string): ParseResult => ({
	ok: false,
	problems: [{ path, what, why, remedy }]
});

const GATE: Gate = {
	format: FORMAT,
	thing: 'a Wireworthy diagram',
	characters: SIZE_LIMIT,
	values: 4_000_000,
	remedy: 'Choose a file saved by this program.'
};

/** Reads a file's text, or JSON already parsed. */
export function parseDiagram(input: unknown): ParseResult {
	const passed = gate(input, GATE);
	if (!passed.ok) return { ok: false, problems: [passed.problem] };
	const { raw } = passed;
	const version = raw['version'];
	if (typeof version !== 'number' || !Number.isInteger(version) || version < OLDEST)
		return refused(
			'version',
			`The file's version is ${version === undefined ? 'missing' : shown(version)}.`,
			'Without a known version its contents cannot be understood.',
			`Files of versions ${OLDEST} to ${VERSION} can be read.`
		);
	if (version > VERSION)
		return refused(
			'version',
			`This file was saved in version ${version} of the format; this program knows versions up to ${VERSION}.`,
			'Opening it could lose what the newer program stored.',
			'Use the newer program, or reload this page to get its latest version.'
		);
	const current = migrate(raw, version);
	const parsed = DiagramSchema.safeParse(current);
	if (!parsed.success) {
		const [first, ...others] = explainIssues(current, parsed.error.issues);
		return { ok: false, problems: [first!, ...others] };
	}
	return { ok: true, ...repair(parsed.data), migratedFrom: version < VERSION ? version : null };
}
