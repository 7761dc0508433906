import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DiagramSchema, redo, run, start, stepBetween, undo, type History } from '#core/diagram';
import { recover } from '../../src/keeping/recover.ts';
import { snapshotRecord, stepRecord, type JournalRecord } from '../../src/keeping/records.ts';
import { commandOf, plan } from '../support/arbitrary-command.ts';
import { smallDiagram } from '../support/small-diagram.ts';
import { plain } from './support.ts';

const move = fc.oneof(
	{ weight: 5, arbitrary: fc.record({ plan, group: fc.constantFrom(null, 'typing') }) },
	{ weight: 1, arbitrary: fc.constantFrom('undo' as const, 'redo' as const) }
);
const work = fc.array(move, { minLength: 1, maxLength: 30 });

/** Works, and writes a journal: the states after none, one, two … steps. */
function journal(moves: typeof work extends fc.Arbitrary<infer Moves> ? Moves : never): { states: History[]; steps: JournalRecord[] } {
	const states = [start(smallDiagram())];
	const steps: JournalRecord[] = [];
	for (const how of moves) {
		const before = states.at(-1)!;
		const command = typeof how === 'string' ? null : commandOf(before.diagram, how.plan);
		if (command && command.refuse(before.diagram) !== null) continue;
		const after =
			how === 'undo' ? undo(before) : how === 'redo' ? redo(before) : command ? run(before, command, { group: how.group }) : before;
		if (after === before) continue;
		states.push(after);
		steps.push(stepRecord('d', steps.length + 1, stepBetween(before, after)));
	}
	return { states, steps };
}

const found = (result: ReturnType<typeof recover>) => {
	if (!result.ok) throw new Error('Nothing was recovered.');
	return result;
};

describe('recovery', () => {
	test('gives the history after the last step, undo and redo steps included', () => {
		fc.assert(
			fc.property(work, (moves) => {
				const { states, steps } = journal(moves);
				const { history, lost, seq, notes } = found(recover([snapshotRecord('d', 0, states[0]!)], steps));
				expect(history).toEqual(plain(states.at(-1)));
				expect({ lost, seq, notes }).toEqual({ lost: 0, seq: steps.length, notes: [] });
			}),
			{ numRuns: 40 }
		);
	});

	test('any cut of the journal recovers to the state at the cut', () => {
		fc.assert(
			fc.property(work, fc.nat(), (moves, at) => {
				const { states, steps } = journal(moves);
				const cut = at % (steps.length + 1);
				const { history } = found(recover([snapshotRecord('d', 0, states[0]!)], steps.slice(0, cut)));
				expect(history).toEqual(plain(states[cut]));
			}),
			{ numRuns: 40 }
		);
	});

	test('any one damaged step: what comes before it is found, valid, and what follows is counted as lost', () => {
		const damage = fc.constantFrom('character', 'shorter', 'other-place', 'missing', 'not-text');
		fc.assert(
			fc.property(work, fc.nat(), fc.nat(), damage, (moves, which, where, how) => {
				const { states, steps } = journal(moves);
				fc.pre(steps.length > 0);
				const index = which % steps.length;
				const step = steps[index]!;
				const at = where % step.text.length;
				const text = { character: `${step.text.slice(0, at)}\u0001${step.text.slice(at + 1)}`, shorter: step.text.slice(0, at) };
				const damaged =
					how === 'missing'
						? steps.filter((_, i) => i !== index)
						: steps.map((one, i) => {
								if (i !== index) return one;
								if (how === 'other-place') return { ...stepRecord('e', one.seq, { kind: 'undo' }), id: 'd' };
								return { ...one, text: how === 'not-text' ? (7 as unknown as string) : text[how as keyof typeof text] };
							});
				const { history, lost } = found(recover([snapshotRecord('d', 0, states[0]!)], damaged));
				expect(history).toEqual(plain(states[index]));
				expect(DiagramSchema.safeParse(history.diagram).success).toBe(true);
				expect(lost).toBe(how === 'missing' ? damaged.slice(index).length && steps.length - index : steps.length - index);
			}),
			{ numRuns: 60 }
		);
	});

	test('a damaged newest snapshot costs nothing while the one before it and the steps are there', () => {
		fc.assert(
			fc.property(work, fc.nat(), (moves, at) => {
				const { states, steps } = journal(moves);
				const middle = at % states.length;
				const damaged = { ...snapshotRecord('d', middle, states[middle]!), sum: 1 };
				const { history, lost } = found(recover([damaged, snapshotRecord('d', 0, states[0]!)], steps));
				expect(history).toEqual(plain(states.at(-1)));
				expect(lost).toBe(0);
			}),
			{ numRuns: 20 }
		);
	});

	test('where nothing can be read it says so, and a newer format in its own words', () => {
		const snapshot = snapshotRecord('d', 0, start(smallDiagram()));
		expect(recover([{ ...snapshot, text: '' }], [])).toEqual({ ok: false, problems: [] });
		const newer = snapshotRecord('d', 0, start({ ...smallDiagram(), version: 99 as 1 }));
		expect(recover([newer], [])).toMatchObject({ ok: false, problems: [{ path: 'version' }] });
	});
});
