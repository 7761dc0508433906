import type { Content, Diagram, Revision } from './schema.ts';

/** What a revision keeps of a diagram: all of it but the revisions before, the remarks, the readings and the pictures below. */
export function contentOf(diagram: Diagram): Content {
	const { revisions: _, remarks: __, readings: ___, underlays: ____, ...content } = diagram;
	return content;
}

/** First issued first. */
export const revisionsInOrder = ({ revisions }: Pick<Diagram, 'revisions'>): readonly (Revision & { readonly id: string })[] =>
	Object.entries(revisions)
		.map(([id, revision]) => ({ ...revision, id }))
		.sort((a, b) => a.order - b.order);

/** Left out, as drawing offices do: they are read as figures (ASME Y14.35). */
const UNUSED = new Set(['I', 'O']);
const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].filter((letter) => !UNUSED.has(letter));

/** Index for the next revision: after the last one that consists of letters; "A" where there is none. */
export function nextLetter(diagram: Pick<Diagram, 'revisions'>): string {
	const last = revisionsInOrder(diagram)
		.map(({ letter }) => letter)
		.findLast((letter) => [...letter].every((one) => LETTERS.includes(one)));
	if (last === undefined) return LETTERS[0]!;
	const digits = [...last].map((letter) => LETTERS.indexOf(letter));
	for (let place = digits.length - 1; place >= 0; place--) {
		digits[place]!++;
		if (digits[place]! < LETTERS.length) return digits.map((digit) => LETTERS[digit]).join('');
		digits[place] = 0;
	}
	return `${LETTERS[0]}${digits.map((digit) => LETTERS[digit]).join('')}`;
}
