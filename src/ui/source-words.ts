/**
 * How a source is put on the screen. In the core a source is a key as much as a sentence; here a reader wants to know
 * whether it was published, and whether the figure was seen there.
 */
import { said } from './language/said.ts';

const PRACTICE = /common practice, no source/gi;

/** Marks a figure that was not seen in its source. */
const NOT_SEEN: readonly (readonly [RegExp, string])[] = [
	[/\b(is|are) from memory and shown as unverified/g, '$1 not yet verified'],
	[/\bfrom memory and shown as unverified/g, 'not yet verified'],
	[/\b(is|are) from memory/g, '$1 not yet verified'],
	[/ \(from memory\)/g, ' (not yet verified)']
];

const REMARK = /,? from memory( as )?/g;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const practiceSaid = (text: string): string => text.replace(PRACTICE, said('rule of thumb, no published source'));

/** A source as a line under a finding. Whether it was verified is said by `unverifiedIn`. */
export const sourceText = (source: string): string =>
	capital(practiceSaid(source).replace(REMARK, (_, as: string | undefined) => (as ? ', taken to be as ' : '')));

/** A sentence about sources, such as the scope of a profile. */
export const scopeText = (scope: string): string =>
	practiceSaid(NOT_SEEN.reduce((text, [pattern, words]) => text.replace(pattern, words), scope)).replace(REMARK, ', not yet verified');

/** Which of a finding's sources hold figures that were not seen there; empty where the finding does not say. */
export const unverifiedIn = (source: string): readonly string[] =>
	source.split('; ').flatMap((one) => (one.includes('from memory') ? [sourceText(one)] : []));

/** What is wrong, and the sums and figures behind it: the first sentence, and the rest. */
export function verdictOf(message: string): { readonly verdict: string; readonly figures: string } {
	const end = /[.!?]["”]?\s+(?=[\p{Lu}\d“"])/u.exec(message);
	if (!end) return { verdict: message, figures: '' };
	const at = end.index + end[0].trimEnd().length;
	return { verdict: message.slice(0, at), figures: message.slice(at).trim() };
}
