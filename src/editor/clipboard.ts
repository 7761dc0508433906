/**
 * Parts on the clipboard are text, so that they pass between windows. Text that comes back may be anything: it is
 * measured, parsed and validated before a single value of it is used.
 */
import * as z from 'zod';
import { fragmentOf, FragmentSchema, type Diagram, type Fragment, type PartId } from '#core/diagram';
import { messages } from './messages.ts';

const FORMAT = 'wireworthy-fragment';
/** A thousand parts with their conductors are about half a megabyte. */
const MAX_CHARACTERS = 4_000_000;

const EnvelopeSchema = z.strictObject({ format: z.literal(FORMAT), version: z.literal(1), fragment: FragmentSchema });

export const fragmentText = (diagram: Diagram, parts: readonly PartId[]): string =>
	JSON.stringify({ format: FORMAT, version: 1, fragment: fragmentOf(diagram, parts) });

export type ReadFragment = { readonly fragment: Fragment } | { readonly problem: string };

export function readFragment(text: string): ReadFragment {
	if (text.trim() === '') return { problem: messages.nothingToPaste };
	if (text.length > MAX_CHARACTERS) return { problem: messages.tooLarge };
	if (!text.includes(FORMAT)) return { problem: messages.notAFragment };
	let json: unknown;
	try {
		json = JSON.parse(text);
	} catch {
		return { problem: messages.notAFragment };
	}
	const read = EnvelopeSchema.safeParse(json);
	return read.success ? { fragment: read.data.fragment } : { problem: messages.brokenFragment(firstIssue(read.error)) };
}

function firstIssue(error: z.ZodError): string {
	const issue = error.issues[0];
	return issue ? `${issue.path.join('.') || 'the whole'}: ${issue.message}` : 'unreadable.';
}
