/** Choices of this browser. Storage may be forbidden: a choice then lasts as long as the page. */
export function remembered(key: string): string | null {
	try {
		return localStorage.getItem(key);
	} catch {
		return null;
	}
}

/** @param value null forgets it */
export function remember(key: string, value: string | null): void {
	try {
		if (value === null) localStorage.removeItem(key);
		else localStorage.setItem(key, value);
	} catch {
		// See above.
	}
}

/** What was remembered as JSON; undefined where there is none, or something else is there. It may be anything. */
export function rememberedJson(key: string): unknown {
	try {
		return JSON.parse(remembered(key) ?? 'null') ?? undefined;
	} catch {
		return undefined;
	}
}
