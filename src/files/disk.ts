/** Whether a file on the disk still holds what was left in it: something else may have written it meanwhile. */
export interface OnDisk {
	readonly state: 'same' | 'changed' | 'unknown';
	/** When it was last written; null when unknown. */
	readonly modifiedMs: number | null;
}

/** Permissions of file handles are not in the standard types yet. */
interface Permitted {
	queryPermission?(options: { mode: 'read' | 'readwrite' }): Promise<PermissionState>;
	requestPermission?(options: { mode: 'read' | 'readwrite' }): Promise<PermissionState>;
}

const UNKNOWN: OnDisk = { state: 'unknown', modifiedMs: null };

/** Null where the browser does not let us look without asking the user. */
async function fileOf(handle: FileSystemFileHandle): Promise<File | null> {
	try {
		const allowed = (await (handle as Permitted).queryPermission?.({ mode: 'read' })) ?? 'granted';
		return allowed === 'granted' ? await handle.getFile() : null;
	} catch {
		return null;
	}
}

/** When the file was last written; null where the browser does not say. */
export const modifiedMsOf = async (handle: FileSystemFileHandle): Promise<number | null> => (await fileOf(handle))?.lastModified ?? null;

/**
 * A file written again with the same text counts as the same: copying tools do that, and so does a page that was closed
 * before it noted when its own writing ended.
 *
 * @param knownMs when it was last written as far as we know; null when we do not
 * @param isOurs whether this text is what was left in it
 */
export async function diskState(
	handle: FileSystemFileHandle,
	knownMs: number | null,
	isOurs: (text: string) => boolean = () => false
): Promise<OnDisk> {
	const file = await fileOf(handle);
	if (!file || knownMs === null) return UNKNOWN;
	const modifiedMs = file.lastModified;
	if (modifiedMs === knownMs) return { state: 'same', modifiedMs };
	try {
		return { state: isOurs(await file.text()) ? 'same' : 'changed', modifiedMs };
	} catch {
		// Written once more while it was read.
		return { state: 'changed', modifiedMs };
	}
}

/** After the page was loaded again the browser wants to hear from the user that the file may be written. */
export async function askToWrite(handle: FileSystemFileHandle): Promise<boolean> {
	try {
		return ((await (handle as Permitted).requestPermission?.({ mode: 'readwrite' })) ?? 'granted') === 'granted';
	} catch {
		return false;
	}
}
