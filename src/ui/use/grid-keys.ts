/** Walks a table by its arrow keys: one tab stop, as in a spreadsheet. */

const CELL = '[data-cell]';

const widgetOf = (cell: Element | undefined): HTMLElement | null =>
	cell?.querySelector<HTMLElement>('input, select, button, summary') ?? null;

/** Left and right leave a text only at its ends; with all of it selected, at once. */
function staysInText(target: EventTarget | null, key: string): boolean {
	if (!(target instanceof HTMLInputElement) || target.type !== 'text') return false;
	const { selectionStart, selectionEnd, value } = target;
	if (selectionStart === 0 && selectionEnd === value.length) return false;
	return key === 'ArrowLeft' ? selectionEnd !== 0 : selectionStart !== value.length;
}

/** The widget to go to from where a key was pressed; null where the key means something else there. */
export function walk(event: KeyboardEvent): HTMLElement | null {
	const { key, target } = event;
	if (event.altKey || event.ctrlKey || event.metaKey) return null;
	const cell = (target as Element).closest(CELL);
	const row = cell?.closest('tr');
	const table = row?.closest('table');
	if (!cell || !row || !table) return null;
	const rows = [...table.querySelectorAll('tr')].filter((each) => each.querySelector(CELL));
	const cells = [...row.querySelectorAll(CELL)];
	const at = cells.indexOf(cell);
	const column = cell.getAttribute('data-cell');
	if (key === 'ArrowLeft' || key === 'ArrowRight') {
		if (target instanceof HTMLSelectElement || staysInText(target, key)) return null;
		return widgetOf(cells[at + (key === 'ArrowRight' ? 1 : -1)]);
	}
	if (key === 'Home' || key === 'End') {
		if (target instanceof HTMLInputElement && target.type === 'text' && !event.shiftKey) return null;
		return widgetOf(key === 'Home' ? cells[0] : cells.at(-1));
	}
	// Up and down choose among a select's options.
	const step = key === 'ArrowDown' || key === 'Enter' ? 1 : key === 'ArrowUp' ? -1 : 0;
	if (step === 0 || target instanceof HTMLSelectElement || (key === 'Enter' && (target as Element).matches('button, summary'))) return null;
	for (let index = rows.indexOf(row) + step; rows[index]; index += step) {
		const next = widgetOf([...rows[index]!.querySelectorAll(CELL)].find((each) => each.getAttribute('data-cell') === column));
		if (next) return next;
	}
	return null;
}
