/**
 * Keeps the check out of the way of the hands: diagrams go to a worker, one at a time. While it works only the
 * newest waiting diagram is kept; an answer is passed on only when it belongs to the newest diagram asked about
 * or nothing newer is known yet. A worker that dies is replaced, and the user is told.
 */
import type { CheckResult } from '#core/check';
import type { Diagram } from '#core/diagram';
import { linked } from './check-link.ts';

export interface CheckRequest {
	readonly serial: number;
	readonly diagram: Diagram;
}

export type CheckAnswer =
	| { readonly serial: number; readonly result: CheckResult }
	/** The check itself threw on this diagram: a fault of the program, not of the diagram. */
	| { readonly serial: number; readonly fault: string };

/** The part of `Worker` that is used, so that tests can stand in for it. */
export interface CheckWorker {
	postMessage(request: CheckRequest): void;
	terminate(): void;
	onmessage: ((event: MessageEvent<CheckAnswer>) => void) | null;
	onerror: ((event: ErrorEvent) => void) | null;
}

export interface CheckListener {
	/** Result for `diagram`, which may be older than the newest by the edits made meanwhile. */
	checked(result: CheckResult, diagram: Diagram): void;
	/** True from the first request until the newest one is answered. */
	busy(busy: boolean): void;
	/** The check failed on a diagram; `restarted` when the worker had to be replaced. */
	failed(reason: string, restarted: boolean): void;
}

/** Restarts in a row without an answer after which the checker gives up until the next diagram. */
const RESTARTS = 3;

/** A worker that died without a word is taken for dead after this: ten times what the largest diagrams need. */
export const SILENCE_MS = 45_000;

export class Checker {
	#worker: CheckWorker | null = null;
	#running: CheckRequest | null = null;
	#waiting: Diagram | null = null;
	#serial = 0;
	#restarts = 0;
	#stopped = false;
	#silence: ReturnType<typeof setTimeout> | undefined;

	constructor(
		private readonly makeWorker: () => CheckWorker,
		private readonly listener: CheckListener
	) {}

	/** Asks for a check of this diagram; earlier ones not begun are forgotten. */
	check(diagram: Diagram): void {
		if (this.#stopped) return;
		this.#waiting = diagram;
		this.listener.busy(true);
		if (!this.#running) this.#next();
	}

	/** Forgets what is running: its answer is about a diagram that was closed. */
	forget(): void {
		this.#waiting = null;
		if (!this.#running) return;
		this.#running = null;
		this.#dropWorker();
		this.listener.busy(false);
	}

	/** Begins anew with another worker: this one keeps what it wrote for another reader. */
	renew(diagram: Diagram): void {
		this.#running = null;
		this.#dropWorker();
		this.check(diagram);
	}

	stop(): void {
		this.#stopped = true;
		this.#waiting = null;
		this.#running = null;
		this.#dropWorker();
	}

	#next(): void {
		const diagram = this.#waiting;
		this.#waiting = null;
		if (!diagram) return this.listener.busy(false);
		try {
			this.#worker ??= this.#hire();
			this.#running = { serial: (this.#serial += 1), diagram };
			this.#worker.postMessage(this.#running);
			clearTimeout(this.#silence);
			this.#silence = setTimeout(() => this.#replace('it gave no answer'), SILENCE_MS);
		} catch (error) {
			this.#replace(error instanceof Error ? error.message : String(error));
		}
	}

	#hire(): CheckWorker {
		const worker = this.makeWorker();
		worker.onmessage = ({ data }) => this.#answered(data);
		worker.onerror = (event) => {
			event.preventDefault?.();
			if (worker === this.#worker) this.#replace(event.message || 'The worker could not be started.');
		};
		return worker;
	}

	#answered(answer: CheckAnswer): void {
		if (answer.serial !== this.#running?.serial) return;
		const { diagram } = this.#running;
		clearTimeout(this.#silence);
		this.#running = null;
		this.#restarts = 0;
		if ('result' in answer) this.listener.checked(answer.result, diagram);
		else this.listener.failed(answer.fault, false);
		this.#next();
	}

	/** The diagram that killed the worker is not sent again; a newer one is. */
	#replace(reason: string): void {
		this.#dropWorker();
		this.#running = null;
		this.#restarts += 1;
		this.listener.failed(reason, true);
		if (this.#restarts < RESTARTS) this.#next();
		else {
			this.#waiting = null;
			this.#restarts = 0;
			this.listener.busy(false);
		}
	}

	#dropWorker(): void {
		clearTimeout(this.#silence);
		this.#worker?.terminate();
		this.#worker = null;
	}
}

export const hireCheckWorker = (): CheckWorker => linked(new Worker(new URL('./check.worker.ts', import.meta.url), { type: 'module' }));
