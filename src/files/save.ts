import { serializeDiagram, type Diagram } from '#core/diagram';
import { modifiedMsOf } from './disk.ts';
import { download } from './download.ts';
import { fileName } from './file-name.ts';
import { cancelled, done, failed, isAbort, messageOf, type Outcome } from './outcome.ts';
import { browserPickers, CHOOSER, type Pickers } from './pickers.ts';

export interface Saved {
	readonly fileName: string;
	/** For the next save; null after a download, where the browser does not say where the file went. */
	readonly handle: FileSystemFileHandle | null;
	/** When it was written, as the disk says; null when unknown. */
	readonly modifiedMs: number | null;
}

/** Writes back to where the diagram was opened from or last saved to; the first time asks where. */
export async function saveDiagram(
	diagram: Diagram,
	handle: FileSystemFileHandle | null,
	pickers: Pickers = browserPickers()
): Promise<Outcome<Saved>> {
	return handle ? write(diagram, handle) : saveDiagramAs(diagram, pickers);
}

/** Asks where to save; where the browser has no such chooser, the file goes to the downloads. */
export async function saveDiagramAs(diagram: Diagram, pickers: Pickers = browserPickers()): Promise<Outcome<Saved>> {
	const suggestedName = fileName(diagram.titleBlock.title);
	if (!pickers.showSaveFilePicker) {
		download(serializeDiagram(diagram), suggestedName, 'application/json', pickers.document);
		return done({ fileName: suggestedName, handle: null, modifiedMs: null });
	}
	let handle: FileSystemFileHandle;
	try {
		handle = await pickers.showSaveFilePicker({ ...CHOOSER, suggestedName });
	} catch (error) {
		return isAbort(error) ? cancelled : unwritten(error);
	}
	return write(diagram, handle);
}

async function write(diagram: Diagram, handle: FileSystemFileHandle): Promise<Outcome<Saved>> {
	try {
		const file = await handle.createWritable();
		await file.write(serializeDiagram(diagram));
		// Only closing replaces the old contents, so a write that fails half-way leaves the old file whole.
		await file.close();
		return done({ fileName: handle.name, handle, modifiedMs: await modifiedMsOf(handle) });
	} catch (error) {
		return isAbort(error) ? cancelled : unwritten(error);
	}
}

const unwritten = (error: unknown): Outcome<never> =>
	failed(
		'The diagram was not saved.',
		`The browser says: ${messageOf(error)}.`,
		'Use "save as" and choose another place. The diagram is still open.'
	);
