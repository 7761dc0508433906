/** What a reviewer sends back: remarks and what they are about, and nothing that could change the drawing. */
import * as z from 'zod';
import { explainIssues } from './explain-issue.ts';
import { gate, type Gate } from './gate.ts';
import type { Problem } from './problem.ts';
import { Id, RemarkSchema, type Remark } from './schema.ts';

export const REMARKS_FORMAT = 'wireworthy-remarks';
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

const GATE: Gate = {
	format: REMARKS_FORMAT,
	thing: 'a file of remarks',
	characters: 2_000_000,
	values: 100_000,
	remedy: 'Choose the file of remarks that the reviewer saved from this program.'
};

/** Reads it. Never throws. */
export function parseRemarks(text: string): RemarksResult {
	const passed = gate(text, GATE);
	if (!passed.ok) return passed;
	const { raw } = passed;
	const parsed = RemarksFileSchema.safeParse(raw);
	if (parsed.success) return { ok: true, file: parsed.data };
	const [first] = explainIssues(raw, parsed.error.issues);
	return { ok: false, problem: first! };
}
