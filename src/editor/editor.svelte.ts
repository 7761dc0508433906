/**
 * What the user is doing: a diagram with its history, what is selected, which tool is in hand, and the latest
 * check. The diagram is held raw: its identity is what canvas and checker compare, and proxies must not reach
 * commands.
 */
import {
	emptyDiagram,
	redo,
	run,
	start,
	undo,
	type Command,
	type Diagram,
	type History,
	type ItemKey,
	type Part,
	type TerminalRef
} from '#core/diagram';
import type { CanvasHost, Tool } from '#canvas';
import type { CheckResult } from '#core/check';
import type { Point } from '#core/geometry';
import { Checker, type CheckWorker } from './checker.ts';
import { messages } from './messages.ts';
import { studName } from './names.ts';
import { newPart } from './new-part.ts';
import { proposeConductor } from './propose-conductor.ts';
import { NOTHING, pruned, selectionOf } from './selection.ts';
import { SELECT } from './tool.ts';

export interface Message {
	readonly text: string;
	readonly kind: 'done' | 'refused';
	/** Differs from message to message, so that the same words are said again. */
	readonly serial: number;
}

export interface EditorOptions {
	readonly diagram: Diagram;
	readonly makeWorker: () => CheckWorker;
	readonly now?: () => number;
}

/** Whoever keeps the diagram hears of every step: run, undo and redo, but not of another diagram being loaded. */
export type StepListener = (before: History, after: History) => void;

/** How a kept history comes back. */
export interface Resumed {
	readonly fileName: string;
	/** As it was last saved to its file; null when that is not what is shown now. */
	readonly saved: Diagram | null;
	readonly notes?: readonly string[];
}

/** Stands for what is in a file that is not as shown. */
const NEVER_SAVED = emptyDiagram();

export class Editor implements Pick<CanvasHost, 'run' | 'select' | 'setTool' | 'placePart' | 'connect' | 'announce'> {
	#history = $state.raw<History>()!;
	#saved = $state.raw<Diagram>()!;
	#selection = $state.raw<ReadonlySet<ItemKey>>(NOTHING);
	#tool = $state.raw<Tool>(SELECT);
	#check = $state.raw<CheckResult | null>(null);
	#checked = $state.raw<Diagram | null>(null);
	#checking = $state(false);
	#checkFault = $state<string | null>(null);
	#focusedFinding = $state<string | null>(null);
	#message = $state.raw<Message>({ text: '', kind: 'done', serial: 0 });
	#notes = $state.raw<readonly string[]>([]);
	#readOnly = $state<string | null>(null);
	#looked = $state.raw<{ readonly diagram: Diagram; readonly reason: string } | null>(null);
	#stillAllowed: readonly string[] = [];
	#onStep: StepListener | null = null;
	#last: Command | null = null;
	/** Name of the file it was opened from or saved to; empty for a diagram that was never saved. */
	fileName = $state('');
	readonly #checker: Checker;
	readonly #now: () => number;

