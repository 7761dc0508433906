// @vitest-environment happy-dom
import { afterEach, describe, expect, test, vi } from 'vitest';
import { serializeDiagram } from '#core/diagram';
import {
	askBeforeLeaving,
	fetchDiagram,
	fileName,
	hasUnsavedChanges,
	openDiagram,
	readFile,
	saveDiagram,
	saveDiagramAs,
	type Pickers
} from '#files';
import { smallDiagram } from '../support/small-diagram.ts';

const small = smallDiagram();
const titled = { ...small, titleBlock: { ...small.titleBlock, title: 'Ridge Post 3' } };
const text = serializeDiagram(small);
const closed = () => Promise.reject(new DOMException('The user aborted a request.', 'AbortError'));

/** A file on a pretended disk, reached by the File System Access API. */
function fakeHandle(name: string, contents: string, failure: Error | null = null) {
	const disk = { contents, closed: false };
	let written = '';
	const handle = {
		name,
		getFile: async () => new File([disk.contents], name),
		createWritable: async () => {
			if (failure) throw failure;
			return {
				write: async (data: string) => void (written += data),
				close: async () => void Object.assign(disk, { contents: written, closed: true })
			};
		}
	} as unknown as FileSystemFileHandle;
	return { handle, disk };
}

afterEach(() => {
	vi.restoreAllMocks();
	vi.useRealTimers();
});

describe('open', () => {
	test('reads the chosen file and remembers where it is', async () => {
		const { handle } = fakeHandle('trailer.json', text);
		const outcome = await openDiagram({ showOpenFilePicker: async () => [handle], document });
		expect(outcome).toEqual({
			status: 'done',
			value: { diagram: small, fileName: 'trailer.json', handle, modifiedMs: expect.any(Number), notes: [] }
		});
	});
	test('closing the chooser is no error', async () => {
		expect(await openDiagram({ showOpenFilePicker: closed, document })).toEqual({ status: 'cancelled' });
	});
	test('a chooser that fails says why', async () => {
		const outcome = await openDiagram({ showOpenFilePicker: () => Promise.reject(new Error('disk gone')), document });
		expect(outcome).toMatchObject({
			status: 'failed',
			problems: [{ what: 'The file could not be read.', why: 'The browser says: disk gone.' }]
		});
	});
	test('where there is no such chooser, an input is clicked', async () => {
		const input = document.createElement('input');
		Object.defineProperty(input, 'files', { value: [new File([text], 'a.json')] });
		vi.spyOn(document, 'createElement').mockReturnValue(input);
		vi.spyOn(input, 'click').mockImplementation(() => void input.dispatchEvent(new Event('change')));
		expect(await openDiagram({ document })).toMatchObject({ status: 'done', value: { fileName: 'a.json', handle: null } });
		expect(input.type).toBe('file');
		vi.spyOn(input, 'click').mockImplementation(() => void input.dispatchEvent(new Event('cancel')));
		expect(await openDiagram({ document })).toMatchObject({ status: 'cancelled' });
	});
	test('what is wrong with the file is passed on', async () => {
		expect(await readFile(new File(['{'], 'a.json'))).toMatchObject({ status: 'failed', problems: [{ path: 'line 1, column 2' }] });
	});
	test('a huge file is not read', async () => {
		const huge = { name: 'film.json', size: 3e9, text: () => Promise.reject(new Error('read')) } as unknown as File;
		expect(await readFile(huge)).toMatchObject({ problems: [{ what: '"film.json" is 3000 MB large; at most 20 MB are read.' }] });
	});
});

describe('fetch', () => {
	test('reads a diagram the site serves', async () => {
		expect(await fetchDiagram('/examples/a.json', async () => new Response(text))).toMatchObject({
			status: 'done',
			value: { diagram: small, fileName: 'a.json' }
		});
	});
	test('says what went wrong', async () => {
		expect(await fetchDiagram('/a.json', async () => new Response('', { status: 404 }))).toMatchObject({
			problems: [{ what: 'The diagram could not be fetched.', why: 'The server answered 404.' }]
		});
		expect(await fetchDiagram('/a.json', () => Promise.reject(new TypeError('offline')))).toMatchObject({
			problems: [{ why: 'Offline.' }]
		});
	});
});

