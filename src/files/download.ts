const KEEP_MS = 10_000;

/** Puts a text among the browser's downloads. */
export function download(text: string, name: string, type: string, document: Document = window.document): void {
	const url = URL.createObjectURL(new Blob([text], { type }));
	const link = document.createElement('a');
	link.href = url;
	link.download = name;
	link.click();
	// Some browsers read the data only after this turn of events.
	setTimeout(() => URL.revokeObjectURL(url), KEEP_MS);
}
