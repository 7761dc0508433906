/**
 * One tab's work on one diagram: it is edited here and written to the cabinet step by step, or, while another tab
 * edits it, shown here as it grows. A diagram nobody has changed yet is not in the cabinet; its first step brings it.
 */
import { takeStep, type Diagram, type History, type Problem } from '#core/diagram';
import type { Bell, Call } from './bell.ts';
import type { Cabinet, Kept } from './cabinet.ts';
import { faultOf, type Fault } from './fault.ts';
import { newId } from './new-id.ts';
import { recover, type Recovered } from './recover.ts';
import { stepIn, type Card, type DiagramKey, type KeptFile } from './records.ts';
import type { Turn, Turns } from './turns.ts';
import { keepVersion, VERSION_EVERY_MS } from './versions.ts';
import { Writer } from './writer.ts';

/** What happened that the user should hear of. */
export type News =
	/** This tab edits now, because the other one gave its turn or was closed. */
	| { readonly kind: 'your-turn' }
	/** Another tab asked, and edits now. */
	| { readonly kind: 'handed-over' }
	/** Another tab took the turn by force; what was not written yet went into a diagram of its own, or there was none. */
	| { readonly kind: 'taken-away'; readonly copied: boolean }
	/** The tab that edits does not answer. */
	| { readonly kind: 'no-answer' }
	/** It holds work it could not write, and goes on. */
	| { readonly kind: 'stays' }
	/** The store lost the diagram; it was put there again from what is open here. */
	| { readonly kind: 'put-back' };

export interface Host {
	/** Another history is to be shown: of a diagram just opened, with what was mended in it, or of this one as it was changed elsewhere. */
	show(history: History, card: Card, how: 'opened' | 'followed', notes: readonly string[]): void;
	/** `state`, `fault` or `settled` may have changed. */
	changed(): void;
	tell(news: News): void;
}

export interface SessionOptions {
	readonly cabinet: Cabinet;
	readonly turns: Turns;
	readonly bell: Bell;
	readonly host: Host;
	readonly now?: () => number;
	/** How long the editing tab may take to answer. */
	readonly answerMs?: number;
}

export type Opened =
	| { readonly ok: true; readonly recovered: Recovered }
	| { readonly ok: false; readonly fault: Fault | null; readonly problems: readonly Problem[] };

export type SessionState = 'editing' | 'reading';

export class Session {
	readonly #options: SessionOptions;
	readonly #now: () => number;
	readonly #tab = newId();
	#id: DiagramKey | null = null;
	#state: SessionState = 'editing';
	#writer: Writer | null = null;
	#turn: Turn | null = null;
	/** While reading: what is shown, and how many steps are in it. */
	#shown: { history: History; seq: number; card: Card } | null = null;
	#waiting: AbortController | null = null;
	#following: Promise<void> = Promise.resolve();
	#asked: ReturnType<typeof setTimeout> | undefined;
	#versionMs = 0;
	#closed = false;
	readonly #deafen: () => void;

	constructor(options: SessionOptions) {
		this.#options = options;
		this.#now = options.now ?? Date.now;
		this.#deafen = options.bell.listen((call) => void this.#hear(call));
	}

	/** Of the diagram in the cabinet; null before it is there. */
	get id(): DiagramKey | null {
		return this.#id;
	}
	get state(): SessionState {
		return this.#state;
	}
	/** Why the last steps could not be written; null when all is well. */
	get fault(): Fault | null {
		return this.#writer?.fault ?? null;
	}
	/** True when nothing is known only to this tab. */
	get settled(): boolean {
		return this.#writer?.settled ?? true;
	}
	get card(): Card | null {
		return this.#writer?.card ?? this.#shown?.card ?? null;
	}

	/** Leaves what is open and goes on with a diagram that is not in the cabinet, such as a new one. */
	begin(history: History, file: KeptFile | null = null): void {
		this.#drop();
		this.#startWriter(newId(), history, 0, null, file);
	}

