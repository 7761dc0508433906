/**
 * Where the browser has trusted types, text becomes a script or markup only through a policy. This one lets workers of
 * our own origin start and elements be emptied, and refuses everything else.
 */
interface PolicyRules {
	createScriptURL(address: string): string | null;
	createHTML(markup: string): string | null;
}

declare global {
	interface Window {
		readonly trustedTypes?: { createPolicy(name: string, rules: PolicyRules): unknown };
	}
}

export function trustOwnAddresses(): void {
	window.trustedTypes?.createPolicy('default', {
		// Not by its origin: what the page makes itself, "blob:", has that, too.
		createScriptURL: (address) => (new URL(address, document.baseURI).href.startsWith(`${location.origin}/`) ? address : null),
		createHTML: (markup) => (markup === '' ? '' : null)
	});
}
