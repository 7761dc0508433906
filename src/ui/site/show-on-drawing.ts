import type { ItemKey } from '#core/diagram';
import type { Workbench } from '../context.ts';

/** Selects things and brings the first into view; the dialog that asked is closed by whoever asked. */
export function showOnDrawing({ editor, view }: Workbench, keys: readonly ItemKey[]): void {
	editor.focusFinding(null);
	editor.select(keys);
	const [first] = keys;
	if (first) view.canvas?.reveal(first, view.narrow);
}
