/** What a remark is about: how it is called, where it is, and whether it is still there. */
import { itemKey, terminalRef, type Diagram, type ItemKey, type Remark } from '#core/diagram';
import type { CheckResult } from '#core/check';
import type { Editor } from '#editor';
import type { Workbench } from '../context.ts';
import { goTo } from '../go-to.ts';
import { itemName } from '../names.ts';
import { reviewTexts } from '../review-texts.ts';
import { ruleSaid } from '../language/said.ts';

export type On = Remark['on'];

/** The finding that is looked at, the one thing selected, or the whole. */
export function subjectHere({ focusedFinding, selection }: Pick<Editor, 'focusedFinding' | 'selection'>): On {
	if (focusedFinding !== null) return { kind: 'finding', id: focusedFinding };
	const [only, ...others] = selection;
	if (only === undefined || others.length > 0) return { kind: 'diagram', id: '' };
	const at = only.indexOf(':');
	return { kind: only.slice(0, at) as On['kind'], id: only.slice(at + 1) };
}

/** Its name; null where it is no longer in the diagram, or no longer found. */
export function subjectName(diagram: Diagram, check: CheckResult | null, { kind, id }: On): string | null {
	if (kind === 'diagram') return reviewTexts.whole;
	if (kind === 'finding') {
		const finding = check?.findings.find(({ key }) => key === id);
		return finding ? reviewTexts.finding(ruleSaid(finding.rule, finding).title) : check ? null : reviewTexts.finding(id.split(':')[0]!);
	}
	const isHere =
		kind === 'part'
			? Object.hasOwn(diagram.parts, id)
			: kind === 'conductor'
				? Object.hasOwn(diagram.conductors, id)
				: Object.hasOwn(diagram.parts, terminalRef(id).part);
	return isHere ? itemName(diagram, itemKey(kind, id)) : null;
}

/** Where it is marked on the drawing. */
export function placeOf(check: CheckResult | null, { kind, id }: On): ItemKey | null {
	if (kind === 'diagram') return null;
	if (kind !== 'finding') return itemKey(kind, id);
	const first = check?.findings.find(({ key }) => key === id)?.subjects[0];
	return first && first.kind !== 'diagram' ? itemKey(first.kind, first.id) : null;
}

/** Open remarks by where they are marked. */
export function remarksByPlace(remarks: Diagram['remarks'], check: CheckResult | null): ReadonlyMap<ItemKey, number> {
	const counts = new Map<ItemKey, number>();
	for (const { on, closed } of Object.values(remarks)) {
		const place = closed ? null : placeOf(check, on);
		if (place) counts.set(place, (counts.get(place) ?? 0) + 1);
	}
	return counts;
}

/** Selects what it is about and brings it into view. */
export function goToSubject(workbench: Workbench, on: On): void {
	const { editor, view } = workbench;
	const finding = on.kind === 'finding' ? editor.check?.findings.find(({ key }) => key === on.id) : undefined;
	if (finding) return goTo(workbench, finding);
	const place = placeOf(editor.check, on);
	if (!place) return;
	editor.focusFinding(null);
	editor.select([place]);
	view.canvas?.reveal(place, view.narrow);
}
