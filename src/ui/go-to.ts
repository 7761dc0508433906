import { itemKey, type ItemKey } from '#core/diagram';
import type { Finding, Subject } from '#core/rules';
import type { Workbench } from './context.ts';

const keyOf = (subject: Subject): ItemKey[] => (subject.kind === 'diagram' ? [] : [itemKey(subject.kind, subject.id)]);

/** Selects what a finding is about and brings it into view. */
export function goTo({ editor, view }: Workbench, finding: Finding): void {
	const keys = finding.subjects.slice(0, 1).flatMap(keyOf);
	editor.focusFinding(finding.key);
	editor.select(keys);
	const [first] = keys;
	if (first) view.canvas?.reveal(first, view.narrow);
	else view.open('inspector');
}
