import type { CheckResult } from '#core/check';
import { addConductor, addPart, compose, emptyDiagram, type Diagram } from '#core/diagram';
import { change } from '#core/diagram';
import { answer } from '../../src/editor/answers.ts';
import { Editor, type AnswerWorker, type Asked, type CheckAnswer, type CheckRequest, type CheckWorker } from '#editor';

/** A worker on strings: it answers when the test says so. */
export class FakeWorker implements CheckWorker {
	readonly asked: CheckRequest[] = [];
	terminated = false;
	onmessage: CheckWorker['onmessage'] = null;
	onerror: CheckWorker['onerror'] = null;

	postMessage(request: CheckRequest): void {
		// What a real worker could not be sent must fail here too.
		this.asked.push(structuredClone(request));
	}

	terminate(): void {
		this.terminated = true;
	}

	answer(result: Partial<CheckResult> = {}, serial = this.asked.at(-1)!.serial): void {
		this.#say({ serial, result: checkResult(result) });
	}

	fault(fault: string): void {
		this.#say({ serial: this.asked.at(-1)!.serial, fault });
	}

	die(message: string): void {
		this.onerror?.({ message } as ErrorEvent);
	}

	#say(data: CheckAnswer): void {
		this.onmessage?.({ data } as MessageEvent<CheckAnswer>);
	}
}

/** A worker without a thread: it answers soon, with copies, as a real one does. */
export class AnsweringWorker implements AnswerWorker {
	onmessage: AnswerWorker['onmessage'] = null;
	onerror: AnswerWorker['onerror'] = null;
	terminated = false;

	postMessage(asked: Asked): void {
		const { serial, diagram, kind, ask } = structuredClone(asked);
		queueMicrotask(() => {
			if (this.terminated) return;
			this.onmessage?.({ data: structuredClone({ serial, answer: answer(diagram, kind, ask as never) }) } as MessageEvent);
		});
	}

	terminate(): void {
		this.terminated = true;
	}
}

export const checkResult = (given: Partial<CheckResult> = {}): CheckResult => ({
	findings: [],
	conductors: {},
	studV: {},
	studFaultA: {},
	studPole: {},
	studLostV: {},
	stacks: {},
	notChecked: [],
	assumptions: [],
	profileName: 'test profile',
	...given
});

/** A battery B1, a load E1 and the conductor W1 between their positive terminals. */
export function twoParts(): Diagram {
	return change(
		emptyDiagram(),
		compose('set up', [
			addPart({ id: 'B1', part: { kind: 'battery', label: 'B1', at: { x: 0, y: 0 } } }),
			addPart({ id: 'E1', part: { kind: 'load', label: 'E1', at: { x: 300, y: 0 } } }),
			addConductor({ id: 'W1', conductor: { label: 'W1', from: { part: 'B1', terminal: 'pos' }, to: { part: 'E1', terminal: 'pos' } } })
		])
	).diagram;
}

export function newEditor(diagram: Diagram = twoParts()): { editor: Editor; workers: FakeWorker[]; clock: { ms: number } } {
	const workers: FakeWorker[] = [];
	const clock = { ms: 0 };
	const editor = new Editor({
		diagram,
		makeWorker: () => {
			const worker = new FakeWorker();
			workers.push(worker);
			return worker;
		},
		now: () => clock.ms
	});
	return { editor, workers, clock };
}
