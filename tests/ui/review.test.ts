import { flushSync } from 'svelte';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { addRemark, contentOf, issueRevision, remarksFile, removeItems, removeRemark, setParams, type Remark } from '#core/diagram';
import { asDiagram } from '#core/revisions';
import { takeInRemarks } from '../../src/ui/review/remark-file.ts';
import RemarksPanel from '../../src/ui/review/RemarksPanel.svelte';
import { placeOf, remarksByPlace, subjectHere, subjectName } from '../../src/ui/review/subject.ts';
import { compare, lookAt, stop } from '../../src/ui/revisions/compare.ts';
import RevisionsDialog from '../../src/ui/revisions/RevisionsDialog.svelte';
import { keepRemarks, keptRemarks, visitKey, withRemarks } from '../../src/ui/share/visit-remarks.ts';
import { Visit } from '../../src/ui/share/visit.svelte.ts';
import { circuit } from '../support/circuit.ts';
import { byRole, newWorkbench, show, type } from './support.ts';

const drawn = () =>
	circuit({ B1: ['battery', {}, { label: 'B1' }], F1: ['inline-fuse', { fuseA: 100 }, { label: 'F1' }] }, [['B1.pos', 'F1.in']]);
const remark = (on: Remark['on'], text = 'Look here.') => addRemark({ id: `r${on.kind}`, on, text, by: 'R. Reader', date: '2026-03-01' });
const field = (root: ParentNode, label: string) => {
	const found = [...root.querySelectorAll('label')].find(({ textContent }) => textContent?.trim() === label);
	return root.querySelector<HTMLInputElement>(`#${CSS.escape(found!.htmlFor)}`)!;
};

describe('what a remark is about', () => {
	test('the finding looked at, the one thing selected, or the whole', () => {
		expect(subjectHere({ focusedFinding: 'rule:B1', selection: new Set(['part:B1']) })).toEqual({ kind: 'finding', id: 'rule:B1' });
		expect(subjectHere({ focusedFinding: null, selection: new Set(['stud:B1.pos']) })).toEqual({ kind: 'stud', id: 'B1.pos' });
		expect(subjectHere({ focusedFinding: null, selection: new Set(['part:B1', 'part:F1']) })).toEqual({ kind: 'diagram', id: '' });
	});

	test('is named as long as it is there, and marked where it is', () => {
		const diagram = drawn();
		expect(subjectName(diagram, null, { kind: 'part', id: 'B1' })).toBe('B1');
		expect(subjectName(diagram, null, { kind: 'part', id: 'gone' })).toBeNull();
		expect(subjectName(diagram, null, { kind: 'stud', id: 'gone.pos' })).toBeNull();
		expect(placeOf(null, { kind: 'diagram', id: '' })).toBeNull();
		const remarks = { a: { on: { kind: 'part', id: 'B1' }, closed: false }, b: { on: { kind: 'part', id: 'B1' }, closed: true } };
		expect(remarksByPlace(remarks as never, null)).toEqual(new Map([['part:B1', 1]]));
	});
});

describe('a visitor', () => {
	test('may pin and remove remarks of their own, and change nothing else', () => {
		const { editor, keeping } = newWorkbench(drawn());
		editor.run(remark({ kind: 'part', id: 'B1' }));
		keeping.beginVisit(new Visit(editor.diagram, 'a link'));
		const { diagram } = editor;
		expect(editor.run(removeItems({ parts: ['B1'] }))).toContain('read only');
		expect(editor.diagram).toBe(diagram);
		expect(editor.run(remark({ kind: 'conductor', id: 'W1' }))).toBeNull();
		expect(keeping.visit?.isOwn('rconductor')).toBe(true);
		expect(keeping.visit?.isOwn('rpart')).toBe(false);
		expect(keeping.visit?.unsaved).toBe(true);
		// Nothing of it is kept.
		expect(keeping.id).toBeNull();
	});

	test('sees no controls of the author', () => {
		const { workbench, editor, keeping } = newWorkbench(drawn());
		editor.run(remark({ kind: 'part', id: 'B1' }));
		keeping.beginVisit(new Visit(editor.diagram, 'a link'));
		const root = show(workbench, RemarksPanel);
		const buttons = [...root.querySelectorAll('button')].map(({ textContent }) => textContent?.trim());
		expect(buttons).toEqual(['Pin the remark', 'Save remarks', 'B1']);
	});
});

