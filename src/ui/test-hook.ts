/**
 * What a browser test may ask of the page, because a canvas has no elements to point at: where something is on the
 * screen, and what is drawn. Read only; people and programs alike do everything else through the window.
 */
import type { ItemKey } from '#core/diagram';
import type { Point } from '#core/geometry';

export interface TestHook {
	/** Client coordinates of a part's centre, a conductor's middle or a stud; null when it is not on the sheet. */
	clientPoint(key: ItemKey): Point | null;
	/** The open diagram as its file would be. */
	diagramText(): string;
}

declare global {
	interface Window {
		wireworthy?: TestHook;
	}
}

export function offerTestHook(hook: TestHook): () => void {
	window.wireworthy = hook;
	return () => delete window.wireworthy;
}
