import { parseDiagram, SIZE_LIMIT, type Diagram } from '#core/diagram';
import { cancelled, done, failed, isAbort, messageOf, type Outcome } from './outcome.ts';
import { browserPickers, CHOOSER, type Pickers } from './pickers.ts';

export interface OpenedDiagram {
	readonly diagram: Diagram;
	readonly fileName: string;
	/** Where "save" writes back to; null where the browser gives no such thing. */
	readonly handle: FileSystemFileHandle | null;
	/** When the file was last written; null for one that is no file. */
	readonly modifiedMs: number | null;
	/** What was mended while reading, one sentence each. */
	readonly notes: readonly string[];
}

/** Lets the user choose a file and reads it. */
export async function openDiagram(pickers: Pickers = browserPickers()): Promise<Outcome<OpenedDiagram>> {
	if (!pickers.showOpenFilePicker) {
		const file = await chooseByInput(pickers.document);
		return file ? readFile(file) : cancelled;
	}
	try {
		const [handle] = await pickers.showOpenFilePicker(CHOOSER);
		return handle ? await readHandle(handle) : cancelled;
	} catch (error) {
		return isAbort(error) ? cancelled : unreadable(error);
	}
}

/** Reads a file that was chosen or dropped. */
export async function readFile(file: File, handle: FileSystemFileHandle | null = null): Promise<Outcome<OpenedDiagram>> {
	if (file.size > SIZE_LIMIT)
		return failed(
			`"${file.name}" is ${Math.round(file.size / 1e6)} MB large; at most ${SIZE_LIMIT / 1e6} MB are read.`,
			'A diagram is never that large, so it is probably another kind of file.',
			'Choose a file saved by this program.'
		);
	try {
		return diagramFrom(await file.text(), file.name, handle, file.lastModified);
	} catch (error) {
		return unreadable(error);
	}
}

/** Reads the file behind a handle as it is now. */
export async function readHandle(handle: FileSystemFileHandle): Promise<Outcome<OpenedDiagram>> {
	try {
		return await readFile(await handle.getFile(), handle);
	} catch (error) {
		return unreadable(error);
	}
}

/** Fetches a diagram the site serves, such as an example. */
export async function fetchDiagram(url: string, get: typeof fetch = fetch): Promise<Outcome<OpenedDiagram>> {
	try {
		const response = await get(url);
		if (!response.ok) return unfetched(`the server answered ${response.status}`);
		return diagramFrom(await response.text(), url.split('/').at(-1) ?? '', null, null);
	} catch (error) {
		return unfetched(messageOf(error));
	}
}

function diagramFrom(
	text: string,
	fileName: string,
	handle: FileSystemFileHandle | null,
	modifiedMs: number | null
): Outcome<OpenedDiagram> {
	const result = parseDiagram(text);
	return result.ok
		? done({ diagram: result.diagram, fileName, handle, modifiedMs, notes: result.notes })
		: { status: 'failed', problems: result.problems };
}

function chooseByInput(document: Document): Promise<File | null> {
	return new Promise((resolve) => {
		const input = document.createElement('input');
		input.type = 'file';
		input.accept = '.json,application/json';
		input.addEventListener('change', () => resolve(input.files?.[0] ?? null));
		input.addEventListener('cancel', () => resolve(null));
		input.click();
	});
}

const unreadable = (error: unknown): Outcome<never> =>
	failed('The file could not be read.', `The browser says: ${messageOf(error)}.`, 'It may have been moved or deleted. Choose it again.');

const unfetched = (reason: string): Outcome<never> =>
	failed('The diagram could not be fetched.', `${reason[0]!.toUpperCase()}${reason.slice(1)}.`, 'Check the connection and try again.');
