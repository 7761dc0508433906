/** The file that the open diagram came from or was saved to, as it is on the disk now. */
import { askToWrite, diskState, type OnDisk } from '#files';
import { checksum, type KeptFile } from '#keeping';
import { keepingTexts } from './keeping-texts.ts';
import type { Keeping } from './keeping/keeping.svelte.ts';
import type { View } from './view.svelte.ts';

async function look(keeping: Keeping, file: KeptFile, handle: FileSystemFileHandle): Promise<OnDisk> {
	const found = await diskState(handle, file.modifiedMs, (text) => {
		const sum = checksum(text);
		return sum === file.sum || sum === file.writing;
	});
	// Not read again the next time.
	if (found.state === 'same' && found.modifiedMs !== file.modifiedMs && keeping.file === file)
		keeping.setFile({ ...file, modifiedMs: found.modifiedMs });
	return found;
}

/** When something else wrote the file; null when nothing did, or nobody can tell. */
export async function wroteElse(keeping: Keeping, file: KeptFile): Promise<number | null> {
	if (!file.handle) return null;
	const { state, modifiedMs } = await look(keeping, file, file.handle);
	return state === 'changed' ? modifiedMs : null;
}

/** Where to save, asking when something else wrote the file; null to choose a place, undefined when it was called off. */
export async function whereToWrite(keeping: Keeping, view: View): Promise<FileSystemFileHandle | null | undefined> {
	const { file } = keeping;
	if (!file?.handle) return null;
	if (!(await askToWrite(file.handle))) return null;
	if ((await look(keeping, file, file.handle)).state !== 'changed') return file.handle;
	const { changedTitle, onSave: text, overwrite: yes, elsewhere: also, cancel: no } = keepingTexts.disk;
	const answer = await view.ask({ title: changedTitle(file.name), text, yes, also, no });
	if (answer === 'also') return null;
	return answer ? file.handle : undefined;
}
