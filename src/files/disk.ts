/** Whether a file on the disk is still as it was left: something else may have written it meanwhile. */
export type DiskState = 'same' | 'changed' | 'unknown';

/** Permissions of file handles are not in the standard types yet. */
interface Permitted {
	queryPermission?(options: { mode: 'read' | 'readwrite' }): Promise<PermissionState>;
	requestPermission?(options: { mode: 'read' | 'readwrite' }): Promise<PermissionState>;
}

/** When the file was last written; null where the browser does not say, or does not let us look without asking the user. */
export async function modifiedMsOf(handle: FileSystemFileHandle): Promise<number | null> {
	try {
		const allowed = (await (handle as Permitted).queryPermission?.({ mode: 'read' })) ?? 'granted';
		return allowed === 'granted' ? (await handle.getFile()).lastModified : null;
	} catch {
		return null;
	}
}

/** @param knownMs when it was last written as far as we know; null when we do not */
export async function diskState(handle: FileSystemFileHandle, knownMs: number | null): Promise<DiskState> {
	const nowMs = await modifiedMsOf(handle);
	if (nowMs === null || knownMs === null) return 'unknown';
	return nowMs === knownMs ? 'same' : 'changed';
}

/** After the page was loaded again the browser wants to hear from the user that the file may be written. */
export async function askToWrite(handle: FileSystemFileHandle): Promise<boolean> {
	try {
		return ((await (handle as Permitted).requestPermission?.({ mode: 'readwrite' })) ?? 'granted') === 'granted';
	} catch {
		return false;
	}
}
