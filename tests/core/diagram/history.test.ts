import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	DiagramSchema,
	editPart,
	editTitleBlock,
	parseDiagram,
	redo,
	run,
	serializeDiagram,
	start,
	undo,
	type History
} from '#core/diagram';
import { commandOf, plan, type Plan } from '../../support/arbitrary-command.ts';
import { smallDiagram } from '../../support/small-diagram.ts';

/** Runs what is not refused and tells how it went, so that a failing sequence reads as a story. */
function play(plans: readonly Plan[]): { history: History; story: string[]; last: History['diagram'] } {
	let history = start(smallDiagram());
	const story: string[] = [];
	for (const step of plans) {
		const command = commandOf(history.diagram, step);
		if (!command || command.refuse(history.diagram) !== null) continue;
		history = run(history, command);
		story.push(String(command));
	}
	return { history, story, last: history.diagram };
}

describe('any sequence of commands', () => {
	const sequences = fc.array(plan, { minLength: 1, maxLength: 40 });

	test('leaves a valid file after every step, which opens as it was saved with nothing to mend', () => {
		fc.assert(
			fc.property(sequences, (plans) => {
				let history = start(smallDiagram());
				for (const step of plans) {
					const command = commandOf(history.diagram, step);
					if (!command || command.refuse(history.diagram) !== null) continue;
					history = run(history, command);
					const opened = parseDiagram(serializeDiagram(history.diagram));
					expect(opened, String(command)).toEqual({ ok: true, diagram: history.diagram, notes: [], migratedFrom: null });
				}
			}),
			{ numRuns: 60 }
		);
	});

	test('is undone to the first diagram exactly, and redone to the last', () => {
		fc.assert(
			fc.property(sequences, (plans) => {
				const { history, story, last } = play(plans);
				let current = history;
				while (current.done.length > 0) {
					current = undo(current);
					expect(DiagramSchema.safeParse(current.diagram).success).toBe(true);
				}
				expect(current.diagram, story.join('\n')).toEqual(smallDiagram());
				while (current.undone.length > 0) current = redo(current);
				expect(current.diagram, story.join('\n')).toEqual(last);
			}),
			{ numRuns: 150 }
		);
	});

	test('does something most of the time', () => {
		const plans = fc.sample(plan, { numRuns: 2000, seed: 1 });
		const done = new Set(
			plans.map((step) => step.kind).filter((kind) => play(plans.filter((step) => step.kind === kind).slice(0, 5)).story.length > 0)
		);
		// Every kind of command gets through on the small diagram, so the properties above are about all of them.
		expect(done).toEqual(new Set(plans.map(({ kind }) => kind)));
	});
});

describe('undo steps', () => {
	const title = (text: string) => editTitleBlock({ set: { title: text } });

	test('typing in one field close in time is one step', () => {
		let history = start(smallDiagram());
		history = run(history, title('R'), { group: 'title', nowMs: 0 });
		history = run(history, title('Ri'), { group: 'title', nowMs: 300 });
		history = run(history, title('Rid'), { group: 'title', nowMs: 700 });
		expect(history.done).toHaveLength(1);
		expect(undo(history).diagram).toEqual(smallDiagram());
		expect(redo(undo(history)).diagram.titleBlock.title).toBe('Rid');
	});

	test('a pause, another field or an undo in between begins a new step', () => {
		let history = run(start(smallDiagram()), title('R'), { group: 'title', nowMs: 0 });
		history = run(history, title('Ri'), { group: 'title', nowMs: 600 });
		expect(history.done).toHaveLength(2);
		history = run(history, editPart({ part: 'P1', set: { label: 'X' } }), { group: 'label', nowMs: 700 });
		expect(history.done).toHaveLength(3);
		history = run(undo(history), title('Rid'), { group: 'title', nowMs: 800 });
		expect(history.done.map(({ label }) => label)).toHaveLength(3);
		expect(history.undone).toEqual([]);
	});

	test('a command that changes nothing leaves no step', () => {
		const history = start(smallDiagram());
		expect(run(history, title(''))).toBe(history);
	});

	test('the selection before a step is kept with it', () => {
		const history = run(start(smallDiagram()), title('R'), { selection: ['part:B1'] });
		expect(history.done[0]!.selection).toEqual(['part:B1']);
	});

	test('undo and redo with nothing to do change nothing', () => {
		const history = start(smallDiagram());
		expect(undo(history)).toBe(history);
		expect(redo(history)).toBe(history);
	});
});
