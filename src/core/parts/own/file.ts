/** A file of parts somebody made, for another diagram or another device. Reading it never throws. */
import * as z from 'zod';
import { explainIssues, gate, type Gate, type Problem } from '#core/diagram';
import { ownFaults } from './faults.ts';
import { ownParams, type OwnParams } from './params.ts';

export const PARTS_FORMAT = 'wireworthy-parts';
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

const GATE: Gate = {
	format: PARTS_FORMAT,
	thing: 'a file of parts',
	characters: 2_000_000,
	values: 400_000,
	remedy: 'Choose a file of parts that was exported from this program.'
};

export function parseParts(text: string): PartsResult {
	const passed = gate(text, GATE);
	if (!passed.ok) return { ok: false, problems: [passed.problem] };
	const { raw } = passed;
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
