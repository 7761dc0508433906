/** Ties the editor to what is kept in the browser: tells a session of each step, and shows what comes back from it. */
import { serializeDiagram } from '#core/diagram';
import type { Editor } from '#editor';
import {
	addDiagram,
	askToPersist,
	Bell,
	Cabinet,
	checksum,
	faultOf,
	Session,
	Turns,
	type Card,
	type DiagramKey,
	type Fault,
	type KeptFile,
	type News,
	type Opened
} from '#keeping';
import { keepingTexts as texts } from '../keeping-texts.ts';
import { shareTexts } from '../review-texts.ts';
import { clearFragment } from '../share/address.ts';
import { type Visit, VISITOR_MAY } from '../share/visit.svelte.ts';
import { texts as windowTexts } from '../texts.ts';
import type { View } from '../view.svelte.ts';
import { dropTabDiagram, rememberTabDiagram, tabDiagram } from './tab-diagram.ts';

/** What a tab of its own brings along; tests bring their own. */
export interface Means {
	readonly cabinet: Cabinet;
	readonly turns: Turns;
	readonly bell: Bell;
}

const ownMeans = (): Means => ({ cabinet: new Cabinet(), turns: new Turns(), bell: new Bell() });

/** How long leaving waits for the disk. */
const FLUSH_MS = 3_000;
/** How long the start waits for it; what comes later is found in the list of diagrams. */
const START_MS = 10_000;

export class Keeping {
	readonly cabinet: Cabinet;
	readonly turns: Turns;
	readonly bell: Bell;
	readonly #session: Session;
	readonly #stopListening: () => void;
	/** Of the open diagram; null before its first change. */
	id = $state<DiagramKey | null>(null);
	reading = $state(false);
	/** True while what was open last is fetched: whatever was done now would be done to something else. */
	opening = $state(false);
	/** Settles when the start is over. */
	begun: Promise<void> = Promise.resolve();
	/** Set while a diagram is looked at that is not kept: nothing of it reaches the store. */
	visit = $state.raw<Visit | null>(null);
	settled = $state(true);
	fault = $state.raw<Fault | null>(null);
	/** True while the other tab is being asked. */
	asking = $state(false);
	/** The file of what is open. */
	file = $state.raw<KeptFile | null>(null);
	#askedToPersist = false;
	/** Why the store could not even be opened; until something can be kept. */
	#startFault: Fault | null = null;

