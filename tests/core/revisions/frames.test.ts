import { expect, test } from 'vitest';
import { contentOf, type Diagram } from '#core/diagram';
import { compareContents } from '#core/revisions';
import { smallDiagram } from '../../support/small-diagram.ts';

const area = { label: 'Bay', at: { x: 0, y: 0 }, widthMm: 100, heightMm: 100, spaces: [], ambientC: 45 };
const note = { text: 'Seal this', at: { x: 0, y: 0 }, widthMm: 100, to: { kind: 'part' as const, id: 'P1' } };
const small = smallDiagram();
const between = (before: Partial<Diagram>, after: Partial<Diagram>) =>
	compareContents(contentOf({ ...small, ...before }), contentOf({ ...small, ...after })).map(
		({ sort, name, text }) => `${sort}: ${name} ${text}`
	);

test('areas that came, went, or are otherwise', () => {
	expect(between({}, { areas: { A1: area } })).toEqual(['electrical: Area “Bay” added: 45 °C']);
	expect(between({ areas: { A1: area } }, {})).toEqual(['electrical: Area “Bay” removed: 45 °C']);
	expect(between({ areas: { A1: area } }, { areas: { A1: { ...area, label: 'Den', spaces: ['engine'], widthMm: 200 } } })).toEqual([
		'electrical: Area “Bay” 45 °C to engine space, 45 °C',
		'words: Area “Bay” is called Den now',
		'moved: Area “Bay” has other edges on the drawing'
	]);
});

test('notes that came, went, or say something else', () => {
	expect(between({}, { notes: { N1: note } })).toEqual(['words: Note added to P1: Seal this']);
	expect(between({ notes: { N1: note } }, {})).toEqual(['words: Note removed to P1: Seal this']);
	expect(between({ notes: { N1: note } }, { notes: { N1: { ...note, text: 'Grease this', to: null, at: { x: 5, y: 0 } } } })).toEqual([
		'words: Note “Seal this” to “Grease this”',
		'words: Note leads to nothing now',
		'moved: Note moved on the drawing'
	]);
});

test('what is grouped or locked is nothing to be built', () => {
	const parts = { ...small.parts, P1: { ...small.parts['P1']!, locked: true, group: 'G1' } };
	expect(between({}, { parts })).toEqual([]);
});
