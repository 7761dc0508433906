/** What every component of the window may ask for, handed down once by Workbench.svelte. */
import { createContext } from 'svelte';
import type { Asker, Editor } from '#editor';
import type { FileActions } from './file-actions.ts';
import type { Keeping } from './keeping/keeping.svelte.ts';
import type { View } from './view.svelte.ts';

export interface Workbench {
	readonly editor: Editor;
	readonly view: View;
	readonly asker: Asker;
	readonly files: FileActions;
	readonly keeping: Keeping;
}

export const [useWorkbench, provideWorkbench] = createContext<Workbench>();
