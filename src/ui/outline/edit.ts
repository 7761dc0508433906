/** What can be changed from the tree: names, and sizes of conductors. */
import { gaugesOf, gaugeText } from '#core/conductors';
import { editConductors, editPart, parseItemKey, type ItemKey } from '#core/diagram';
import { conductorName, partName, type Editor } from '#editor';
import { outlineTexts as words } from './texts.ts';

/** What is printed on it now; null for what has no name of its own. */
export function nameOf({ diagram }: Editor, key: ItemKey): string | null {
	const { kind, id } = parseItemKey(key);
	if (kind === 'part') return diagram.parts[id]?.label ?? null;
	return kind === 'conductor' ? (diagram.conductors[id]?.label ?? null) : null;
}

export function rename(editor: Editor, key: ItemKey, label: string): void {
	const { kind, id } = parseItemKey(key);
	if (label === nameOf(editor, key)) return;
	const command = kind === 'part' ? editPart({ part: id, set: { label } }) : editConductors({ conductors: [id], set: { label } });
	if (editor.run(command) !== null) return;
	editor.announce(words.renamed(kind === 'part' ? partName(editor.diagram, id) : conductorName(editor.diagram, id)));
}

/** The next size of the same system; says so where there is none. Nothing happens for what is no conductor. */
export function resize(editor: Editor, key: ItemKey, steps: 1 | -1): boolean {
	const { kind, id } = parseItemKey(key);
	const conductor = kind === 'conductor' ? editor.diagram.conductors[id] : undefined;
	if (!conductor) return false;
	const sizes = gaugesOf(conductor.gauge.system);
	const next = sizes[sizes.findIndex(({ size }) => size === conductor.gauge.size) + steps];
	const name = conductorName(editor.diagram, id);
	if (!next) editor.refuse(steps > 0 ? words.largest(name, gaugeText(conductor.gauge)) : words.smallest(name, gaugeText(conductor.gauge)));
	else if (editor.run(editConductors({ conductors: [id], set: { gauge: next } })) === null)
		editor.announce(words.size(name, gaugeText(next)));
	return true;
}
