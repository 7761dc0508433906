/** What the browser promises about the store: whether it may be cleared when the disk gets short, and how full it is. */
export interface Persistence {
	/** Null where the browser does not say. */
	readonly persisted: boolean | null;
	readonly usedBytes: number | null;
	readonly quotaBytes: number | null;
}

export async function persistence(storage: StorageManager | undefined = globalThis.navigator?.storage): Promise<Persistence> {
	const persisted = await storage?.persisted?.().catch(() => null);
	const estimate = await storage?.estimate?.().catch(() => null);
	return { persisted: persisted ?? null, usedBytes: estimate?.usage ?? null, quotaBytes: estimate?.quota ?? null };
}

/** Asks the browser not to clear the store. Some browsers ask the user, some decide by themselves. */
export async function askToPersist(storage: StorageManager | undefined = globalThis.navigator?.storage): Promise<boolean | null> {
	try {
		if (!storage?.persist) return null;
		return (await storage.persisted()) || (await storage.persist());
	} catch {
		return null;
	}
}
