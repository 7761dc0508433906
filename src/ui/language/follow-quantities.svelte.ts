/** Findings are sentences with their figures in them: after another choice of units they are written anew. */
import { untrack } from 'svelte';
import type { Editor } from '#editor';
import { quantities } from './quantities.svelte.ts';

export function followQuantities(editor: Editor): void {
	let written = untrack(() => quantities.shown);
	$effect(() => {
		if (quantities.shown === written) return;
		written = quantities.shown;
		untrack(() => editor.recheck());
	});
}
