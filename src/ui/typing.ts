/** True when keys belong to a field, so that Backspace there never deletes a part. */
export const isTyping = (target: EventTarget | null): boolean =>
	target instanceof Element && target.closest('input:not([type=checkbox]), textarea, select, [contenteditable]') !== null;
