/** Reading a file. Whatever is in it, the answer is a diagram or sentences; nothing is thrown. */
import { explainIssues } from './explain-issue.ts';
import { findJsonFault } from './json-fault.ts';
import { migrate, OLDEST } from './migrate.ts';
import { isRecord } from './migrations/raw.ts';
import type { Problem } from './problem.ts';
import { repair } from './repair.ts';
import { DiagramSchema, FORMAT, VERSION, type Diagram } from './schema.ts';
import { unsafeKey } from './unsafe-keys.ts';

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

/** Reads a file's text, or JSON already parsed. */
export function parseDiagram(input: unknown): ParseResult {
	if (typeof input !== 'string') return parseRaw(input);
	if (input.length > SIZE_LIMIT)
		return refused(
			'',
			`This file has ${Math.round(input.length / 1e6)} million characters; at most ${SIZE_LIMIT / 1e6} million are read.`,
			'A diagram is never that large, so it is probably another kind of file.',
			'Choose a file saved by this program.'
		);
	const text = input.startsWith('\uFEFF') ? input.slice(1) : input;
	let raw: unknown;
	try {
		raw = JSON.parse(text);
	} catch {
		return notJson(text);
	}
	return parseRaw(raw);
}

function notJson(text: string): ParseResult {
	if (text.trim() === '') return refused('', 'This file is empty.', 'There is no diagram to show.', 'Choose another file.');
	const fault = findJsonFault(text);
	const remedy = 'If it was edited by hand, correct that place. If it was cut short, use an earlier copy.';
	if (fault === null) return refused('', 'This file could not be read.', 'It is nested too deeply.', remedy);
	const place = `line ${fault.line}, column ${fault.column}`;
	const found = fault.found === null ? 'the file ends' : `there is ${JSON.stringify(fault.found)}`;
	return refused(
		place,
		`At ${place} ${found} where ${fault.expected} should be.`,
		'From there on it is not JSON and cannot be read.',
		remedy
	);
}

function parseRaw(raw: unknown): ParseResult {
	if (!isRecord(raw) || raw['format'] !== FORMAT)
		return refused(
			'format',
			'This is not a Wireworthy diagram.',
			`A diagram file begins with "format": "${FORMAT}", and this one does not.`,
			'Choose a file saved by this program.'
		);
	const unsafe = unsafeKey(raw);
	if (unsafe !== null)
		return refused(
			unsafe,
			`The file uses the name "${unsafe.split('.').at(-1)}", which is reserved.`,
			'Such a name could change how the program behaves, so the file is not opened.',
			'Give that entry another name, or do not use this file if you do not know where it comes from.'
		);
	const version = raw['version'];
	if (typeof version !== 'number' || !Number.isInteger(version) || version < OLDEST)
		return refused(
			'version',
			`The file's version is ${JSON.stringify(version) ?? 'missing'}.`,
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
