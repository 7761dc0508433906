/** A store in memory, locks and bells as a browser has them, and hands that edit. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { addPart, editTitleBlock, redo, run, start, undo, type Command, type History } from '#core/diagram';
import { Bell, Cabinet, Session, Turns, type Card, type News, type SessionState } from '#keeping';
import { smallDiagram } from '../support/small-diagram.ts';

/** Every test begins with an empty disk. */
export function emptyDisk(): void {
	globalThis.indexedDB = new IDBFactory();
}

/** The part of the browser's lock manager that is used, for several tabs in one process. */
export class FakeLocks {
	readonly #held = new Map<string, { steal: () => void }>();
	readonly #queues = new Map<string, (() => void)[]>();

	readonly request = ((name: string, options: LockOptions, work: (lock: Lock | null) => unknown): Promise<unknown> =>
		new Promise<unknown>((resolve, reject) => {
			const grant = () => {
				const mine = { steal: () => reject(new DOMException('stolen', 'AbortError')) };
				this.#held.set(name, mine);
				void Promise.resolve(work({ name, mode: 'exclusive' })).then((result) => {
					resolve(result);
					if (this.#held.get(name) !== mine) return;
					this.#held.delete(name);
					this.#queues.get(name)?.shift()?.();
				});
			};
			if (options.steal) {
				this.#held.get(name)?.steal();
				return grant();
			}
			if (!this.#held.has(name)) return grant();
			if (options.ifAvailable) return void Promise.resolve(work(null)).then(resolve);
			const queue = this.#queues.get(name) ?? [];
			this.#queues.set(name, [...queue, grant]);
			options.signal?.addEventListener('abort', () => {
				const waiting = this.#queues.get(name) ?? [];
				// Once granted, the signal has no effect.
				if (!waiting.includes(grant)) return;
				this.#queues.set(
					name,
					waiting.filter((other) => other !== grant)
				);
				reject(new DOMException('aborted', 'AbortError'));
			});
		})) as unknown as LockManager['request'];
}

export interface Tab {
	readonly session: Session;
	readonly cabinet: Cabinet;
	readonly news: News['kind'][];
	readonly states: () => SessionState;
	/** What is on this tab's sheet. */
	history(): History;
	card(): Card | null;
	edit(command: Command): void;
	title(text: string): void;
	part(id: string): void;
	undo(): void;
	redo(): void;
	clock: { ms: number };
	close(): Promise<void>;
}

export function openTab(locks: FakeLocks | undefined, { cabinet = new Cabinet(), answerMs = 150 } = {}): Tab {
	const bell = new Bell();
	const news: News['kind'][] = [];
	const clock = { ms: 1_000_000 };
	let history = start(smallDiagram());
	const session = new Session({
		cabinet,
		turns: new Turns(locks),
		bell,
		answerMs,
		now: () => clock.ms,
		host: { show: (shown) => (history = shown), changed: () => undefined, tell: ({ kind }) => news.push(kind) }
	});
	session.begin(history);
	const become = (next: History) => {
		const before = history;
		if (next === before) return;
		history = next;
		if (session.state === 'editing') session.step(before, next);
	};
	const edit = (command: Command) => become(run(history, command, { nowMs: (clock.ms += 1000) }));
	return {
		session,
		cabinet,
		news,
		clock,
		states: () => session.state,
		history: () => history,
		card: () => session.card,
		edit,
		title: (title) => edit(editTitleBlock({ set: { title } })),
		part: (id) => edit(addPart({ id, part: { kind: 'load', at: { x: 0, y: 0 } } })),
		undo: () => become(undo(history)),
		redo: () => become(redo(history)),
		async close() {
			session.close();
			bell.close();
			await cabinet.close();
		}
	};
}

/** Through JSON, as everything kept goes: `undefined` and the like fall away. */
export const plain = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value)) as Value;
