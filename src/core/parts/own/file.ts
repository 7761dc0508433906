/** A file of parts somebody made, for another diagram or another device. Reading it never throws. */
import * as z from 'zod';
import { explainIssues, unsafeKey, type Problem } from '#core/diagram';
import { ownFaults } from './faults.ts';
import { ownParams, type OwnParams } from './params.ts';

export const PARTS_FORMAT = 'wireworthy-parts';
const SIZE_LIMIT = 2_000_000;
const MOST_PARTS = 200;

const PartsFileSchema = z.strictObject({
	format: z.literal(PARTS_FORMAT),
	version: z.literal(1),
	parts: z.array(ownParams).min(1).max(MOST_PARTS)
});

export type PartsResult =
	{ readonly ok: true; readonly parts: readonly OwnParams[] } | { readonly ok: false; readonly problems: readonly [Problem, ...Problem[]] };

export const partsFile = (parts: readonly OwnParams[]): string =>
	`${JSON.stringify({ format: PARTS_FORMAT, version: 1, parts }, null, '\t')}\n`;

const REMEDY = 'Choose a file of parts that was exported from this program.';

export function parseParts(text: string): PartsResult {
	const refused = (what: string, why: string, path = ''): PartsResult => ({ ok: false, problems: [{ path, what, why, remedy: REMEDY }] });
	if (text.length > SIZE_LIMIT) return refused('This file is too large for parts.', 'It is probably another kind of file.');
	let raw: unknown;
	try {
		raw = JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
	} catch {
		return refused('This is not a file of parts.', 'It is not JSON, or was cut short.');
	}
	if (typeof raw !== 'object' || raw === null || (raw as { format?: unknown }).format !== PARTS_FORMAT)
		return refused('This is not a file of parts.', `Such a file begins with "format": "${PARTS_FORMAT}", and this one does not.`);
	const unsafe = unsafeKey(raw);
	if (unsafe !== null)
		return refused(
			`The file uses the name "${unsafe.split('.').at(-1)}", which is reserved.`,
			'It could change how the program behaves.',
			unsafe
		);
	const parsed = PartsFileSchema.safeParse(raw);
	if (!parsed.success) {
		const [first, ...others] = explainIssues(raw, parsed.error.issues);
		return { ok: false, problems: [first!, ...others] };
	}
	const [first, ...others] = parsed.data.parts.flatMap((part, index) =>
		ownFaults(part).map(({ path, text: fault }): Problem => ({
			path: `parts.${index}.${path}`,
			what: `“${part.name.trim() || index + 1}”, ${path}: ${fault}`,
			why: 'The part could not be drawn or checked as it was meant.',
			remedy: 'Correct it where it was made, and export it again.'
		}))
	);
	return first ? { ok: false, problems: [first, ...others.slice(0, 19)] } : { ok: true, parts: parsed.data.parts };
}
