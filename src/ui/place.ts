import type { Part } from '#core/diagram';
import type { Workbench } from './context.ts';

/** Puts a part in the middle of what can be seen, or as near to it as there is room, and the hands on the sheet. */
export function placeInMiddle({ editor, view }: Workbench, partKind: string, params?: Part['params']): void {
	editor.placePart(partKind, view.canvas?.toDiagram(view.coverage.middle()) ?? { x: 0, y: 0 }, undefined, params);
	view.canvas?.focus();
}
