/**
 * Writes the steps of one diagram. Each is handed to the browser in the same breath as it is taken, without waiting
 * for the one before: the browser keeps their order. When one fails nothing more is sent until the whole history was
 * written anew, which is tried again and again; nothing is dropped.
 */
import { stepBetween, type History } from '#core/diagram';
import type { Cabinet } from './cabinet.ts';
import { faultOf, type Fault } from './fault.ts';
import { snapshotRecord, stepRecord, type Card, type DiagramKey, type JournalRecord, type KeptFile } from './records.ts';

export interface WriterOptions {
	readonly cabinet: Cabinet;
	readonly id: DiagramKey;
	readonly history: History;
	/** Of the last step in the cabinet. */
	readonly seq: number;
	/** Null for a diagram that is not in the cabinet yet: it comes there with its first step. */
	readonly card: Card | null;
	readonly file: KeptFile | null;
	readonly now: () => number;
	/** Called when writing begins, ends, or fails. */
	readonly changed: () => void;
	/** Called after steps were written. */
	readonly wrote: () => void;
}

/** After so many steps, or so much text, a new snapshot is cheaper than reading them all at the start. */
const STEPS = 200;
const CHARACTERS = 2_000_000;
const RETRY_MS = 2_000;
const LONGEST_RETRY_MS = 30_000;
/** Trying again does not help: another tab has it, or the diagram is gone. */
const FINAL: readonly Fault['kind'][] = ['elsewhere', 'gone'];

export class Writer {
	fault: Fault | null = null;
	readonly id: DiagramKey;
	#history: History;
	#card: Card | null;
	#file: KeptFile | null;
	#seq: number;
	/** The last step known to be in the cabinet. */
	#written: number;
	/** Steps of which it is not known yet. */
	#pending: JournalRecord[] = [];
	#isNew: boolean;
	/** The history must be written whole before any step. */
	#wantsRenewal = false;
	#sending = 0;
	#idle: (() => void)[] = [];
	#steps = 0;
	#characters = 0;
	#retry: ReturnType<typeof setTimeout> | undefined;
	#waitMs = RETRY_MS;
	#stopped = false;

	constructor(private readonly options: WriterOptions) {
		this.id = options.id;
		this.#history = options.history;
		this.#card = options.card;
		this.#file = options.card?.file ?? options.file;
		this.#seq = options.seq;
		this.#written = options.seq;
		this.#isNew = options.card === null;
	}

	get card(): Card | null {
		return this.#card;
	}
	get seq(): number {
		return this.#seq;
	}
	get history(): History {
		return this.#history;
	}
	/** True when there is nothing that only this tab knows. */
	get settled(): boolean {
		return this.#pending.length === 0 && this.#sending === 0 && !this.#wantsRenewal;
	}

	step(after: History): void {
		const before = this.#history;
		const record = stepRecord(this.id, this.#seq + 1, stepBetween(before, after));
		this.#history = after;
		this.#seq += 1;
		this.#pending.push(record);
		this.#steps += 1;
		this.#characters += record.text.length;
		if (this.#wantsRenewal) return this.#mend();
		const card = this.#newCard(true);
		const { cabinet } = this.options;
		if (this.#isNew)
			this.#send(cabinet.create({ card, steps: [record], snapshot: snapshotRecord(this.id, this.#seq - 1, before) }, { last: true }));
		else this.#send(cabinet.append({ card, steps: [record] }));
	}

	/** Puts a diagram that is not in the cabinet there now, without waiting for a step. */
	create(): void {
		const snapshot = snapshotRecord(this.id, this.#seq, this.#history);
		this.#send(this.options.cabinet.create({ card: this.#newCard(true), steps: [], snapshot }, { last: true }));
	}

	/** Remembers the file; a diagram that is not in the cabinet comes there with its first step. */
	setFile(file: KeptFile | null): void {
		this.#file = file;
		if (!this.#isNew && !this.#wantsRenewal) this.#send(this.options.cabinet.append({ card: this.#newCard(false), steps: [] }));
	}

	/** Writes the whole history anew, past steps that could not be read. */
	renew(): void {
		this.#wantsRenewal = true;
		this.#mend();
	}

	/** Ends when all is written, or when writing has failed. True when all is written. */
	async flush(): Promise<boolean> {
		if (this.#wantsRenewal) this.#mend();
		while (this.#sending > 0) await new Promise<void>((resolve) => this.#idle.push(resolve));
		return this.settled;
	}

	/** Writes nothing more. */
	stop(): void {
		this.#stopped = true;
		clearTimeout(this.#retry);
	}

	/** What is on its way now holds all steps so far. */
	#send(sent: Promise<void>): void {
		const seq = this.#seq;
		this.#isNew = false;
		this.#sending += 1;
		void sent
			.then(
				() => this.#arrived(seq),
				(error: unknown) => this.#failed(error)
			)
			.finally(() => {
				this.#sending -= 1;
				if (this.#sending === 0) this.#rest();
				if (!this.#stopped) this.options.changed();
			});
		this.options.changed();
	}

	#arrived(seq: number): void {
		// After one that failed, what follows it stands behind a gap.
		if (this.#wantsRenewal) return;
		this.#written = seq;
		this.#pending = this.#pending.filter((record) => record.seq > seq);
		this.fault = null;
		this.#waitMs = RETRY_MS;
		if (!this.#stopped) this.options.wrote();
	}

	/** The first failure says why; those after it only stood on what was not there. */
	#failed(error: unknown): void {
		if (this.#wantsRenewal) return;
		this.fault = faultOf(error);
		this.#wantsRenewal = true;
	}

	/** Nothing is on its way: time to try again, or for a new snapshot. */
	#rest(): void {
		this.#idle.splice(0).forEach((resolve) => resolve());
		if (this.#stopped) return;
		if (this.#wantsRenewal) {
			clearTimeout(this.#retry);
			if (this.#isFinal) return;
			this.#retry = setTimeout(() => this.#mend(), this.#waitMs);
			this.#waitMs = Math.min(2 * this.#waitMs, LONGEST_RETRY_MS);
		} else if (this.#steps >= STEPS || this.#characters >= CHARACTERS) this.#mend();
	}

	get #isFinal(): boolean {
		return this.fault !== null && FINAL.includes(this.fault.kind);
	}

	/** Writes the whole history; steps that come meanwhile follow it. */
	#mend(): void {
		if (this.#sending > 0 || this.#stopped || this.#isFinal) return;
		clearTimeout(this.#retry);
		const card = this.#newCard(this.#pending.length > 0);
		const whole = { card, steps: this.#pending, snapshot: snapshotRecord(this.id, this.#seq, this.#history) };
		this.#wantsRenewal = false;
		this.#steps = 0;
		this.#characters = 0;
		this.#send(this.options.cabinet.renew(whole, this.#written));
	}

	#newCard(stepped: boolean): Card {
		const { now } = this.options;
		const { diagram } = this.#history;
		this.#card = {
			id: this.id,
			name: diagram.titleBlock.title,
			createdMs: this.#card?.createdMs ?? now(),
			changedMs: stepped || !this.#card ? now() : this.#card.changedMs,
			binnedMs: null,
			parts: Object.keys(diagram.parts).length,
			conductors: Object.keys(diagram.conductors).length,
			file: this.#file
		};
		return this.#card;
	}
}
