/** The last command once more, on what is selected now; after a part or a conductor, another one of the kind. */
import {
	addPart,
	editConductors,
	idsByKind,
	lockItems,
	moveParts,
	rotateParts,
	setParams,
	type Command,
	type IdsByKind
} from '#core/diagram';
import { drawingMessages } from './drawing-messages.ts';
import type { Editor } from './editor.svelte.ts';

type Args<Make extends (args: never) => Command> = Parameters<Make>[0];

/** By the name of a command: the same for other things, or null where nothing fitting is selected. */
const AGAIN: Readonly<Record<string, (args: never, selected: IdsByKind) => Command | null>> = {
	'move-parts': ({ by }: Args<typeof moveParts>, { parts }) => (parts.length > 0 ? moveParts({ parts, by }) : null),
	'rotate-parts': ({ quarterTurns }: Args<typeof rotateParts>, { parts }) =>
		parts.length > 0 ? rotateParts({ parts, quarterTurns }) : null,
	'set-params': ({ params }: Args<typeof setParams>, { parts }) => (parts.length > 0 ? setParams({ parts, params }) : null),
	'edit-conductors': ({ set: { label: _, ...set } }: Args<typeof editConductors>, { conductors }) =>
		conductors.length > 0 && Object.keys(set).length > 0 ? editConductors({ conductors, set }) : null,
	'lock-items': ({ locked }: Args<typeof lockItems>, { studs: _, ...things }) => lockItems({ ...things, locked })
};

export function repeatLast(editor: Editor): void {
	const last = editor.lastCommand;
	if (!last) return editor.refuse(drawingMessages.nothingToRepeat);
	const first = last.name === 'compose' ? (last.args as readonly { name: string; args: unknown }[])[0]! : last;
	if (first.name === 'add-part') {
		const { part } = first.args as Args<typeof addPart>;
		return editor.setTool({ kind: 'place', partKind: part.kind, params: part.params });
	}
	if (first.name === 'add-conductor') return editor.setTool({ kind: 'connect', from: null });
	const make = last.name === 'compose' ? undefined : AGAIN[last.name];
	if (!make) return editor.refuse(drawingMessages.cannotRepeat(last.label));
	const again = make(last.args as never, idsByKind(editor.selection));
	if (!again) return editor.refuse(drawingMessages.selectToRepeat(last.label));
	editor.run(again);
}