	/** Opens a diagram of the cabinet; what is open stays when that fails. Steps not written yet are lost: `flush` first. */
	async open(id: DiagramKey): Promise<Opened> {
		if (id === this.#id) throw new RangeError(`Diagram ${id} is open already.`);
		let turn: Turn | null = null;
		try {
			turn = await this.#options.turns.take(id);
			const opened = await this.#enter(id, turn);
			if (!opened.ok) turn?.release();
			return opened;
		} catch (error) {
			turn?.release();
			return { ok: false, fault: faultOf(error), problems: [] };
		}
	}

	/** The diagram was changed here by one step. */
	step(before: History, after: History): void {
		const writer = this.#writer;
		if (!writer) return;
		const isFirst = this.#id === null;
		this.#id = writer.id;
		writer.step(after);
		if (isFirst) this.#hold(writer.id);
		const worthKeeping = !isFirst || Object.keys(before.diagram.parts).length > 0;
		if (isFirst || this.#now() - this.#versionMs >= VERSION_EVERY_MS) {
			this.#versionMs = this.#now();
			if (worthKeeping) void this.keepVersion(isFirst ? 'opened' : 'worked', before.diagram);
		}
	}

	/** Keeps the diagram as it is among its versions. Never fails aloud: the steps are kept all the same. */
	async keepVersion(why: Parameters<typeof keepVersion>[2], diagram: Diagram): Promise<void> {
		if (this.#id === null) return;
		await keepVersion(this.#options.cabinet, this.#id, why, diagram, this.#now()).catch(() => undefined);
	}

	setFile(file: KeptFile | null): void {
		this.#writer?.setFile(file);
	}

	/** Waits until all is written, or cannot be. True when it is. */
	flush(): Promise<boolean> {
		return this.#writer?.flush() ?? Promise.resolve(true);
	}

	/** Asks the tab that edits to let this one go on. It answers with its turn, or `host.tell` says why not. */
	askForTurn(): void {
		if (this.#id === null || this.#state === 'editing') return;
		this.#options.bell.ring({ kind: 'ask', id: this.#id, from: this.#tab });
		clearTimeout(this.#asked);
		this.#asked = setTimeout(() => this.#options.host.tell({ kind: 'no-answer' }), this.#options.answerMs ?? 4_000);
	}

	/** For a tab that does not answer: what it has not written by now, it cannot write any more. */
	async forceTurn(): Promise<void> {
		if (this.#id === null || this.#state === 'editing') return;
		const id = this.#id;
		this.#waiting?.abort();
		const turn = await this.#options.turns.force(id);
		if (turn) await this.#gotTurn(id, turn);
	}

	close(): void {
		this.#closed = true;
		this.#deafen();
		this.#drop();
	}

	async #enter(id: DiagramKey, turn: Turn | null): Promise<Opened> {
		const { cabinet, host } = this.#options;
		const kept = await (turn ? cabinet.claim(id, this.#tab) : cabinet.read(id));
		const recovered = recover(kept.snapshots, kept.steps);
		if (!recovered.ok) return { ok: false, fault: null, problems: recovered.problems };
		this.#drop();
		this.#id = id;
		if (turn) {
			this.#turn = turn;
			this.#watch(id, turn);
			this.#startWriter(id, recovered.history, recovered.seq, kept.card, null);
			// What could not be read must not stand between this and what follows.
			if (recovered.lost > 0 || recovered.notes.length > 0) this.#writer!.renew();
		} else this.#read(kept, recovered);
		host.show(recovered.history, kept.card, 'opened', recovered.notes);
		host.changed();
		return { ok: true, recovered };
	}

	#read({ card }: Kept, { history, seq }: Recovered): void {
		this.#state = 'reading';
		this.#shown = { history, seq, card };
		this.#standInLine();
	}

	#startWriter(id: DiagramKey, history: History, seq: number, card: Card | null, file: KeptFile | null): void {
		const { cabinet, bell, host } = this.#options;
		this.#state = 'editing';
		this.#versionMs = this.#now();
		const writer: Writer = new Writer({
			cabinet,
			id,
			history,
			seq,
			card,
			file,
			now: this.#now,
			wrote: () => bell.ring({ kind: 'kept', id }),
			changed: () => {
				if (writer === this.#writer && (writer.fault?.kind === 'elsewhere' || writer.fault?.kind === 'gone')) this.#shutOut();
				host.changed();
			}
		});
		this.#writer = writer;
	}

	/** A diagram that was just put into the cabinet: nobody else can have it. */
	#hold(id: DiagramKey): void {
		void this.#options.turns.take(id).then((turn) => {
			if (this.#id !== id || this.#state !== 'editing') return turn?.release();
			this.#turn = turn;
			if (turn) this.#watch(id, turn);
		});
	}

	#watch(id: DiagramKey, turn: Turn): void {
		void turn.taken.then(() => {
			if (this.#id === id && this.#turn === turn) this.#shutOut();
		});
	}

	/** Another tab edits now. What was not written yet goes on as a diagram of its own, so that neither overwrites the other. */
	#shutOut(): void {
		const writer = this.#writer!;
		const id = this.#id!;
		const { host } = this.#options;
		const isGone = writer.fault?.kind === 'gone';
		const copied = !writer.settled;
		if (!isGone && !copied) {
			this.#toReading(writer, id);
			host.tell({ kind: 'taken-away', copied });
			return host.changed();
		}
		// Steps without what they followed are of no use.
		if (isGone) void this.#options.cabinet.purge(id).catch(() => undefined);
		this.#drop();
		this.#startWriter(newId(), writer.history, 0, null, writer.card?.file ?? null);
		this.#id = this.#writer!.id;
		this.#writer!.create();
		this.#hold(this.#id);
		host.tell(isGone ? { kind: 'put-back' } : { kind: 'taken-away', copied });
		host.changed();
	}

	#toReading(writer: Writer, id: DiagramKey): void {
		const { history, seq, card } = writer;
		this.#drop();
		this.#id = id;
		this.#state = 'reading';
		this.#shown = { history, seq, card: card! };
		this.#standInLine();
		void this.#follow();
	}

	/** Whoever reads waits for the turn, and gets it when the other tab is closed. */
	#standInLine(): void {
		const id = this.#id!;
		const waiting = new AbortController();
		this.#waiting = waiting;
		void this.#options.turns.wait(id, waiting.signal).then((turn) => {
			if (!turn) return;
			if (this.#waiting === waiting) void this.#gotTurn(id, turn);
			else turn.release();
		});
	}

