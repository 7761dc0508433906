/**
 * Copy, cut and paste through the browser's own events, which need no permission. The text is also kept here, so
 * that the menu can paste where the browser does not let pages read the clipboard.
 */
import { copyText, deleteSelection, pasteText } from '#editor';
import type { Workbench } from './context.ts';
import { isTyping } from './typing.ts';

let held = '';

/** What was last copied in this window. */
export const heldText = (): string => held;

/** From a menu, where there is no clipboard event. */
export function writeClipboard(text: string | null): void {
	if (text === null) return;
	held = text;
	// Refused without focus or permission; what is held here still pastes in this window.
	void navigator.clipboard?.writeText(text).catch(() => undefined);
}

export function clipboardEvents({ editor, view }: Workbench) {
	function copy(event: ClipboardEvent): boolean {
		// Text selected on the page, in a finding for example, is copied as text.
		if (isTyping(event.target) || document.getSelection()?.toString()) return false;
		const text = copyText(editor);
		if (text === null) return false;
		held = text;
		event.clipboardData?.setData('text/plain', text);
		event.preventDefault();
		return true;
	}

	return {
		copy,
		cut(event: ClipboardEvent) {
			if (copy(event)) deleteSelection(editor);
		},
		paste(event: ClipboardEvent) {
			if (isTyping(event.target)) return;
			event.preventDefault();
			const [first] = pasteText(editor, event.clipboardData?.getData('text/plain') || held);
			if (first) view.canvas?.reveal(first);
		}
	};
}
