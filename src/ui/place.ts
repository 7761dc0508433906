import type { Workbench } from './context.ts';

/** Puts a part in the middle of what can be seen, beside what already lies there. */
export function placeInMiddle({ editor, view }: Workbench, partKind: string): void {
	const { canvas } = view;
	const middle = canvas?.toDiagram(view.coverage.middle()) ?? { x: 0, y: 0 };
	editor.placePart(
		partKind,
		clearPlace(
			Object.values(editor.diagram.parts).map(({ at }) => at),
			middle
		)
	);
}

const STEP_MM = 60;

/** The nearest place, going to the right and down, that is not on another part's centre. */
function clearPlace(taken: readonly { x: number; y: number }[], wanted: { x: number; y: number }): { x: number; y: number } {
	let at = wanted;
	while (taken.some(({ x, y }) => Math.hypot(x - at.x, y - at.y) < STEP_MM)) at = { x: at.x + STEP_MM, y: at.y + STEP_MM / 2 };
	return at;
}
