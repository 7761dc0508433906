/** What the core says in English, in the language of the window where that is known; otherwise as it is. */
import type { FieldMeta } from '#core/parts';
import { language } from './language.svelte.ts';

/** A name, a label, a hint: something the core always says in the same words. */
export const said = (text: string): string => language.core?.PHRASES[text] ?? text;

/** What a rule requires and why, by its id. */
export const ruleSaid = (
	rule: string,
	words: { readonly title: string; readonly why: string }
): { readonly title: string; readonly why: string } => language.core?.RULE_WORDS[rule] ?? words;

/** The words of a parameter. */
export function fieldSaid(meta: FieldMeta): FieldMeta {
	if (!language.core) return meta;
	const { title, hint, whenEmpty, options } = meta;
	return {
		...meta,
		title: said(title),
		...(hint === undefined ? {} : { hint: said(hint) }),
		...(whenEmpty === undefined ? {} : { whenEmpty: said(whenEmpty) }),
		...(options === undefined ? {} : { options: options.map(({ value, label }) => ({ value, label: said(label) })) })
	};
}
