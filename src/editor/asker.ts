/**
 * Puts questions to a worker of their own, so that neither the hands nor the check wait for the answers. One runs at
 * a time, in the order asked; one that nobody waits for any more is dropped, or stopped if it is slow and holds up
 * another.
 */
import type { Diagram } from '#core/diagram';
import type { QuestionKind, Questions } from './answers.ts';
import { reader, type Reader } from '#core/units';

export interface Asked {
	readonly serial: number;
	readonly diagram: Diagram;
	readonly kind: QuestionKind;
	readonly ask: unknown;
	/** For whom the answer is written. */
	readonly reader: Reader;
}

export type Told =
	| { readonly serial: number; readonly answer: unknown }
	| { readonly serial: number; readonly fault: string }
	/** Not an answer yet: steps done, of so many. */
	| { readonly serial: number; readonly done: number; readonly of: number };

/** The part of `Worker` that is used, so that tests can stand in for it. */
export interface AnswerWorker {
	postMessage(asked: Asked): void;
	terminate(): void;
	onmessage: ((event: MessageEvent<Told>) => void) | null;
	onerror: ((event: ErrorEvent) => void) | null;
}

/** Those that may run for seconds. Stopping a quick one would only cost what the worker remembers. */
const SLOW: ReadonlySet<QuestionKind> = new Set(['remedies', 'full-bus', 'positions', 'sizing', 'compare', 'assembly', 'reports']);

interface Waiting {
	readonly asked: Asked;
	readonly told: (answer: unknown) => void;
	readonly failed: (reason: string) => void;
	readonly progress: (done: number, of: number) => void;
}

export interface Listener<Answer> {
	told(answer: Answer): void;
	failed(reason: string): void;
	/** How far a long answer is. */
	progress?(done: number, of: number): void;
}

export class Asker {
	#worker: AnswerWorker | null = null;
	#running: Waiting | null = null;
	#wanted = true;
	#queue: Waiting[] = [];
	#serial = 0;
	/** A worker keeps sentences as well as figures, so that it serves one reader only. */
	#reader: Reader | null = null;

	constructor(private readonly makeWorker: () => AnswerWorker) {}

	/** Calls the listener once, later; not at all when the returned function is called before that. */
	ask<Kind extends QuestionKind>(
		diagram: Diagram,
		kind: Kind,
		ask: Questions[Kind]['ask'],
		{ told, failed, progress = () => {} }: Listener<Questions[Kind]['answer']>
	): () => void {
		const asked = { serial: (this.#serial += 1), diagram, kind, ask, reader: reader() };
		const waiting: Waiting = { asked, told: told as Waiting['told'], failed, progress };
		this.#queue.push(waiting);
		this.#next();
		return () => this.#drop(waiting);
	}

	stop(): void {
		this.#queue = [];
		this.#halt();
	}

	#drop(waiting: Waiting): void {
		this.#queue = this.#queue.filter((other) => other !== waiting);
		if (waiting === this.#running) this.#wanted = false;
	}

	#next(): void {
		if (this.#queue.length === 0) return;
		if (this.#running) {
			if (this.#wanted || !SLOW.has(this.#running.asked.kind)) return;
			this.#halt();
		}
		this.#running = this.#queue.shift()!;
		this.#wanted = true;
		try {
			if (this.#running.asked.reader !== this.#reader) {
				this.#worker?.terminate();
				this.#worker = null;
				this.#reader = this.#running.asked.reader;
			}
			this.#worker ??= this.#hire();
			this.#worker.postMessage(this.#running.asked);
		} catch (error) {
			this.#fail(error instanceof Error ? error.message : String(error));
		}
	}

	#hire(): AnswerWorker {
		const worker = this.makeWorker();
		worker.onmessage = ({ data }) => {
			if (data.serial !== this.#running?.asked.serial) return;
			const { told, failed, progress } = this.#running;
			const wanted = this.#wanted;
			if ('of' in data) {
				if (wanted) progress(data.done, data.of);
				else {
					// Nobody waits for it, and it is far from its end.
					this.#halt();
					this.#next();
				}
				return;
			}
			this.#running = null;
			if (wanted) {
				if ('answer' in data) told(data.answer);
				else failed(data.fault);
			}
			this.#next();
		};
		worker.onerror = (event) => {
			event.preventDefault?.();
			if (worker === this.#worker) this.#fail(event.message || 'The worker could not be started.');
		};
		return worker;
	}

	#fail(reason: string): void {
		const failed = this.#wanted ? this.#running?.failed : undefined;
		this.#halt();
		failed?.(reason);
		this.#next();
	}

	#halt(): void {
		this.#worker?.terminate();
		this.#worker = null;
		this.#running = null;
	}
}

export const hireAnswerWorker = (): AnswerWorker =>
	new Worker(new URL('./answers.worker.ts', import.meta.url), { type: 'module' }) as AnswerWorker;
