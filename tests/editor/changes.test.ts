import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { change, moveParts, type Diagram } from '#core/diagram';
import { createMemory } from '#core/memory';
import { changesBetween, withChanges } from '../../src/editor/changes.ts';
import { answering, linked, type SentAnswer, type SentRequest } from '../../src/editor/check-link.ts';
import { commandOf, plan } from '../support/arbitrary-command.ts';
import { twoParts } from './support.ts';

const data = fc.letrec((tie) => ({
	value: fc.oneof({ maxDepth: 3 }, fc.integer({ min: 0, max: 4 }), fc.constantFrom('a', null, Infinity), tie('list'), tie('record')),
	list: fc.array(tie('value'), { maxLength: 4 }),
	record: fc.dictionary(fc.constantFrom('a', 'b', 'c', 'whole', 'list', 'keys', 'members'), tie('value'), { maxKeys: 4 })
})).value;

/** As a worker receives it. */
const send = (before: unknown, after: unknown): unknown =>
	withChanges(structuredClone(before), structuredClone(changesBetween(before, after)));

describe('changes between two values', () => {
	test('make the second out of the first, whatever they are', () => {
		fc.assert(
			fc.property(data, data, (before, after) => {
				expect(send(before, after)).toEqual(after);
			}),
			{ numRuns: 300 }
		);
	});

	test('keep the order of keys and of items', () => {
		const [x, y] = [{ n: 1 }, { n: 2 }];
		expect(Object.keys(send({ a: x, b: y }, { b: y, a: x }) as object)).toEqual(['b', 'a']);
		expect(send([x, y], [y, x, { n: 3 }])).toEqual([{ n: 2 }, { n: 1 }, { n: 3 }]);
	});

	test('leave what did not change the object it was', () => {
		const before = { parts: { a: { at: 1 }, b: { at: 2 } }, list: [{ n: 1 }, { n: 2 }] };
		const after = { parts: { ...before.parts, b: { at: 3 } }, list: [before.list[1], { n: 3 }] };
		const made = withChanges(before, structuredClone(changesBetween(before, after))) as typeof before;
		expect(made).toEqual(after);
		expect(made.parts.a).toBe(before.parts.a);
		expect(made.list[0]).toBe(before.list[1]);
		expect(withChanges(before, structuredClone(changesBetween(before, before)))).toBe(before);
	});

	test('are small after a small edit', () => {
		const parts = Object.fromEntries(Array.from({ length: 1000 }, (_, i) => [`P${i}`, { label: `P${i}`, at: { x: i, y: 0 } }]));
		const changes = changesBetween({ parts }, { parts: { ...parts, P5: { ...parts['P5']!, at: { x: 0, y: 9 } } } });
		expect(JSON.stringify(changes).length).toBeLessThan(200);
	});
});

describe('a worker that is sent changes', () => {
	/** Both ends, with copies between them. */
	function link() {
		const memory = createMemory();
		const answer = answering((diagram) => {
			if (diagram.titleBlock.title === 'break') throw new Error('broken');
			return checkDiagram(diagram, memory);
		});
		const thread = {
			onmessage: null as ((event: MessageEvent<SentAnswer>) => void) | null,
			onerror: null,
			terminate: () => undefined,
			postMessage: (request: SentRequest) => thread.onmessage?.({ data: structuredClone(answer(structuredClone(request))) } as MessageEvent)
		};
		const worker = linked(thread);
		return (diagram: Diagram) => {
			let said: unknown;
			worker.onmessage = ({ data }) => (said = 'result' in data ? data.result : data.fault);
			worker.postMessage({ serial: 1, diagram });
			return said;
		};
	}

	test('answers as one that is sent everything, edit after edit', () => {
		fc.assert(
			fc.property(fc.array(plan, { minLength: 1, maxLength: 8 }), (plans) => {
				const ask = link();
				let diagram = twoParts();
				for (const step of plans) {
					const command = commandOf(diagram, step);
					if (command && command.refuse(diagram) === null) diagram = change(diagram, command).diagram;
					expect(ask(diagram)).toEqual(checkDiagram(structuredClone(diagram)));
				}
			}),
			{ numRuns: 30 }
		);
	}, 60_000);

	test('goes on after a diagram on which the check failed', () => {
		const ask = link();
		const diagram = twoParts();
		ask(diagram);
		expect(ask({ ...diagram, titleBlock: { ...diagram.titleBlock, title: 'break' } })).toBe('broken');
		const moved = change(diagram, moveParts({ parts: ['E1'], by: { x: 5, y: 0 } })).diagram;
		expect(ask(moved)).toEqual(checkDiagram(structuredClone(moved)));
	});
});
