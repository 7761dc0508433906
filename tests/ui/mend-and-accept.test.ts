import { flushSync } from 'svelte';
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { editConductors, serializeDiagram, type Diagram } from '#core/diagram';
import type { Finding } from '#core/rules';
import Findings from '../../src/ui/findings/Findings.svelte';
import { today } from '../../src/ui/findings/waiver.ts';
import { circuit } from '../support/circuit.ts';
import { answered, byRole, newWorkbench, show } from './support.ts';

/** 40 A behind a 100 A fuse on 16 AWG: the conductors are too small for current and fuse. */
const tooSmall = (): Diagram =>
	circuit(
		{ b: ['battery', { capacityAh: 200 }], f: ['fuse-block', { fuseA: 100 }], l: ['load', { draw: 40, connection: 'studs' }] },
		[
			['f.post', 'l.pos', { gauge: '16' }],
			['l.neg', 'b.neg', { gauge: '16' }]
		],
		{ mounts: { f: 'b.pos' } }
	);

function checked(diagram: Diagram) {
	const bench = newWorkbench(diagram);
	const root = show(bench.workbench, Findings);
	/** As the worker would. */
	const check = () => {
		bench.worker.answer(checkDiagram(bench.editor.diagram));
		flushSync();
	};
	const open = (finding: Finding) => {
		bench.editor.focusFinding(finding.key);
		flushSync();
	};
	check();
	const find = (rule: string) => bench.editor.check!.findings.find((finding) => finding.rule === rule)!;
	return { ...bench, root, check, open, find };
}

describe('mending', () => {
	test('each way says what it does and to how many findings; it is one step, and undo takes it back', async () => {
		const { editor, root, check, open, find } = checked(tooSmall());
		const before = serializeDiagram(editor.diagram);
		const errors = editor.check!.findings.filter(({ severity }) => severity === 'error').length;
		open(find('undersized-conductor'));
		await answered();
		const mend = byRole(root, 'button', /^Mend\s/);
		const text = mend.closest('li')!.textContent!;
		const [, was, is] = /Errors (\d+) → (\d+)/.exec(text)!;
		expect(Number(was)).toBe(errors);
		expect(Number(is)).toBeLessThan(errors);

		mend.click();
		flushSync();
		check();
		expect(editor.history.done).toHaveLength(1);
		expect(editor.check!.findings.filter(({ severity }) => severity === 'error')).toHaveLength(Number(is));
		editor.undo();
		expect(serializeDiagram(editor.diagram)).toBe(before);
	});

	test('a mend worked out for an earlier drawing is refused, not applied', async () => {
		const { editor, root, open, find } = checked(tooSmall());
		open(find('undersized-conductor'));
		await answered();
		const mend = byRole(root, 'button', /^Mend\s/);
		const [id] = Object.keys(editor.diagram.conductors);
		editor.run(editConductors({ conductors: [id!], set: { lengthM: 9 } }));
		const edited = editor.diagram;
		mend.click();
		expect(editor.diagram).toBe(edited);
		expect(editor.message.kind).toBe('refused');
	});

	test('nothing is looked for until a finding is opened', async () => {
		const { root } = checked(tooSmall());
		await answered();
		expect([...root.querySelectorAll('button')].some(({ textContent }) => /^\s*Mend/.test(textContent!))).toBe(false);
	});
});

describe('accepting', () => {
	function fill(root: HTMLElement, reason: string, by: string): void {
		const [text, name] = [root.querySelector('textarea')!, root.querySelector('input')!];
		for (const [field, value] of [
			[text, reason],
			[name, by]
		] as const) {
			field.value = value;
			field.dispatchEvent(new Event('input', { bubbles: true }));
		}
		flushSync();
		root.querySelector('form')!.dispatchEvent(new SubmitEvent('submit', { bubbles: true, cancelable: true }));
		flushSync();
	}

	test('needs a reason and a name; then the finding moves to the accepted ones, and can be taken back', () => {
		const { editor, root, check, open, find } = checked(tooSmall());
		const finding = find('undersized-conductor');
		open(finding);
		byRole(root, 'button', 'Accept…').click();
		flushSync();
		expect(root.querySelector<HTMLInputElement>('input[type=date]')!.value).toBe(today());
		fill(root, '', 'A. Builder');
		expect(root.querySelector('[role=alert]')!.textContent).toContain('Say why');
		fill(root, 'Short test run only.', 'A. Builder');
		expect(editor.diagram.waivers[finding.key]).toMatchObject({ reason: 'Short test run only.', by: 'A. Builder', date: today() });

		check();
		editor.focusFinding(null);
		flushSync();
		const accepted = root.querySelector('ul[aria-label=Accepted]')!;
		expect(accepted.textContent).toContain(`A. Builder, ${today()}: Short test run only.`);
		expect(root.querySelector('ul[aria-label=Findings]')!.textContent).not.toContain(finding.message.slice(0, 30));

		open(find('undersized-conductor'));
		byRole(root, 'button', 'Take back').click();
		flushSync();
		check();
		expect(editor.diagram.waivers).toEqual({});
		expect(root.querySelector('ul[aria-label=Accepted]')).toBeNull();
	});

	test('an acceptance whose figures moved is open again and says so', () => {
		const { editor, root, check, open, find } = checked(tooSmall());
		const finding = find('undersized-conductor');
		open(finding);
		byRole(root, 'button', 'Accept…').click();
		flushSync();
		fill(root, 'Short test run only.', 'A. Builder');
		const id = finding.subjects.find(({ kind }) => kind === 'conductor')!.id;
		editor.run(editConductors({ conductors: [id], set: { gauge: { system: 'awg', size: '18' } } }));
		check();
		expect(find('undersized-conductor').waiverLapsed).toBe(true);
		expect(root.querySelector('ul[aria-label=Findings]')!.textContent).toContain('accepted before, but the figures moved');
	});
});

test('the date is the user’s, not Greenwich’s', () => {
	const late = new Date(2026, 2, 1, 23, 30);
	expect(today(late)).toBe('2026-03-01');
	expect(today(new Date(2026, 2, 1, 0, 30))).toBe('2026-03-01');
});