describe('save', () => {
	test('writes back to where the diagram came from', async () => {
		const { handle, disk } = fakeHandle('trailer.json', 'old');
		expect(await saveDiagram(small, handle, { document })).toEqual({
			status: 'done',
			value: { fileName: 'trailer.json', handle, modifiedMs: expect.any(Number) }
		});
		expect(disk).toEqual({ contents: text, closed: true });
	});
	test('asks where, the first time, and suggests a name from the title', async () => {
		const { handle, disk } = fakeHandle('chosen.json', '');
		const showSaveFilePicker = vi.fn(async () => handle);
		expect(await saveDiagram(titled, null, { showSaveFilePicker, document })).toMatchObject({ value: { fileName: 'chosen.json' } });
		expect(showSaveFilePicker).toHaveBeenCalledWith(expect.objectContaining({ suggestedName: 'Ridge Post 3.json' }));
		expect(disk.contents).toBe(serializeDiagram(titled));
	});
	test('closing the chooser is no error', async () => {
		expect(await saveDiagramAs(small, { showSaveFilePicker: closed, document })).toEqual({ status: 'cancelled' });
	});
	test('a write that fails leaves the old file and says why', async () => {
		const { handle, disk } = fakeHandle('trailer.json', 'old', new Error('disk full'));
		expect(await saveDiagram(small, handle, { document })).toMatchObject({
			status: 'failed',
			problems: [{ why: 'The browser says: disk full.' }]
		});
		expect(disk.contents).toBe('old');
	});
	test('downloads where there is no such chooser', async () => {
		vi.useFakeTimers();
		const link = document.createElement('a');
		const clicked = vi.spyOn(link, 'click').mockImplementation(() => undefined);
		vi.spyOn(document, 'createElement').mockReturnValue(link);
		vi.spyOn(URL, 'createObjectURL').mockReturnValue('blob:x');
		const revoked = vi.spyOn(URL, 'revokeObjectURL').mockImplementation(() => undefined);
		const pickers: Pickers = { document };
		expect(await saveDiagramAs(titled, pickers)).toEqual({
			status: 'done',
			value: { fileName: 'Ridge Post 3.json', handle: null, modifiedMs: null }
		});
		expect(link.download).toBe('Ridge Post 3.json');
		expect(clicked).toHaveBeenCalledOnce();
		vi.runAllTimers();
		expect(revoked).toHaveBeenCalledWith('blob:x');
	});
});

test.each([
	['Ridge Post 3: trailer', 'Ridge Post 3 trailer.json'],
	['', 'diagram.json'],
	['..\\a/b*?', 'a b.json'],
	['nul', 'diagram.json'],
	['Müller – Boot', 'Müller – Boot.json'],
	['x'.repeat(200), `${'x'.repeat(80)}.json`]
])('the file name of %j', (title, name) => {
	expect(fileName(title)).toBe(name);
});

test('unsaved changes are told by contents, not by what was touched', () => {
	expect(hasUnsavedChanges(small, small)).toBe(false);
	expect(hasUnsavedChanges(small, smallDiagram())).toBe(false);
	expect(hasUnsavedChanges(small, titled)).toBe(true);
});

test('the page asks before it is left, only while there are unsaved changes', () => {
	let unsaved = true;
	const stop = askBeforeLeaving(() => unsaved);
	const leave = () => {
		const event = new Event('beforeunload', { cancelable: true });
		window.dispatchEvent(event);
		return event.defaultPrevented;
	};
	expect(leave()).toBe(true);
	unsaved = false;
	expect(leave()).toBe(false);
	unsaved = true;
	stop();
	expect(leave()).toBe(false);
});
