/** Who writes here: asked once, kept in this browser only. */
const KEY = 'wireworthy-signature';

export function signature(): string {
	try {
		return localStorage.getItem(KEY) ?? '';
	} catch {
		return '';
	}
}

export function keepSignature(name: string): void {
	try {
		localStorage.setItem(KEY, name.trim());
	} catch {
		// Forbidden: it is asked again the next time.
	}
}
