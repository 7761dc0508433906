/** New, Open, Save, Examples: the editor's diagram on one side, the device's files on the other. */
import { becomeDiagram, emptyDiagram, serializeDiagram, type Diagram, type Problem } from '#core/diagram';
import type { Example } from '#core/examples';
import { definitionOf } from '#core/parts';
import type { Editor } from '#editor';
import {
	diagramFromLink,
	fetchDiagram,
	hasUnsavedChanges,
	openDiagram,
	readFile,
	readHandle,
	saveDiagram,
	type OpenedDiagram,
	type Outcome
} from '#files';
import { checksum, type Card, type KeptFile } from '#keeping';
import { keepingTexts } from './keeping-texts.ts';
import type { Keeping } from './keeping/keeping.svelte.ts';
import { shareTexts } from './review-texts.ts';
import { clearFragment } from './share/address.ts';
import { keptRemarks, visitKey, withRemarks } from './share/visit-remarks.ts';
import { Visit } from './share/visit.svelte.ts';
import { texts } from './texts.ts';
import { whereToWrite, wroteElse } from './on-disk.ts';
import type { View } from './view.svelte.ts';

export interface FileActions {
	/** Asks first when there are changes that could not be kept, as do all that replace the diagram. */
	newDiagram(): Promise<void>;
	open(): Promise<void>;
	/** A file dropped on the window. */
	openFile(file: File): Promise<void>;
	save(): Promise<void>;
	/** A diagram kept in this browser. False when it was not opened. */
	openKept(card: Card): Promise<boolean>;
	/** The diagram in the fragment of an address, read only. */
	openLink(fragment: string, options?: { readonly first?: boolean }): Promise<void>;
	/** Asks what to do when something else has written the open file. */
	lookAtDisk(): Promise<void>;
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

const fileOf = ({ fileName, handle, modifiedMs, diagram }: OpenedDiagram): KeptFile => ({
	name: fileName,
	handle,
	modifiedMs,
	sum: checksum(serializeDiagram(diagram))
});

export function createFileActions(editor: Editor, view: View, keeping: Keeping): FileActions {
	/** Ends with the last save that was asked for: each begins when the one before has noted what it wrote. */
	let saving: Promise<unknown> | null = null;

	/** Nothing is at risk where every change is kept; otherwise it is asked. */
	async function mayLeave(): Promise<boolean> {
		// A save that ends later would take its file for the next diagram's.
		await saving;
		await keeping.begun;
		if (keeping.visit) {
			const { leaveTitle: title, leave: text, leaveYes: yes, leaveNo: no } = shareTexts;
			return !keeping.visit.atRisk || (await view.ask({ title, text, yes, no })) === true;
		}
		if ((await keeping.flush()) || !hasUnsavedChanges(editor.savedDiagram, editor.history.diagram)) return true;
		const { discardTitle: title, discard: text, discardYes: yes, discardNo: no, discardSave: also } = texts.file;
		const answer = await view.ask({ title, text, yes, no, also });
		return answer === 'also' ? save() : answer;
	}

	/** False when nothing was saved: refused, or called off. */
	function save(): Promise<boolean> {
		const next = (saving ?? Promise.resolve()).then(saveNow);
		const ended = next
			.catch(() => undefined)
			.then(() => {
				if (saving === ended) saving = null;
			});
		saving = ended;
		return next;
	}

	async function saveNow(): Promise<boolean> {
		const place = await whereToWrite(keeping, view);
		if (place === undefined) return false;
		const { diagram } = editor.history;
		// Should the page be closed before the end is noted, what is in the file is known all the same.
		if (place && keeping.file) keeping.setFile({ ...keeping.file, writing: checksum(serializeDiagram(diagram)) });
		const outcome = await saveDiagram(diagram, place);
		if (outcome.status === 'failed') editor.refuse(sentences(outcome.problems));
		if (outcome.status !== 'done') return false;
		const { fileName, handle, modifiedMs } = outcome.value;
		editor.markSaved(diagram, fileName);
		keeping.saved({ name: fileName, handle, modifiedMs, sum: checksum(serializeDiagram(diagram)) });
		editor.announce(texts.file.saved(fileName));
		return true;
	}

	/** With `quiet`, a failure is told in the status line: at the start nobody asked for anything yet. */
	function show(outcome: Outcome<OpenedDiagram>, name: string, { quiet = false, isFile = true } = {}): void {
		if (outcome.status === 'cancelled') return;
		if (outcome.status === 'failed') {
			editor.refuse(`${texts.file.notOpened(name)}. ${sentences(outcome.problems)}`);
			if (!quiet) void view.ask({ title: texts.file.notOpened(name), text: sentences(outcome.problems), yes: texts.notice.close });
			return;
		}
		const { diagram, fileName, notes } = outcome.value;
		editor.load(diagram, fileName, notes);
		keeping.begin(isFile ? fileOf(outcome.value) : null);
		view.fitSoon();
		const said = [texts.file.opened(diagram.titleBlock.title || fileName), ...unknownKinds(diagram), ...mended(notes)];
		editor.announce(said.join(' '));
	}

	async function openLink(fragment: string, { first = false } = {}): Promise<void> {
		if (!first && !(await mayLeave())) return;
		const outcome = await diagramFromLink(fragment);
		if (outcome.status === 'done') {
			const { diagram, notes } = outcome.value;
			const key = visitKey(fragment);
			const kept = keptRemarks(key);
			editor.load(kept ? withRemarks(diagram, kept.remarks) : diagram, '', notes);
			keeping.beginVisit(new Visit(diagram, key, kept?.inFile === false));
			view.fitSoon();
			editor.announce(
				[shareTexts.opened(diagram.titleBlock.title || texts.file.untitled), ...unknownKinds(diagram), ...mended(notes)].join(' ')
			);
			return;
		}
		if (outcome.status === 'cancelled') return;
		editor.load(emptyDiagram(), '');
		keeping.begin();
		clearFragment();
		view.fitSoon();
		const text = sentences(outcome.problems);
		editor.refuse(text);
		void view.ask({ title: shareTexts.brokenTitle, text, yes: texts.notice.close });
	}

	/** When the file was found changed and the user kept what is open: not asked again until it changes once more. */
	let leftAsItIs: number | null = null;

	async function lookAtDisk(): Promise<void> {
		const { file } = keeping;
		if (!file?.handle || keeping.reading || view.question || saving) return;
		const modifiedMs = await wroteElse(keeping, file);
		if (modifiedMs === null || modifiedMs === leftAsItIs) return;
		// Meanwhile it may be saved here, or another diagram be open.
		if (keeping.file !== file || view.question || saving) return;
		const { changedTitle, onFocus: text, load: yes, stay: no } = keepingTexts.disk;
		leftAsItIs = modifiedMs;
		if ((await view.ask({ title: changedTitle(file.name), text, yes, no })) !== true) return;
		const outcome = await readHandle(file.handle);
		if (outcome.status !== 'done') return show(outcome, file.name);
		const { diagram } = outcome.value;
		editor.run(becomeDiagram(keepingTexts.disk.step(file.name), diagram), { quiet: true });
		editor.markSaved(editor.diagram, file.name);
		keeping.setFile(fileOf(outcome.value));
		editor.announce(keepingTexts.disk.loaded(file.name));
	}

	return {
		async newDiagram() {
			if (!(await mayLeave())) return;
			editor.load(emptyDiagram(), '');
			keeping.begin();
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
		async openKept(card) {
			return card.id === keeping.id || ((await mayLeave()) && keeping.open(card));
		},
		async save() {
			await save();
		},
		lookAtDisk,
		openLink,
		async openExample({ file, title }, { first = false } = {}) {
			if (!(await mayLeave())) return;
			const before = editor.diagram;
			const outcome = await fetchDiagram(`examples/${file}`);
			// Whoever began to draw while the first example was on its way keeps the drawing.
			if (first && editor.diagram !== before) return;
			// An example is nobody's file: the first save asks for a place.
			show(outcome, title, { quiet: first, isFile: false });
		}
	};
}
