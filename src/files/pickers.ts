/** The browser's file choosers. Some browsers have the File System Access API, all have input and download. */
export interface Pickers {
	showOpenFilePicker?(options: object): Promise<FileSystemFileHandle[]>;
	showSaveFilePicker?(options: object): Promise<FileSystemFileHandle>;
	readonly document: Document;
}

export const browserPickers = (): Pickers => window as unknown as Pickers;

/** What choosers offer; `id` lets the browser remember the folder. */
export const CHOOSER = {
	id: 'diagrams',
	types: [{ description: 'Wireworthy diagram', accept: { 'application/json': ['.json'] } }]
};
