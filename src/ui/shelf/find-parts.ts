import { partDefinitions, type PartDefinition } from '#core/parts';
import { said } from '../language/said.ts';

/** How well a name fits, best first: begins with the words, has a word that begins so, holds them, only its help does. */
function rankOf({ name }: PartDefinition, query: string, words: readonly string[]): number {
	const text = said(name).toLowerCase();
	if (text.startsWith(query)) return 0;
	const starts = text.split(/[^\p{L}\p{N}]+/u);
	if (words.every((word) => starts.some((start) => start.startsWith(word)))) return 1;
	return words.every((word) => text.includes(word)) ? 2 : 3;
}

/** Parts whose name, kind or help holds every word, names first; within a rank in the order of the shelf. */
export function findParts(query: string): readonly PartDefinition[] {
	const asked = query.trim().toLowerCase();
	const words = asked.split(/\s+/).filter(Boolean);
	return partDefinitions
		.filter(({ name, help, kind }) => words.every((word) => `${said(name)} ${name} ${help} ${kind}`.toLowerCase().includes(word)))
		.map((definition) => ({ definition, rank: rankOf(definition, asked, words) }))
		.toSorted((a, b) => a.rank - b.rank)
		.map(({ definition }) => definition);
}
