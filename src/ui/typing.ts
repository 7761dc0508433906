/** True when keys belong to a field, so that Backspace there never deletes a part. */
export const isTyping = (target: EventTarget | null): boolean =>
	target instanceof Element && target.closest('input:not([type=checkbox]), textarea, select, [contenteditable]') !== null;

/** Fields that store what was typed only when they are left; all others store it as it is typed. */
const STORES_LATE = 'input[inputmode=decimal], input[inputmode=numeric], input[type=number], input[type=search]';

/** What stood in a field before something was typed that is not stored yet. */
const drafts = new WeakMap<HTMLInputElement, string>();
const found = new WeakMap<HTMLInputElement, string>();

const lateField = (target: EventTarget | null): HTMLInputElement | null =>
	target instanceof HTMLInputElement && target.matches(STORES_LATE) ? target : null;

/** Of the window's focusin, input and change events. */
export function noteTyping({ type, target }: Event): void {
	const field = lateField(target);
	if (!field) return;
	if (type === 'input') drafts.set(field, found.get(field) ?? '');
	else {
		drafts.delete(field);
		found.set(field, field.value);
	}
}

/** Whether something was typed here that is not stored yet: then undo is the field's own. */
export const hasDraft = (target: EventTarget | null): boolean => {
	const field = lateField(target);
	return field !== null && drafts.has(field);
};

/** Forgets what was typed and not stored. */
export function dropDraft(target: EventTarget | null): void {
	const field = lateField(target);
	const before = field && drafts.get(field);
	if (!field || before === undefined || before === null) return;
	field.value = before;
	drafts.delete(field);
}
