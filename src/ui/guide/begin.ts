import type { Workbench } from '../context.ts';
import { GUIDE } from '../late-parts.ts';
import { openExampleFor } from './example.ts';
import type { StartId } from './guide.svelte.ts';

/** Begins a start, or goes on with it: the first circuit on an empty sheet, the others on what is open unless that is empty. */
export async function beginStart(start: StartId, workbench: Workbench, from: 'start' | 'left'): Promise<void> {
	const { editor, files, view } = workbench;
	view.dialog = null;
	await GUIDE.load();
	const isEmpty = () => Object.keys(editor.diagram.parts).length === 0;
	if (from === 'start') {
		if (start === 'circuit' && !isEmpty()) {
			await files.newDiagram();
			// The diagram that was open was not to be left.
			if (!isEmpty()) return;
		} else if (start === 'handover' && isEmpty()) await openExampleFor(start, workbench);
		view.guide.restart(start);
	} else view.guide.follow(start);
	if (view.narrow) view.open(start === 'circuit' ? 'shelf' : 'findings');
}