	constructor({ diagram, makeWorker, now = Date.now }: EditorOptions) {
		this.#now = now;
		this.#checker = new Checker(makeWorker, {
			checked: (result, of) => this.#receive(result, of),
			busy: (busy) => (this.#checking = busy),
			failed: (reason, restarted) => {
				this.#checkFault = restarted ? messages.workerReplaced(reason) : messages.checkFault(reason);
			}
		});
		this.load(diagram, '');
	}

	get history(): History {
		return this.#history;
	}
	/** What is on the sheet: the diagram that is edited, or the one looked at. */
	get diagram(): Diagram {
		return this.#looked?.diagram ?? this.#history.diagram;
	}
	/** True while another diagram than the one that is edited is on the sheet. */
	get looking(): boolean {
		return this.#looked !== null;
	}
	get selection(): ReadonlySet<ItemKey> {
		return this.#selection;
	}
	get tool(): Tool {
		return this.#tool;
	}
	/** The latest check; of a slightly older diagram while `checking`. Null before the first. */
	get check(): CheckResult | null {
		return this.#check;
	}
	get checking(): boolean {
		return this.#checking;
	}
	/** True when `check` is about exactly this diagram. */
	get checkIsCurrent(): boolean {
		return this.#checked === this.diagram;
	}
	/** Why the last check gave no answer, or null. */
	get checkFault(): string | null {
		return this.#checkFault;
	}
	get focusedFinding(): string | null {
		return this.#focusedFinding;
	}
	get message(): Message {
		return this.#message;
	}
	/** What was mended when the diagram was opened, a sentence each. */
	get openingNotes(): readonly string[] {
		return this.#notes;
	}
	/** Why nothing may be changed now, or null. */
	get readOnly(): string | null {
		return this.#looked?.reason ?? this.#readOnly;
	}
	/** As last opened or saved. */
	get savedDiagram(): Diagram {
		return this.#saved;
	}
	get dirty(): boolean {
		return this.#saved !== this.#history.diagram;
	}
	/** What was run last; null before the first. */
	get lastCommand(): Command | null {
		return this.#last;
	}
	get undoLabel(): string | null {
		return this.#history.done.at(-1)?.label ?? null;
	}
	get redoLabel(): string | null {
		return this.#history.undone.at(-1)?.label ?? null;
	}

	/** Puts another diagram on the sheet. Its history starts empty; nothing of the former one remains. */
	load(diagram: Diagram, fileName: string, notes: readonly string[] = []): void {
		this.resume(start(diagram), { fileName, saved: diagram, notes });
	}

	/** Puts a kept diagram on the sheet, with the steps that can be undone and redone. */
	resume(history: History, { fileName, saved, notes = [] }: Resumed): void {
		const { diagram } = history;
		this.#notes = notes;
		this.#looked = null;
		this.#history = history;
		this.#saved = saved ?? NEVER_SAVED;
		this.fileName = fileName;
		this.#selection = NOTHING;
		this.#tool = SELECT;
		this.#focusedFinding = null;
		this.#check = null;
		this.#checked = null;
		this.#checkFault = null;
		this.#checker.forget();
		this.#checker.check(diagram);
	}

	/** Shows the open diagram as it was changed elsewhere: what is selected and which tool is in hand stay. */
	follow(history: History): void {
		this.#history = history;
		if (this.#looked) return;
		this.#selection = pruned(history.diagram, this.#selection);
		this.#checker.check(history.diagram);
	}

	/** Checks again what is on the sheet: it is to be written for another reader. */
	recheck(): void {
		this.#checker.renew(this.diagram);
	}

	/** Puts another diagram on the sheet to be looked at, with what is said to who tries to change it; null brings back what is edited. */
	look(diagram: Diagram | null, reason = ''): void {
		this.#looked = diagram && { diagram, reason };
		this.#selection = pruned(this.diagram, this.#selection);
		this.#tool = SELECT;
		this.#focusedFinding = null;
		this.#check = null;
		this.#checked = null;
		this.#checker.forget();
		this.#checker.check(this.diagram);
	}

	/** Refuses every change with this reason, until null, but for commands of these names. */
	setReadOnly(reason: string | null, stillAllowed: readonly string[] = []): void {
		this.#readOnly = reason;
		this.#stillAllowed = stillAllowed;
	}

	/** @returns how to stop */
	onStep(listener: StepListener): () => void {
		this.#onStep = listener;
		return () => (this.#onStep = null);
	}

	markSaved(diagram: Diagram, fileName: string): void {
		this.#saved = diagram;
		this.fileName = fileName;
	}

	/** Runs a command as one undo step; with a `group`, runs close in time become one. Says and returns why it was refused. */
	run(command: Command, options: { group?: string; quiet?: boolean } = {}): string | null {
		const isAllowed = !this.#looked && this.#stillAllowed.includes(command.name);
		const reason = (isAllowed ? null : this.readOnly) ?? command.refuse(this.diagram);
		if (reason !== null) {
			this.#say(reason, 'refused');
			return reason;
		}
		const { group = null } = options;
		const next = run(this.#history, command, { selection: [...this.#selection], group, nowMs: this.#now() });
		if (next === this.#history) return null;
		this.#last = command;
		this.#become(next);
		if (!options.quiet) this.announce(messages.done(command.label));
		return null;
	}

	undo(): void {
		if (this.readOnly !== null) return this.refuse(this.readOnly);
		const entry = this.#history.done.at(-1);
		if (!entry) return this.#say(messages.nothingToUndo, 'refused');
		this.#become(undo(this.#history));
		this.#selection = selectionOf(this.diagram, entry.selection as ItemKey[]);
		this.announce(messages.undone(entry.label));
	}

	redo(): void {
		if (this.readOnly !== null) return this.refuse(this.readOnly);
		const entry = this.#history.undone.at(-1);
		if (!entry) return this.#say(messages.nothingToRedo, 'refused');
		this.#become(redo(this.#history));
		this.announce(messages.redone(entry.label));
	}

	/** What is not in the diagram is left out. */
	select(keys: readonly ItemKey[]): void {
		const next = selectionOf(this.diagram, keys);
		if (next.size === this.#selection.size && [...next].every((key) => this.#selection.has(key))) return;
		this.#selection = next;
	}

	setTool(tool: Tool): void {
		this.#tool = tool;
	}

	focusFinding(key: string | null): void {
		this.#focusedFinding = key;
	}

	announce(text: string): void {
		this.#say(text, 'done');
	}

	/** Says why something was not done. */
	refuse(reason: string): void {
		this.#say(reason, 'refused');
	}

	placePart(partKind: string, at: Point, on?: TerminalRef, params?: Part['params']): void {
		const made = newPart(this.diagram, partKind, at, on, params);
		if (this.run(made.command) !== null) return;
		this.select([made.key]);
		this.setTool(SELECT);
	}

	connect(from: TerminalRef, to: TerminalRef): void {
		const proposal = proposeConductor(this.diagram, from, to);
		if (this.run(proposal.command) !== null) return;
		this.select([proposal.key]);
		if (this.tool.kind === 'connect') this.setTool({ kind: 'connect', from: null });
		this.announce(messages.connected(proposal.label, studName(this.diagram, from), studName(this.diagram, to), proposal.size));
	}

	/** Stops the worker. */
	close(): void {
		this.#checker.stop();
	}

	#become(history: History): void {
		const before = this.#history;
		this.follow(history);
		this.#onStep?.(before, history);
	}

	#receive(result: CheckResult, of: Diagram): void {
		this.#check = result;
		this.#checked = of;
		this.#checkFault = null;
		if (!result.findings.some(({ key }) => key === this.#focusedFinding)) this.#focusedFinding = null;
	}

	#say(text: string, kind: Message['kind']): void {
		this.#message = { text, kind, serial: this.#message.serial + 1 };
	}
}
