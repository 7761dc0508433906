/** What a reviewer sends back: remarks and what they are about, and nothing that could change the drawing. */
import * as z from 'zod';
import { explainIssues } from './explain-issue.ts';
import type { Problem } from './problem.ts';
import { Id, RemarkSchema, type Remark } from './schema.ts';
import { unsafeKey } from './unsafe-keys.ts';

export const REMARKS_FORMAT = 'wireworthy-remarks';
const SIZE_LIMIT = 2_000_000;
const MOST_REMARKS = 2000;

const RemarksFileSchema = z.strictObject({
	format: z.literal(REMARKS_FORMAT),
	version: z.literal(1),
	/** Which drawing they are about, for the author to see. */
	about: z.strictObject({ title: z.string().max(200), revisionIndex: z.string().max(200) }),
	remarks: z
		.record(Id, RemarkSchema)
		.refine((remarks) => Object.keys(remarks).length <= MOST_REMARKS, `At most ${MOST_REMARKS} remarks are taken in at once.`)
});

export type RemarksFile = z.infer<typeof RemarksFileSchema>;

export type RemarksResult = { readonly ok: true; readonly file: RemarksFile } | { readonly ok: false; readonly problem: Problem };

/** The file's text. */
export const remarksFile = (about: RemarksFile['about'], remarks: Readonly<Record<string, Remark>>): string =>
	`${JSON.stringify({ format: REMARKS_FORMAT, version: 1, about, remarks }, null, '\t')}\n`;

/** Reads it. Never throws. */
export function parseRemarks(text: string): RemarksResult {
	const refused = (what: string, why: string, path = ''): RemarksResult => ({
		ok: false,
		problem: { path, what, why, remedy: 'Choose the file of remarks that the reviewer saved from this program.' }
	});
	if (text.length > SIZE_LIMIT) return refused('This file is too large for remarks.', 'It is probably another kind of file.');
	let raw: unknown;
	try {
		raw = JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
	} catch {
		return refused('This is not a file of remarks.', 'It is not JSON, or was cut short.');
	}
	if (typeof raw !== 'object' || raw === null || (raw as { format?: unknown }).format !== REMARKS_FORMAT)
		return refused('This is not a file of remarks.', `Such a file begins with "format": "${REMARKS_FORMAT}", and this one does not.`);
	const unsafe = unsafeKey(raw);
	if (unsafe !== null)
		return refused(
			`The file uses the name "${unsafe.split('.').at(-1)}", which is reserved.`,
			'It could change how the program behaves.',
			unsafe
		);
	const parsed = RemarksFileSchema.safeParse(raw);
	if (parsed.success) return { ok: true, file: parsed.data };
	const [first] = explainIssues(raw, parsed.error.issues);
	return { ok: false, problem: first! };
}
