/** Which issue of the diagram is on the sheet, and what it is compared with. */
import { asDiagram } from '#core/revisions';
import type { CompareAsk } from '#editor';
import type { Workbench } from '../context.ts';
import { revisionTexts as words } from '../review-texts.ts';

type Desk = Pick<Workbench, 'editor' | 'view'>;

/** Puts an issued revision on the sheet, read only; null puts back what is edited. */
function show({ editor, view }: Desk, id: string | null): void {
	const revision = id === null ? null : editor.history.diagram.revisions[id];
	if (revision) editor.look(asDiagram(revision.content), words.refused(revision.letter));
	else if (editor.looking) editor.look(null);
	view.looking = revision ? id : null;
}

export function lookAt(desk: Desk, id: string): void {
	stop(desk);
	show(desk, id);
	desk.view.dialog = null;
	desk.view.fitSoon();
}

/** Shows the later state with what differs from the earlier one. */
export function compare(desk: Desk, ask: CompareAsk): void {
	stop(desk);
	show(desk, ask.after);
	desk.view.comparing = ask;
	desk.view.dialog = null;
	desk.view.open('changes');
	desk.view.fitSoon();
}

/** Back to the diagram that is edited. */
export function stop(desk: Desk): void {
	desk.view.comparing = null;
	desk.view.comparison = null;
	desk.view.compareFault = null;
	if (desk.view.lower === 'changes') desk.view.lower = 'findings';
	if (desk.view.sheet === 'changes') desk.view.sheet = null;
	show(desk, null);
}

/** "Revision A", "The drawing as it stands". */
export function stateName({ editor }: Desk, id: string | null): string {
	const revision = id === null ? undefined : editor.history.diagram.revisions[id];
	return revision ? words.revision(revision.letter) : words.present;
}
