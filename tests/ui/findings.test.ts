import { flushSync } from 'svelte';
import { expect, test } from 'vitest';
import { emptyDiagram } from '#core/diagram';
import type { Finding, Severity } from '#core/rules';
import Findings from '../../src/ui/findings/Findings.svelte';
import { byRole, newWorkbench, show } from './support.ts';

const finding = (id: string, severity: Severity, more: Partial<Finding> = {}): Finding => ({
	key: `rule:${id}`,
	rule: 'rule',
	title: `Rule about ${id}`,
	severity,
	subjects: [{ kind: 'part', id }],
	message: `${id} is wrong.`,
	remedy: `Mend ${id}.`,
	why: `It matters for ${id}.`,
	source: '33 CFR 183.455',
	unverified: false,
	assumptions: [],
	caseId: null,
	numbers: {},
	waiver: null,
	waiverLapsed: false,
	lapse: null,
	...more
});

test('each finding says what, what to do and by which source, and marks what is unverified', () => {
	const { workbench, worker } = newWorkbench();
	const root = show(workbench, Findings);
	expect(root.textContent).toContain('The first check is running');

	worker.answer({ findings: [finding('B1', 'error'), finding('E1', 'note', { unverified: true })] });
	flushSync();
	const items = [...root.querySelectorAll('article')].map((item) => item.textContent!.replace(/\s+/g, ' ').trim());
	expect(items[0]).toBe('B1 is wrong. To do Mend B1. 33 CFR 183.455');
	expect(items[1]).toMatch(/33 CFR 183\.455 not yet verified$/);
	expect([...root.querySelectorAll('article svg')].map((icon) => icon.getAttribute('aria-label'))).toEqual(['Error', 'Note']);
});

test('choosing a finding selects what it is about and opens its reasons', () => {
	const { workbench, worker, editor } = newWorkbench();
	const root = show(workbench, Findings);
	worker.answer({ findings: [finding('E1', 'error', { assumptions: ['Length of W1 is 1 m.'] })] });
	flushSync();
	byRole(root, 'button', /E1 is wrong/).click();
	flushSync();
	expect([...editor.selection]).toEqual(['part:E1']);
	expect(editor.focusedFinding).toBe('rule:E1');
	expect(root.textContent).toContain('It matters for E1.');
	expect(root.textContent).toContain('Length of W1 is 1 m.');
});

test('the verdict stands by itself, and a source is put in words', () => {
	const { workbench, worker } = newWorkbench();
	const root = show(workbench, Findings);
	const message = 'C4+ carries 1.5 A too much. 46.5 A flow in “Peak”; 45 A are allowed (33 CFR 183.425). W2 likewise.';
	const source = 'common practice, no source; ISO 13297 Annex A (small craft), from memory';
	worker.answer({ findings: [finding('B1', 'error', { message, source, unverified: true })] });
	flushSync();
	expect(root.querySelector('.message')!.textContent).toBe('C4+ carries 1.5 A too much.');
	expect(root.querySelector('.figures')!.textContent).toBe('46.5 A flow in “Peak”; 45 A are allowed (33 CFR 183.425). W2 likewise.');
	expect(root.querySelector('.source')!.textContent).toContain('Rule of thumb, no published source; ISO 13297 Annex A (small craft)');
	expect(root.textContent).not.toContain('from memory');
	expect(root.querySelector('.unverified')!.getAttribute('title')).toMatch(/^ISO 13297 Annex A \(small craft\): not seen/);
});

test('one severity can be shown alone', () => {
	const { workbench, worker } = newWorkbench();
	const root = show(workbench, Findings);
	worker.answer({ findings: [finding('B1', 'error'), finding('E1', 'warning')] });
	flushSync();
	const shown = () => [...root.querySelectorAll('article .message')].map(({ textContent }) => textContent);
	byRole(root, 'button', '1 error').click();
	flushSync();
	expect(shown()).toEqual(['B1 is wrong.']);
	byRole(root, 'button', '1 warning').click();
	flushSync();
	expect(shown()).toEqual(['E1 is wrong.']);
	byRole(root, 'button', '1 warning').click();
	flushSync();
	expect(shown()).toHaveLength(2);
});

test('an empty sheet teaches, and a clean one does not promise safety', () => {
	const { workbench } = newWorkbench(emptyDiagram());
	expect(show(workbench, Findings).textContent).toContain('Put a battery on the sheet');

	const clean = newWorkbench();
	clean.worker.answer({ notChecked: ['Crimps'], profileName: 'Common practice' });
	const text = show(clean.workbench, Findings).textContent!;
	expect(text).toContain('Nothing found against Common practice.');
	expect(text).toContain('not the same as safe');
	expect(text).toContain('Crimps');
});
