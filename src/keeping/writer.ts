/**
 * Writes the steps of one diagram, in order, as they come. What could not be written stays here and is tried again,
 * sooner when something new happens; nothing is dropped.
 */
import { stepBetween, type History, type Step } from '#core/diagram';
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
	/** Called when work begins, ends, or fails. */
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
	#pending: JournalRecord[] = [];
	#first: History | null;
	#steps = 0;
	#characters = 0;
	#running: Promise<void> | null = null;
	#cardChanged = false;
	#snapshotWanted = false;
	#retry: ReturnType<typeof setTimeout> | undefined;
	#waitMs = RETRY_MS;
	#stopped = false;

	constructor(private readonly options: WriterOptions) {
		this.id = options.id;
		this.#history = options.history;
		this.#card = options.card;
		this.#file = options.card?.file ?? options.file;
		this.#seq = options.seq;
		this.#first = options.card ? null : options.history;
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
		return this.#pending.length === 0 && !this.#cardChanged && !this.#snapshotWanted;
	}

	step(after: History): void {
		const step: Step = stepBetween(this.#history, after);
		this.#history = after;
		this.#seq += 1;
		const record = stepRecord(this.options.id, this.#seq, step);
		this.#pending.push(record);
		this.#steps += 1;
		this.#characters += record.text.length;
		this.#write();
	}

	/** Remembers the file; a diagram that is not in the cabinet comes there with its first step. */
	setFile(file: KeptFile | null): void {
		this.#file = file;
		if (this.#first) return;
		this.#cardChanged = true;
		this.#write();
	}

	/** Puts a diagram that is not in the cabinet there now, without waiting for a step. */
	create(): void {
		this.#cardChanged = true;
		this.#write();
	}

	/** Writes the whole history anew, past steps that could not be read. */
	renew(): void {
		this.#snapshotWanted = true;
		this.#write();
	}

	/** Ends when all is written, or when writing has failed. True when all is written. */
	async flush(): Promise<boolean> {
		if (!this.settled) this.#write();
		await this.#running;
		return this.settled;
	}

	/** Writes nothing more. */
	stop(): void {
		this.#stopped = true;
		clearTimeout(this.#retry);
	}

	#write(): void {
		if (this.#running || this.#stopped || (this.fault && FINAL.includes(this.fault.kind))) return;
		clearTimeout(this.#retry);
		this.#running = this.#loop().finally(() => {
			this.#running = null;
			if (!this.#stopped) this.options.changed();
		});
		this.options.changed();
	}

	async #loop(): Promise<void> {
		try {
			while (!this.settled && !this.#stopped) await this.#writeOnce();
			this.fault = null;
			this.#waitMs = RETRY_MS;
		} catch (error) {
			this.fault = faultOf(error);
			if (FINAL.includes(this.fault.kind) || this.#stopped) return;
			this.#retry = setTimeout(() => this.#write(), this.#waitMs);
			this.#waitMs = Math.min(2 * this.#waitMs, LONGEST_RETRY_MS);
		}
	}

	async #writeOnce(): Promise<void> {
		const { cabinet, id } = this.options;
		if (this.#snapshotWanted) await this.#renew();
		const steps = [...this.#pending];
		const card = this.#newCard(steps.length > 0);
		this.#cardChanged = false;
		try {
			if (this.#first)
				await cabinet.create({ card, steps, snapshot: snapshotRecord(id, this.#seq - steps.length, this.#first) }, { last: true });
			else await cabinet.append({ card, steps });
		} catch (error) {
			this.#cardChanged = true;
			throw error;
		}
		this.#first = null;
		this.#card = card;
		this.#pending.splice(0, steps.length);
		this.options.wrote();
		if (this.#pending.length === 0 && (this.#steps >= STEPS || this.#characters >= CHARACTERS)) await this.#renew();
	}

	async #renew(): Promise<void> {
		const { cabinet, id } = this.options;
		const { length } = this.#pending;
		await cabinet.renew(snapshotRecord(id, this.#seq, this.#history), this.#seq - length);
		this.#snapshotWanted = false;
		this.#steps = length;
		this.#characters = 0;
	}

	#newCard(stepped: boolean): Card {
		const { id, now } = this.options;
		const { diagram } = this.#history;
		return {
			id,
			name: diagram.titleBlock.title,
			createdMs: this.#card?.createdMs ?? now(),
			changedMs: stepped || !this.#card ? now() : this.#card.changedMs,
			binnedMs: null,
			parts: Object.keys(diagram.parts).length,
			conductors: Object.keys(diagram.conductors).length,
			file: this.#file
		};
	}
}