describe('remarks of a visitor', () => {
	const key = visitKey('#1.abc');
	const visiting = () => {
		const { editor, keeping } = newWorkbench(drawn());
		editor.run(remark({ kind: 'part', id: 'B1' }, 'The author’s.'));
		keeping.beginVisit(new Visit(editor.diagram, key));
		editor.run(remark({ kind: 'conductor', id: 'W1' }, 'Mine.'));
		return { editor, visit: keeping.visit! };
	};
	afterEach(() => localStorage.clear());

	test('are there again when the link is opened again, theirs alone', () => {
		const { editor, visit } = visiting();
		expect(visit.atRisk).toBe(false);
		const kept = keptRemarks(key)!;
		expect(kept).toEqual({ remarks: { rconductor: editor.diagram.remarks['rconductor'] }, inFile: false });
		const given = drawn();
		expect(withRemarks(given, kept.remarks)).toEqual({ ...given, remarks: kept.remarks });
		expect(keptRemarks(visitKey('#1.abd'))).toBeNull();
	});

	test('are known to be in a file once they were saved, until one changes', () => {
		const { editor, visit } = visiting();
		visit.saved(editor.diagram);
		expect([visit.unsaved, keptRemarks(key)?.inFile]).toEqual([false, true]);
		editor.run(removeRemark({ id: 'rconductor' }));
		expect([visit.unsaved, keptRemarks(key)]).toEqual([false, null]);
	});

	test('are at risk, and asked about, where the browser keeps nothing', () => {
		const setItem = () => {
			throw new DOMException('full', 'QuotaExceededError');
		};
		vi.stubGlobal('localStorage', { setItem, getItem: () => null });
		expect(visiting().visit.atRisk).toBe(true);
		vi.unstubAllGlobals();
	});

	test('that somebody else wrote there do not get past the gate', () => {
		for (const text of ['', 'x', '1 0\n{"format":"wireworthy-remarks","version":1,"__proto__":{}}', `1 0\n${'['.repeat(100_000)}`]) {
			localStorage.setItem(key, text);
			expect(keptRemarks(key)).toBeNull();
		}
	});

	test('of the forty links last remarked on are kept', () => {
		const { editor } = visiting();
		const { remarks } = editor.diagram;
		const now = vi.spyOn(Date, 'now');
		for (let n = 1; n <= 45; n += 1) {
			now.mockReturnValue(n);
			keepRemarks(visitKey(`#1.${n}`), editor.diagram, { remarks, inFile: false });
		}
		now.mockRestore();
		// The one of `visiting` is the newest by far.
		expect([5, 6, 7, 45].map((n) => keptRemarks(visitKey(`#1.${n}`)) !== null)).toEqual([false, false, true, true]);
	});
});

describe('the author', () => {
	test('takes in remarks and nothing else', async () => {
		const { workbench, editor } = newWorkbench(drawn());
		const before = contentOf(editor.diagram);
		const sent: Remark = {
			on: { kind: 'part', id: 'F1' },
			text: 'Smaller?',
			by: 'R. Reader',
			date: '2026-03-01',
			answer: 'forged',
			answeredBy: 'me',
			closed: true
		};
		const file = new File([remarksFile({ title: '', revisionIndex: '' }, { x1: sent })], 'remarks.json');
		expect(await takeInRemarks(workbench, file)).toBeNull();
		expect(editor.diagram.remarks['x1']).toMatchObject({ text: 'Smaller?', answer: '', closed: false });
		expect(contentOf(editor.diagram)).toEqual(before);
		const forged = new File(
			[JSON.stringify({ format: 'wireworthy-remarks', version: 1, about: { title: '', revisionIndex: '' }, remarks: {}, parts: {} })],
			'x'
		);
		expect(await takeInRemarks(workbench, forged)).not.toBeNull();
	});

	test('is told that what a remark was about is gone', () => {
		const { workbench, editor } = newWorkbench(drawn());
		editor.run(remark({ kind: 'part', id: 'B1' }));
		const root = show(workbench, RemarksPanel);
		editor.run(removeItems({ parts: ['B1'] }));
		flushSync();
		expect(root.textContent).toContain('What this was about is no longer there');
	});
});

describe('revisions', () => {
	test('the form proposes the next letter and shows why it refuses', () => {
		const { workbench, editor } = newWorkbench(drawn());
		const root = show(workbench, RevisionsDialog, { close: () => undefined });
		expect(field(root, 'Revision').value).toBe('A');
		type(field(root, 'Issued by'), 'A. Author');
		byRole(root, 'button', 'Issue').closest('form')!.requestSubmit();
		flushSync();
		expect(root.querySelector('[role=alert]')!.textContent).toContain('Say what changed and why');
		type(field(root, 'What changed and why'), 'First issue.');
		byRole(root, 'button', 'Issue').closest('form')!.requestSubmit();
		flushSync();
		expect(Object.values(editor.diagram.revisions).map(({ letter, why }) => [letter, why])).toEqual([['A', 'First issue.']]);
		expect(root.textContent).toContain('Revision A is issued.');
		expect(field(root, 'Revision').value).toBe('B');
	});

	test('an issued revision is looked at read only, and what is edited comes back as it was', () => {
		const { workbench, editor, view } = newWorkbench(drawn());
		editor.run(issueRevision({ id: 'a', letter: 'A', date: '2026-03-01', by: 'A. Author', why: 'First issue.' }));
		editor.run(setParams({ parts: ['F1'], params: { fuseA: 80 } }));
		const { history, diagram } = editor;
		lookAt(workbench, 'a');
		expect(editor.diagram).toEqual(asDiagram(history.diagram.revisions['a']!.content));
		expect(editor.run(setParams({ parts: ['F1'], params: { fuseA: 60 } }))).toContain('revision A');
		editor.undo();
		expect(editor.history).toBe(history);
		stop(workbench);
		expect(editor.diagram).toBe(diagram);
		expect(view.looking).toBeNull();
		expect(editor.run(setParams({ parts: ['F1'], params: { fuseA: 60 } }))).toBeNull();
	});

	test('comparing shows the later state and opens the list', () => {
		const { workbench, editor, view } = newWorkbench(drawn());
		editor.run(issueRevision({ id: 'a', letter: 'A', date: '2026-03-01', by: 'A. Author', why: 'First issue.' }));
		compare(workbench, { before: 'a', after: null });
		expect(editor.looking).toBe(false);
		expect(view.lower).toBe('changes');
		stop(workbench);
		expect(view.lower).toBe('findings');
	});
});