	constructor(
		private readonly editor: Editor,
		private readonly view: View,
		means: Means = ownMeans()
	) {
		({ cabinet: this.cabinet, turns: this.turns, bell: this.bell } = means);
		this.#session = new Session({
			...means,
			host: {
				show: (history, card, how, notes) => (how === 'followed' ? editor.follow(history) : this.#show(history, card, notes)),
				changed: () => this.#changed(),
				tell: (news) => this.#tell(news)
			}
		});
		this.#session.begin(editor.history);
		this.#stopListening = editor.onStep((before, after) => {
			if (this.visit) {
				this.visit.changed(after.diagram);
				return;
			}
			this.#session.step(before, after);
			this.#changed();
		});
	}

	/** Opens what was open last, in this tab or in any. False when there is nothing to open. */
	async start(): Promise<boolean> {
		let begun = (): void => undefined;
		this.begun = new Promise((resolve) => (begun = resolve));
		this.opening = true;
		this.#changed();
		const late = new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), START_MS));
		try {
			const card = await Promise.race([this.#lastCard(), late]);
			return card !== undefined && card.binnedMs === null && (await this.#open(card));
		} catch (error) {
			this.#startFault = faultOf(error);
			return false;
		} finally {
			this.opening = false;
			this.#changed();
			begun();
		}
	}

	async #lastCard(): Promise<Card | undefined> {
		const id = tabDiagram() ?? (await this.cabinet.last());
		return id === undefined ? undefined : this.cabinet.card(id);
	}

	/** What the editor has just loaded is not kept yet: a new diagram, an example, a file. */
	begin(file: KeptFile | null = null): void {
		this.file = file;
		this.#endVisit();
		this.#session.begin(this.editor.history, file);
		dropTabDiagram();
		this.#changed();
	}

	/** What the editor has just loaded is only looked at. What was open must be kept by now, or be given up. */
	beginVisit(visit: Visit): void {
		this.file = null;
		this.#session.begin(this.editor.history);
		this.visit = visit;
		this.#changed();
	}

	/** Makes what is looked at a diagram of one's own. */
	async copyVisited(): Promise<void> {
		const nowMs = Date.now();
		try {
			const id = await addDiagram(this.cabinet, this.editor.diagram, { createdMs: nowMs, changedMs: nowMs });
			const card = await this.cabinet.card(id);
			if (!card || !(await this.#open(card))) throw new Error(`Diagram ${id} was not opened.`);
			this.editor.announce(shareTexts.copyMade);
		} catch {
			this.begin();
			this.editor.announce(shareTexts.copyNotKept);
		}
	}

	/** Opens a kept diagram. What is open must be kept, or be given up. */
	async open(card: Card): Promise<boolean> {
		if (card.id === this.id) return true;
		return this.#open(card);
	}

	/** Waits until all changes are kept. False when they cannot be, or not in time. */
	async flush(): Promise<boolean> {
		const late = new Promise<boolean>((resolve) => setTimeout(() => resolve(false), FLUSH_MS));
		return Promise.race([this.#session.flush(), late]);
	}

	/** The diagram was written to this file. */
	saved(file: KeptFile): void {
		if (this.visit) return;
		this.file = file;
		this.#session.setFile(file);
		void this.#session.keepVersion('saved', this.editor.history.diagram);
	}

	/** The file is known to be in this state. */
	setFile(file: KeptFile): void {
		this.file = file;
		this.#session.setFile(file);
	}

	keepVersion(why: 'before-restoring'): Promise<void> {
		return this.#session.keepVersion(why, this.editor.history.diagram);
	}

	editHere(): void {
		this.asking = true;
		this.#session.askForTurn();
	}

	close(): void {
		this.#stopListening();
		this.#session.close();
		this.bell.close();
		void this.cabinet.close();
	}

	async #open(card: Card): Promise<boolean> {
		const opened = await this.#session.open(card.id);
		if (opened.ok) {
			this.#endVisit();
			this.#changed();
			const { lost } = opened.recovered;
			const said = [texts.resumed(card.name || windowTexts.file.untitled), ...(lost > 0 ? [texts.lost(lost)] : [])];
			this.editor.announce(said.join(' '));
			void this.cabinet.putLast(card.id).catch(() => undefined);
			if (lost > 0)
				void this.view.ask({ title: card.name || windowTexts.file.untitled, text: texts.lost(lost), yes: windowTexts.notice.close });
			return true;
		}
		const text = whyNot(opened);
		this.editor.refuse(text);
		void this.view.ask({ title: windowTexts.file.notOpened(card.name || windowTexts.file.untitled), text, yes: windowTexts.notice.close });
		return false;
	}

	#show(history: Editor['history'], card: Card, notes: readonly string[]): void {
		this.file = card.file;
		const isSaved = card.file !== null && checksum(serializeDiagram(history.diagram)) === card.file.sum;
		this.editor.resume(history, { fileName: card.file?.name ?? '', saved: isSaved ? history.diagram : null, notes });
		this.view.fitSoon();
	}

	#changed(): void {
		const { id, state, settled, fault } = this.#session;
		this.reading = state === 'reading';
		if (!this.reading) this.asking = false;
		this.settled = settled;
		if (id !== null && settled) this.#startFault = null;
		this.fault = fault ?? this.#startFault;
		if (this.opening) this.editor.setReadOnly(texts.opening);
		else if (this.reading) this.editor.setReadOnly(texts.reading.refused);
		else if (this.visit) this.editor.setReadOnly(shareTexts.refused, VISITOR_MAY);
		else this.editor.setReadOnly(null);
		if (id === this.id) return;
		this.id = id;
		if (id === null) return;
		rememberTabDiagram(id);
		this.bell.ring({ kind: 'cards' });
		if (!this.reading) this.#askToPersist();
	}

	#endVisit(): void {
		if (!this.visit) return;
		this.visit = null;
		clearFragment();
	}

	/** Asked when there is something to keep, once in each visit. */
	#askToPersist(): void {
		if (this.#askedToPersist) return;
		this.#askedToPersist = true;
		void askToPersist();
	}

	#tell(news: News): void {
		if (news.kind === 'no-answer') return void this.#offerForce();
		if (news.kind === 'stays') this.asking = false;
		if (news.kind === 'taken-away' && news.copied) {
			const { title } = this.editor.diagram.titleBlock;
			void this.view.ask({ title: title || windowTexts.file.untitled, text: texts.copied, yes: windowTexts.notice.close });
		}
		this.editor.announce(news.kind === 'taken-away' && news.copied ? texts.copied : texts.news(news));
	}

	async #offerForce(): Promise<void> {
		const { forceTitle: title, force: text, forceYes: yes, forceNo: no } = texts.reading;
		const answer = await this.view.ask({ title, text, yes, no });
		this.asking = false;
		if (answer === true) await this.#session.forceTurn();
	}
}

function whyNot(opened: Extract<Opened, { ok: false }>): string {
	if (opened.fault) return texts.fault(opened.fault);
	if (opened.problems.length === 0) return texts.unreadable;
	return opened.problems.map(({ what, why, remedy }) => `${what} ${why} ${remedy}`).join(' ');
}
