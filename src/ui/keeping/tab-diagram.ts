/** Which diagram this tab shows, so that loading the page again brings back the same one though another tab has another. */
const KEY = 'wireworthy-diagram';

export function tabDiagram(): string | undefined {
	try {
		return sessionStorage.getItem(KEY) ?? undefined;
	} catch {
		return undefined;
	}
}

export function rememberTabDiagram(id: string): void {
	try {
		sessionStorage.setItem(KEY, id);
	} catch {
		// Forbidden: the page then comes back with the diagram that was changed last.
	}
}

export function dropTabDiagram(): void {
	try {
		sessionStorage.removeItem(KEY);
	} catch {
		// As above.
	}
}
