import { afterEach, describe, expect, test, vi } from 'vitest';
import { EXAMPLES } from '#core/examples';
import { emptyDiagram, serializeDiagram } from '#core/diagram';
import { createFileActions } from '../../src/ui/file-actions.ts';
import { twoParts } from '../editor/support.ts';
import { newWorkbench } from './support.ts';

afterEach(() => vi.unstubAllGlobals());

const fileOf = (text: string) => new File([text], 'given.json', { type: 'application/json' });

function bench() {
	const { editor, view, keeping } = newWorkbench();
	return { editor, view, files: createFileActions(editor, view, keeping) };
}

describe('opening', () => {
	test('puts the file on the sheet, clean and without a history', async () => {
		const { editor, files } = bench();
		await files.openFile(fileOf(serializeDiagram(emptyDiagram())));
		expect(Object.keys(editor.diagram.parts)).toEqual([]);
		expect(editor).toMatchObject({ fileName: 'given.json', dirty: false, undoLabel: null });
	});

	test('asks before changes are lost, and keeps them when told to', async () => {
		const { editor, view, files } = bench();
		editor.placePart('load', { x: 0, y: 300 });
		const drawn = editor.diagram;

		const opening = files.openFile(fileOf(serializeDiagram(emptyDiagram())));
		await vi.waitFor(() => expect(view.question).not.toBeNull());
		expect(view.question!.text).toMatch(/not saved/);
		view.question!.answer(false);
		await opening;
		expect(editor.diagram).toBe(drawn);

		const again = files.openFile(fileOf(serializeDiagram(emptyDiagram())));
		await vi.waitFor(() => expect(view.question).not.toBeNull());
		view.question!.answer(true);
		await again;
		expect(Object.keys(editor.diagram.parts)).toEqual([]);
	});

	test('can save first, and stays when that is called off', async () => {
		const { editor, view, files } = bench();
		editor.placePart('load', { x: 0, y: 300 });
		const drawn = editor.diagram;
		const close = vi.fn();
		const handle = { name: 'kept.json', createWritable: async () => ({ write: async () => undefined, close }) };
		const pick = vi.fn().mockRejectedValueOnce(new DOMException('closed', 'AbortError')).mockResolvedValueOnce(handle);
		vi.stubGlobal('showSaveFilePicker', pick);

		const first = files.newDiagram();
		await vi.waitFor(() => expect(view.question).not.toBeNull());
		view.question!.answer('also');
		await first;
		expect(editor.diagram).toBe(drawn);

		const second = files.newDiagram();
		await vi.waitFor(() => expect(view.question).not.toBeNull());
		view.question!.answer('also');
		await second;
		expect(close).toHaveBeenCalledOnce();
		expect(Object.keys(editor.diagram.parts)).toEqual([]);
	});

	test('says how many parts are of unknown kinds, and keeps what was mended for the list of findings', async () => {
		const { editor, files } = bench();
		const before = twoParts();
		const odd = {
			...before,
			parts: { ...before.parts, Z1: { ...before.parts['E1']!, kind: 'perpetual-motor', label: 'Z1' } },
			mounts: { Z9: { part: 'B1', terminal: 'pos' } }
		};
		await files.openFile(fileOf(JSON.stringify(odd)));
		expect(editor.message.text).toContain('1 part is of a kind this version does not know; it is kept but not checked.');
		expect(editor.openingNotes).toHaveLength(1);
	});

	test('does not ask where every change was undone', async () => {
		const { editor, view, files } = bench();
		editor.placePart('load', { x: 0, y: 300 });
		editor.undo();
		await files.openFile(fileOf(serializeDiagram(emptyDiagram())));
		expect(view.question).toBeNull();
	});

	test('says why a file cannot be read, and keeps the diagram', async () => {
		const { editor, view, files } = bench();
		const before = editor.diagram;
		const opening = files.openFile(fileOf('{"format": "something else"}'));
		await vi.waitFor(() => expect(view.question).not.toBeNull());
		expect(view.question).toMatchObject({ title: 'given.json was not opened' });
		expect(view.question!.text).toContain('This is not a Wireworthy diagram.');
		view.question!.answer(true);
		await opening;
		expect(editor.diagram).toBe(before);
		expect(editor.message.kind).toBe('refused');
	});
});

describe('the first example', () => {
	const [example] = EXAMPLES;

	test('comes onto the sheet by itself', async () => {
		vi.stubGlobal('fetch', async () => new Response(serializeDiagram(twoParts())));
		const { editor, files } = bench();
		editor.load(emptyDiagram(), '');
		await files.openExample(example!, { first: true });
		expect(Object.keys(editor.diagram.parts)).toEqual(['B1', 'E1']);
	});

	test('gives way to what was drawn while it was on its way', async () => {
		let send!: (response: Response) => void;
		vi.stubGlobal('fetch', () => new Promise<Response>((resolve) => (send = resolve)));
		const { editor, files } = bench();
		editor.load(emptyDiagram(), '');
		const opening = files.openExample(example!, { first: true });
		await vi.waitFor(() => expect(send).toBeDefined());
		editor.placePart('battery', { x: 0, y: 0 });
		send(new Response(serializeDiagram(twoParts())));
		await opening;
		expect(Object.values(editor.diagram.parts).map(({ kind }) => kind)).toEqual(['battery']);
	});

	test('that cannot be fetched is told without a dialog', async () => {
		vi.stubGlobal('fetch', async () => new Response('', { status: 404 }));
		const { editor, view, files } = bench();
		await files.openExample(example!, { first: true });
		expect(view.question).toBeNull();
		expect(editor.message).toMatchObject({ kind: 'refused' });
	});
});
