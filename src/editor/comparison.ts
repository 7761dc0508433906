/** Two states of a diagram side by side: what differs, what it does, and how it looks. Plain data. */
import { contentOf, type Content, type ConductorId, type Diagram, type StudKey } from '#core/diagram';
import type { ChangeMarks } from '#core/drawing';
import { changeSheet, changeSheetInput, type Section } from '#core/reports';
import { conductorText, drawnChanges, studText, type Consequences, type DrawingChange, type MovedFigure } from '#core/revisions';

/** Ids of revisions; null for the diagram as it stands. */
export interface CompareAsk {
	readonly before: string | null;
	readonly after: string | null;
}

export interface Comparison {
	readonly ask: CompareAsk;
	readonly changes: readonly DrawingChange[];
	readonly appeared: Consequences['appeared'];
	readonly gone: Consequences['gone'];
	readonly moved: readonly (MovedFigure & { readonly name: string })[];
	readonly retest: {
		readonly studs: readonly { readonly key: StudKey; readonly name: string }[];
		readonly conductors: readonly { readonly id: ConductorId; readonly name: string }[];
	};
	readonly marks: ChangeMarks;
	readonly sheet: Section;
}

export function comparison(diagram: Diagram, ask: CompareAsk): Comparison | null {
	const [before, after] = [stateOf(diagram, ask.before), stateOf(diagram, ask.after)];
	if (!before || !after) return null;
	const input = changeSheetInput(before.content, after.content, before.name, after.name);
	const { changes, consequences } = input;
	const { appeared, gone, moved, retest } = consequences;
	const nameOf = (id: ConductorId): string => conductorText(after.content, id);
	return {
		ask,
		changes,
		appeared,
		gone,
		moved: moved.map((figure) => ({ ...figure, name: nameOf(figure.conductor) })),
		retest: {
			studs: retest.studs.map((key) => ({ key, name: studText(after.content, key) })),
			conductors: retest.conductors.map((id) => ({ id, name: nameOf(id) }))
		},
		marks: drawnChanges(before.content, changes),
		sheet: changeSheet(input)
	};
}

function stateOf(diagram: Diagram, id: string | null): { readonly content: Content; readonly name: string } | null {
	if (id === null) return { content: contentOf(diagram), name: 'the drawing as it stands' };
	const revision = Object.hasOwn(diagram.revisions, id) ? diagram.revisions[id]! : null;
	return revision && { content: revision.content, name: `revision ${revision.letter}` };
}
