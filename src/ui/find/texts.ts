/** Words of finding something on the drawing. */
import { catalogue } from '../language/catalogue.ts';
export const findTexts = catalogue('find', {
	title: 'Find',
	field: 'Find on the drawing',
	placeholder: 'F3, bilge pump, W12, B1 +, 35 mm², overloaded …',
	results: 'What was found',
	kinds: { part: 'Part', conductor: 'Conductor', stud: 'Stud', area: 'Area', note: 'Note', finding: 'Finding' },
	between: (from: string, to: string) => `${from} to ${to}`,
	carries: (things: string) => `carries ${things}`,
	bare: 'nothing lands here',
	hint: 'Type a designation, a label, part of a name, a size or a word of a finding. Arrow keys choose, Enter goes there.',
	hintTouch: 'Tap what you look for to go there.',
	emptyDiagram: 'There is nothing on the drawing yet. Take a part from Parts; then it is found here by its name or designation.',
	none: (query: string) => `Nothing on the drawing is called “${query}”, and no finding says so.`,
	inHelp: 'Find a key or a gesture',
	notInHelp: (query: string) => `No key or gesture is described with “${query}”.`,
	noneHint: 'Try one word, a designation such as F3, or a size such as 35 mm².',
	found: (n: number, shown: number) => (n > shown ? `${n} found, the nearest ${shown} are shown.` : `${n} found.`)
});
