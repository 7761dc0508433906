import { describe, expect, test } from 'vitest';
import { copyText, pasteText, selectAll } from '#editor';
import { newEditor } from './support.ts';

function copied(): string {
	const { editor } = newEditor();
	selectAll(editor);
	return copyText(editor)!;
}

describe('copy and paste', () => {
	test('bring parts and the conductors between them into another window', () => {
		const { editor } = newEditor();
		const keys = pasteText(editor, copied());
		expect(Object.values(editor.diagram.parts).map(({ label }) => label)).toEqual(['B1', 'E1', 'B2', 'E2']);
		expect(Object.keys(editor.diagram.conductors)).toHaveLength(2);
		expect([...editor.selection]).toEqual(keys);
	});

	test('paste once is one step to undo', () => {
		const { editor } = newEditor();
		const before = editor.diagram;
		pasteText(editor, copied());
		editor.undo();
		expect(editor.diagram).toEqual(before);
	});

	test('two pastes do not lie on top of each other', () => {
		const { editor } = newEditor();
		const text = copied();
		pasteText(editor, text);
		pasteText(editor, text);
		const places = Object.values(editor.diagram.parts).map(({ at }) => `${at.x} ${at.y}`);
		expect(new Set(places).size).toBe(places.length);
	});

	test('copying without a part says what to do', () => {
		const { editor } = newEditor();
		editor.select(['conductor:W1']);
		expect(copyText(editor)).toBeNull();
		expect(editor.message).toMatchObject({ kind: 'refused' });
		expect(editor.message.text).toMatch(/Select one or more parts/);
	});
});

interface Envelope {
	version: number;
	fragment: { parts: Record<string, Record<string, unknown>>; conductors: Record<string, { to: { part: string } }> };
}

/** The text with one place in it changed. */
const altered = (change: (envelope: Envelope) => void): string => {
	const envelope = JSON.parse(copied());
	change(envelope);
	return JSON.stringify(envelope);
};

describe('what does not come from this program is refused', () => {
	const hostile: Record<string, string> = {
		nothing: '',
		prose: 'Dear all, wireworthy-fragment is not JSON',
		'other JSON': '{"parts":[]}',
		'a list': '["wireworthy-fragment"]',
		'a number': '1e999',
		'a script in an id': altered((e) => (e.fragment.parts['<img onerror=alert(1)>'] = e.fragment.parts['B1']!)),
		'a prototype as id': copied().replace('"B1":{', '"__proto__":{'),
		'an inherited name as id': altered((e) => (e.fragment.parts['constructor'] = e.fragment.parts['B1']!)),
		'fields that do not exist': altered((e) => (e.fragment.parts['B1']!['onload'] = 'alert(1)')),
		'a part at infinity': copied().replace('"x":300', '"x":1e999'),
		'a name of a megabyte': altered((e) => (e.fragment.parts['B1']!['label'] = 'x'.repeat(1_000_000))),
		'more than could be meant': `{"format":"wireworthy-fragment","x":"${'y'.repeat(5_000_000)}"}`,
		'a conductor to a part that is not there': altered((e) => (e.fragment.conductors['W1']!.to.part = 'Z9')),
		'another version': altered((e) => (e.version = 2))
	};
	for (const [name, text] of Object.entries(hostile)) {
		test(name, () => {
			const { editor } = newEditor();
			const before = editor.diagram;
			expect(pasteText(editor, text)).toEqual([]);
			expect(editor.diagram).toBe(before);
			expect(editor.message.kind).toBe('refused');
			expect(editor.message.text).not.toBe('');
			expect(editor.message.text.length).toBeLessThan(1000);
			expect(({} as Record<string, unknown>)['label']).toBeUndefined();
		});
	}
});
