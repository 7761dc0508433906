const KEEP_MS = 10_000;

/** Puts a text or other data among the browser's downloads. */
export function download(data: BlobPart, name: string, type: string, document: Document = window.document): void {
	const url = URL.createObjectURL(data instanceof Blob ? data : new Blob([data], { type }));
	const link = document.createElement('a');
	link.href = url;
	link.download = name;
	link.click();
	// Some browsers read the data only after this turn of events.
	setTimeout(() => URL.revokeObjectURL(url), KEEP_MS);
}
