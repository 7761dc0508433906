/**
 * The check worker as the checker sees it: diagrams go in and results come out whole, while only what changed since the
 * last of each is sent. Both ends count on every message arriving, in order; a worker that is replaced begins anew.
 */
import type { CheckResult } from '#core/check';
import type { Diagram } from '#core/diagram';
import { changesBetween, withChanges, type Changes } from './changes.ts';
import type { CheckAnswer, CheckWorker } from './checker.ts';
import { reader, type Reader } from '#core/units';

export interface SentRequest {
	readonly serial: number;
	readonly changes: Changes;
	/** For whom the result is written. */
	readonly reader: Reader;
}

export type SentAnswer = { readonly serial: number; readonly changes: Changes } | { readonly serial: number; readonly fault: string };

/** The part of `Worker` that is used. */
interface Thread {
	postMessage(request: SentRequest): void;
	terminate(): void;
	onmessage: ((event: MessageEvent<SentAnswer>) => void) | null;
	onerror: ((event: ErrorEvent) => void) | null;
}

export function linked(thread: Thread): CheckWorker {
	let sent: Diagram | null = null;
	let received: unknown = null;
	const worker: CheckWorker = {
		onmessage: null,
		onerror: null,
		postMessage({ serial, diagram }) {
			thread.postMessage({ serial, changes: changesBetween(sent, diagram), reader: reader() });
			sent = diagram;
		},
		terminate: () => thread.terminate()
	};
	thread.onerror = (event) => worker.onerror?.(event);
	thread.onmessage = ({ data }) => {
		if ('changes' in data) received = withChanges(received, data.changes);
		const answer: CheckAnswer = 'changes' in data ? { serial: data.serial, result: received as CheckResult } : data;
		worker.onmessage?.({ data: answer } as MessageEvent<CheckAnswer>);
	};
	return worker;
}

/** The other end: answers a request with what `check` says of the diagram. */
export function answering(check: (diagram: Diagram) => CheckResult): (request: Omit<SentRequest, 'reader'>) => SentAnswer {
	let received: unknown = null;
	let sent: unknown = null;
	return ({ serial, changes }) => {
		received = withChanges(received, changes);
		try {
			const result = check(received as Diagram);
			const answer = { serial, changes: changesBetween(sent, result) };
			sent = result;
			return answer;
		} catch (error) {
			return { serial, fault: error instanceof Error ? error.message : String(error) };
		}
	};
}
