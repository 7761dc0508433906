import fc from 'fast-check';
import { expect, test } from 'vitest';
import { redo, run, start, stepBetween, takeStep, undo, type History, type Step } from '#core/diagram';
import { commandOf, plan, type Plan } from '../../support/arbitrary-command.ts';
import { smallDiagram } from '../../support/small-diagram.ts';

/** A run of a plan, perhaps within a group, an undo or a redo. */
const move = fc.oneof(
	{ weight: 5, arbitrary: fc.record({ plan, group: fc.constantFrom(null, 'typing'), waitMs: fc.constantFrom(10, 900) }) },
	{ weight: 2, arbitrary: fc.constant('undo' as const) },
	{ weight: 1, arbitrary: fc.constant('redo' as const) }
);

const nextOf = (history: History, how: 'undo' | 'redo' | { plan: Plan; group: string | null }, nowMs: number): History => {
	if (how === 'undo') return undo(history);
	if (how === 'redo') return redo(history);
	const command = commandOf(history.diagram, how.plan);
	if (!command || command.refuse(history.diagram) !== null) return history;
	return run(history, command, { group: how.group, nowMs, selection: ['part:B1'] });
};

test('steps between histories, sent through JSON and taken again, give the same histories with their undo', () => {
	fc.assert(
		fc.property(fc.array(move, { maxLength: 40 }), (moves) => {
			let history = start(smallDiagram());
			let replayed = start(smallDiagram());
			let nowMs = 0;
			for (const how of moves) {
				nowMs += typeof how === 'string' ? 0 : how.waitMs;
				const next = nextOf(history, how, nowMs);
				if (next === history) continue;
				const step = JSON.parse(JSON.stringify(stepBetween(history, next))) as Step;
				history = next;
				replayed = takeStep(replayed, step);
				expect(replayed).toEqual(JSON.parse(JSON.stringify(history)));
			}
		}),
		{ numRuns: 60 }
	);
});

test('a step that does not fit is refused by throwing', () => {
	expect(() => takeStep(start(smallDiagram()), { kind: 'undo' })).toThrow('There is nothing to undo.');
	const entry = { label: '', patches: [{ op: 'replace' as const, path: ['parts', 'nobody', 'label'], value: '' }] };
	const step = { kind: 'run' as const, merges: false, entry: { ...entry, inverse: [], selection: [], group: null, atMs: 0 } };
	expect(() => takeStep(start(smallDiagram()), step)).toThrow();
});
