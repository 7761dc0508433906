/** New, Open, Save, Examples: the editor's diagram on one side, the device's files on the other. */
import { emptyDiagram, type Diagram, type Problem } from '#core/diagram';
import type { Example } from '#core/examples';
import { definitionOf } from '#core/parts';
import type { Editor } from '#editor';
import { fetchDiagram, hasUnsavedChanges, openDiagram, readFile, saveDiagram, type OpenedDiagram, type Outcome } from '#files';
import { texts } from './texts.ts';
import type { View } from './view.svelte.ts';

export interface FileActions {
	/** Asks first when there are changes that were not saved, as do all that replace the diagram. */
	newDiagram(): Promise<void>;
	open(): Promise<void>;
	/** A file dropped on the window. */
	openFile(file: File): Promise<void>;
	save(): Promise<void>;
	/** `first`: by itself, when the program starts. */
	openExample(example: Example, options?: { readonly first?: boolean }): Promise<void>;
}

const sentences = (problems: readonly Problem[]): string => problems.map(({ what, why, remedy }) => `${what} ${why} ${remedy}`).join(' ');

/** Said at once, so that a file from a newer version is not taken for checked. */
function unknownKinds({ parts }: Diagram): string[] {
	const unknown = Object.values(parts).filter(({ kind }) => definitionOf(kind) === null).length;
	return unknown === 0 ? [] : [texts.file.unknownKinds(unknown)];
}

/** The status line has one line; the whole list stands with the findings. */
const mended = (notes: readonly string[]): string[] => (notes.length < 2 ? [...notes] : [texts.file.mended(notes.length)]);

export function createFileActions(editor: Editor, view: View): FileActions {
	/** Where "save" writes back to, if the browser gives such a thing. */
	let handle: FileSystemFileHandle | null = null;

	async function mayLeave(): Promise<boolean> {
		if (!hasUnsavedChanges(editor.savedDiagram, editor.diagram)) return true;
		const { discardTitle: title, discard: text, discardYes: yes, discardNo: no, discardSave: also } = texts.file;
		const answer = await view.ask({ title, text, yes, no, also });
		return answer === 'also' ? save() : answer;
	}

	/** False when nothing was saved: refused, or called off. */
	async function save(): Promise<boolean> {
		const { diagram } = editor;
		const outcome = await saveDiagram(diagram, handle);
		if (outcome.status === 'failed') editor.refuse(sentences(outcome.problems));
		if (outcome.status !== 'done') return false;
		handle = outcome.value.handle;
		editor.markSaved(diagram, outcome.value.fileName);
		editor.announce(texts.file.saved(outcome.value.fileName));
		return true;
	}

	/** With `quiet`, a failure is told in the status line: at the start nobody asked for anything yet. */
	function show(outcome: Outcome<OpenedDiagram>, name: string, quiet = false): void {
		if (outcome.status === 'cancelled') return;
		if (outcome.status === 'failed') {
			editor.refuse(`${texts.file.notOpened(name)}. ${sentences(outcome.problems)}`);
			if (!quiet) void view.ask({ title: texts.file.notOpened(name), text: sentences(outcome.problems), yes: texts.notice.close });
			return;
		}
		const { diagram, fileName, notes } = outcome.value;
		handle = outcome.value.handle;
		editor.load(diagram, fileName, notes);
		view.fitSoon();
		const said = [texts.file.opened(diagram.titleBlock.title || fileName), ...unknownKinds(diagram), ...mended(notes)];
		editor.announce(said.join(' '));
	}

	return {
		async newDiagram() {
			if (!(await mayLeave())) return;
			handle = null;
			editor.load(emptyDiagram(), '');
			view.open('shelf');
			view.fitSoon();
			editor.announce(texts.file.started);
		},
		async open() {
			if (await mayLeave()) show(await openDiagram(), texts.file.theFile);
		},
		async openFile(file) {
			if (await mayLeave()) show(await readFile(file), file.name);
		},
		async save() {
			await save();
		},
		async openExample({ file, title }, { first = false } = {}) {
			if (!(await mayLeave())) return;
			const before = editor.diagram;
			const outcome = await fetchDiagram(`examples/${file}`);
			// Whoever began to draw while the first example was on its way keeps the drawing.
			if (first && editor.diagram !== before) return;
			show(outcome, title, first);
			// An example is nobody's file: the first save asks for a place.
			handle = null;
		}
	};
}
