import { serializeDiagram, type Diagram } from '#core/diagram';

/** Whether a diagram differs from the one last saved; undoing back to what was saved leaves no difference. */
export const hasUnsavedChanges = (saved: Diagram, current: Diagram): boolean =>
	saved !== current && serializeDiagram(saved) !== serializeDiagram(current);

/** Has the browser ask before the page is left while `unsaved` says so. Returns how to stop. */
export function askBeforeLeaving(
	unsaved: () => boolean,
	page: Pick<Window, 'addEventListener' | 'removeEventListener'> = window
): () => void {
	const ask = (event: BeforeUnloadEvent) => {
		if (unsaved()) event.preventDefault();
	};
	page.addEventListener('beforeunload', ask);
	return () => page.removeEventListener('beforeunload', ask);
}
