/** Saving to a file on the disk, and what something else, or a page that was closed too early, did to it. */
import { describe, expect, test, vi } from 'vitest';
import { emptyDiagram, serializeDiagram } from '#core/diagram';
import { checksum } from '#keeping';
import { createFileActions } from '../../src/ui/file-actions.ts';
import { newWorkbench } from './support.ts';

/** A file as the browser hands it out; each write takes a millisecond of the disk's clock. */
function fakeFile() {
	const file = { text: '', modifiedMs: 1_000, writing: null as Promise<void> | null, isOpen: false };
	const handle = {
		name: 'plan.json',
		queryPermission: async () => 'granted',
		requestPermission: async () => 'granted',
		getFile: async () => new File([file.text], 'plan.json', { lastModified: file.modifiedMs }),
		createWritable: async () => {
			let text = '';
			file.isOpen = true;
			return {
				write: async (part: string) => void (text += part),
				close: async () => {
					await file.writing;
					Object.assign(file, { text, modifiedMs: file.modifiedMs + 1 });
				}
			};
		}
	};
	const write = (text: string) => Object.assign(file, { text, modifiedMs: file.modifiedMs + 1 });
	return { file, handle: handle as unknown as FileSystemFileHandle, write };
}

async function savedBench() {
	const { editor, view, keeping } = newWorkbench();
	const files = createFileActions(editor, view, keeping);
	const disk = fakeFile();
	vi.stubGlobal('showSaveFilePicker', async () => disk.handle);
	editor.placePart('load', { x: 0, y: 300 });
	await files.save();
	return { editor, view, keeping, files, ...disk };
}

describe('a file that was saved', () => {
	test('is written again unasked while nothing else wrote it', async () => {
		const { editor, view, files, file } = await savedBench();
		editor.placePart('load', { x: 0, y: 600 });
		await files.save();
		expect(view.question).toBeNull();
		expect(file.text).toBe(serializeDiagram(editor.diagram));
	});

	test('is asked about when something else wrote another text, and left alone then', async () => {
		const { view, files, file, write } = await savedBench();
		write('theirs');
		const saving = files.save();
		await vi.waitFor(() => expect(view.question?.title).toContain('was changed by another program'));
		view.question!.answer(false);
		await saving;
		expect(file.text).toBe('theirs');
	});

	test('counts as the same when only its date is another, as after copying', async () => {
		const { view, files, file, write } = await savedBench();
		write(file.text);
		await files.lookAtDisk();
		await files.save();
		expect(view.question).toBeNull();
	});

	test('is known when the page was closed after writing, before that was noted', async () => {
		const { editor, view, keeping, files, file, write } = await savedBench();
		const before = keeping.file!;
		editor.placePart('load', { x: 0, y: 600 });
		const text = serializeDiagram(editor.diagram);
		let noted: typeof before | null = null;
		const setFile = vi.spyOn(keeping, 'setFile').mockImplementation((known) => {
			noted ??= known;
		});
		await files.save();
		setFile.mockRestore();
		expect(noted).toEqual({ ...before, writing: checksum(text) });
		// As it lies in the store then: what was noted before writing, not what came after.
		keeping.setFile(noted!);
		write(file.text);
		await files.lookAtDisk();
		await files.save();
		expect(view.question).toBeNull();
	});
});

describe('while a file is being written', () => {
	test('it is not taken for changed by another, whatever brings the window to the front', async () => {
		const { editor, view, files, file } = await savedBench();
		let finish = (): void => undefined;
		file.writing = new Promise((resolve) => (finish = resolve));
		editor.placePart('load', { x: 0, y: 600 });
		file.isOpen = false;
		const saving = files.save();
		await vi.waitFor(() => expect(file.isOpen).toBe(true));
		file.modifiedMs += 1;
		file.text = 'half of it';
		await files.lookAtDisk();
		finish();
		await saving;
		await files.lookAtDisk();
		expect(view.question).toBeNull();
	});

	test('another diagram waits, so that it does not get this one’s file', async () => {
		const { editor, keeping, files, file } = await savedBench();
		let finish = (): void => undefined;
		file.writing = new Promise((resolve) => (finish = resolve));
		const drawn = editor.diagram;
		const saving = files.save();
		const opening = files.newDiagram();
		await new Promise((resolve) => setTimeout(resolve, 5));
		expect(editor.diagram).toBe(drawn);
		finish();
		await Promise.all([saving, opening]);
		expect(editor.diagram).toEqual(emptyDiagram());
		expect(keeping.file).toBeNull();
	});
});

test('questions are asked one after the other: none is lost under another', async () => {
	const { view } = newWorkbench();
	const first = view.ask({ title: 'First', text: '', yes: 'Yes' });
	const second = view.ask({ title: 'Second', text: '', yes: 'Yes' });
	const { answer } = view.question!;
	expect(view.question!.title).toBe('First');
	answer(true);
	// The window of the first closes, too.
	answer(false);
	await vi.waitFor(() => expect(view.question?.title).toBe('Second'));
	view.question!.answer(false);
	expect(await Promise.all([first, second])).toEqual([true, false]);
	expect(view.question).toBeNull();
});