	async #gotTurn(id: DiagramKey, turn: Turn): Promise<void> {
		clearTimeout(this.#asked);
		this.#waiting = null;
		const opened = await this.#enter(id, turn).catch(() => null);
		if (this.#closed) this.#drop();
		if (this.#closed || !opened?.ok) return turn.release();
		this.#options.bell.ring({ kind: 'taken', id });
		this.#options.host.tell({ kind: 'your-turn' });
	}

	async #hear(call: Call): Promise<void> {
		if (call.kind === 'cards' || call.id !== this.#id) return;
		if (this.#state === 'editing') {
			if (call.kind === 'ask') await this.#handOver(call.id);
			return;
		}
		if (call.kind === 'kept') await this.#follow();
		else if (call.kind === 'stays') {
			if (this.#asked === undefined) return;
			clearTimeout(this.#asked);
			this.#asked = undefined;
			this.#options.host.tell({ kind: 'stays' });
		} else if (call.kind === 'ask') this.#stepAside();
	}

	async #handOver(id: DiagramKey): Promise<void> {
		const writer = this.#writer!;
		const isWritten = await writer.flush();
		if (this.#writer !== writer) return;
		if (!isWritten) return this.#options.bell.ring({ kind: 'stays', id });
		this.#toReading(writer, id);
		this.#options.host.tell({ kind: 'handed-over' });
		this.#options.host.changed();
	}

	/** Another reader asked: it goes first. */
	#stepAside(): void {
		this.#waiting?.abort();
		const id = this.#id;
		this.#waiting = null;
		setTimeout(() => {
			if (this.#id === id && this.#state === 'reading' && !this.#waiting) this.#standInLine();
		}, 1_000);
	}

	#follow(): Promise<void> {
		this.#following = this.#following.then(() => this.#catchUp()).catch(() => undefined);
		return this.#following;
	}

	async #catchUp(): Promise<void> {
		const shown = this.#shown;
		const id = this.#id;
		if (!shown || id === null) return;
		const { cabinet, host } = this.#options;
		const records = await cabinet.stepsAfter(id, shown.seq);
		let { history, seq } = shown;
		for (const record of records) {
			const step = record.seq === seq + 1 ? stepIn(record) : null;
			if (!step) break;
			if (step.kind !== 'turn') history = takeStep(history, step);
			seq = record.seq;
		}
		let { card } = shown;
		if (records.length === 0 || seq !== records.at(-1)!.seq) {
			// Steps are missing: they are in a snapshot by now.
			const kept = await cabinet.read(id);
			const recovered = recover(kept.snapshots, kept.steps);
			if (!recovered.ok || (recovered.seq === shown.seq && records.length === 0)) return;
			({ history, seq } = recovered);
			card = kept.card;
		}
		if (this.#shown !== shown) return;
		this.#shown = { history, seq, card };
		host.show(history, card, 'followed', []);
	}

	#drop(): void {
		clearTimeout(this.#asked);
		this.#asked = undefined;
		this.#waiting?.abort();
		this.#waiting = null;
		this.#writer?.stop();
		this.#writer = null;
		this.#shown = null;
		this.#turn?.release();
		this.#turn = null;
		this.#id = null;
	}
}
