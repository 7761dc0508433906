/**
 * Parts on the clipboard are text, so that they pass between windows. Text that comes back may be anything: it is
 * measured, parsed and validated before a single value of it is used.
 */
import * as z from 'zod';
import { fragmentOf, FragmentSchema, gate, type Diagram, type Fragment, type Gate, type PartId } from '#core/diagram';
import { messages } from './messages.ts';

const FORMAT = 'wireworthy-fragment';
const GATE: Gate = {
	format: FORMAT,
	thing: 'a piece of a diagram',
	// A thousand parts with their conductors are about half a megabyte.
	characters: 4_000_000,
	values: 800_000,
	remedy: ''
};

const EnvelopeSchema = z.strictObject({ format: z.literal(FORMAT), version: z.literal(1), fragment: FragmentSchema });

export const fragmentText = (diagram: Diagram, parts: readonly PartId[]): string =>
	JSON.stringify({ format: FORMAT, version: 1, fragment: fragmentOf(diagram, parts) });

export type ReadFragment = { readonly fragment: Fragment } | { readonly problem: string };

export function readFragment(text: string): ReadFragment {
	const passed = gate(text, GATE);
	if (!passed.ok)
		return {
			problem:
				passed.reason === 'empty'
					? messages.nothingToPaste
					: passed.reason === 'large' || passed.reason === 'many'
						? messages.tooLarge
						: messages.notAFragment
		};
	const read = EnvelopeSchema.safeParse(passed.raw);
	return read.success ? { fragment: read.data.fragment } : { problem: messages.brokenFragment(firstIssue(read.error)) };
}

function firstIssue(error: z.ZodError): string {
	const issue = error.issues[0];
	// A list of three thousand unknown names says no more than its beginning.
	return issue ? `${issue.path.join('.') || 'the whole'}: ${issue.message}`.slice(0, 300) : 'unreadable.';
}
