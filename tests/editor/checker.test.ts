import { describe, expect, test, vi } from 'vitest';
import type { Finding } from '#core/rules';
import { moveParts } from '#core/diagram';
import { SILENCE_MS } from '../../src/editor/checker.ts';
import { newEditor, twoParts } from './support.ts';

const step = moveParts({ parts: ['E1'], by: { x: 5, y: 0 } });

const finding: Finding = {
	key: 'a:E1',
	rule: 'a',
	title: 'A rule',
	severity: 'error',
	subjects: [{ kind: 'part', id: 'E1' }],
	message: 'Something is wrong.',
	remedy: 'Mend it.',
	why: 'Because.',
	source: 'common practice, no source',
	unverified: false,
	assumptions: [],
	caseId: null,
	numbers: {},
	waiver: null,
	waiverLapsed: false,
	lapse: null
};

describe('the check', () => {
	test('starts with the diagram, without waiting for a change', () => {
		const { editor, workers } = newEditor();
		expect(workers[0]!.asked.map(({ diagram }) => diagram)).toEqual([editor.diagram]);
		expect(editor.checking).toBe(true);
		expect(editor.check).toBeNull();

		workers[0]!.answer({ findings: [finding] });
		expect(editor.checking).toBe(false);
		expect(editor.checkIsCurrent).toBe(true);
		expect(editor.check!.findings).toHaveLength(1);
	});

	test('skips the states between while the worker is busy', () => {
		const { editor, workers } = newEditor();
		const worker = workers[0]!;
		for (let i = 0; i < 5; i++) editor.run(step);
		expect(worker.asked).toHaveLength(1);

		worker.answer();
		expect(worker.asked).toHaveLength(2);
		expect(worker.asked[1]!.diagram).toEqual(editor.diagram);
		expect(editor.checking).toBe(true);
		expect(editor.checkIsCurrent).toBe(false);

		worker.answer();
		expect(editor.checking).toBe(false);
		expect(editor.checkIsCurrent).toBe(true);
	});

	test('drops an answer to a question that is no longer asked', () => {
		const { editor, workers } = newEditor();
		const [first] = workers;
		editor.load(twoParts(), 'other.json');
		// The diagram was closed: its worker is let go, and a late answer says nothing about the new one.
		expect(first!.terminated).toBe(true);
		first!.answer({ findings: [finding] });
		expect(editor.check).toBeNull();

		workers[1]!.answer({ profileName: 'of the new one' });
		workers[1]!.answer({ profileName: 'again' }, 1);
		expect(editor.check!.profileName).toBe('of the new one');
	});

	test('says when it failed on a diagram, and keeps the earlier findings', () => {
		const { editor, workers } = newEditor();
		workers[0]!.answer({ findings: [finding] });
		editor.run(step);
		workers[0]!.fault('matrix is odd');
		expect(editor.checkFault).toMatch(/failed on this diagram.*matrix is odd/);
		expect(editor.check!.findings).toHaveLength(1);
		expect(editor.checkIsCurrent).toBe(false);

		editor.run(step);
		workers[0]!.answer();
		expect(editor.checkFault).toBeNull();
	});

	test('replaces a worker that died, tells so, and checks the next state with the new one', () => {
		const { editor, workers } = newEditor();
		editor.run(step);
		workers[0]!.die('out of memory');
		expect(workers[0]!.terminated).toBe(true);
		expect(editor.checkFault).toMatch(/started again.*out of memory/);

		expect(workers).toHaveLength(2);
		expect(workers[1]!.asked[0]!.diagram).toEqual(editor.diagram);
		workers[1]!.answer();
		expect(editor.checkFault).toBeNull();
		expect(editor.checking).toBe(false);
	});

	test('takes a worker that says nothing for dead, tells so and goes on', () => {
		vi.useFakeTimers();
		const { editor, workers } = newEditor();
		vi.advanceTimersByTime(SILENCE_MS);
		vi.useRealTimers();
		expect(workers[0]!.terminated).toBe(true);
		expect(editor.checkFault).toMatch(/started again.*gave no answer/);
		editor.run(step);
		workers[1]!.answer();
		expect(editor.checkFault).toBeNull();
	});

	test('does not send the diagram that killed a worker again by itself', () => {
		const { editor, workers } = newEditor();
		workers[0]!.die('out of memory');
		expect(workers).toHaveLength(1);
		expect(editor.checking).toBe(false);
		editor.run(step);
		expect(workers).toHaveLength(2);
	});
});

test('a finding in focus stays so while it is found, and no longer', () => {
	const { editor, workers } = newEditor();
	workers[0]!.answer({ findings: [finding] });
	editor.focusFinding('a:E1');
	editor.run(step);
	workers[0]!.answer({ findings: [finding] });
	expect(editor.focusedFinding).toBe('a:E1');
	editor.run(step);
	workers[0]!.answer();
	expect(editor.focusedFinding).toBeNull();
});
