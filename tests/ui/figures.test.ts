/**
 * Every figure on screen opens. Panels are put up for everything in an example, and their text is walked: a number with
 * a unit stands in a figure that opens, in a field that takes it, or where it is marked as given and not worked out.
 */
import { flushSync } from 'svelte';
import { beforeAll, describe, expect, test } from 'vitest';
import { checkDiagram, type CheckResult } from '#core/check';
import type { Diagram, ItemKey } from '#core/diagram';
import { explain, LENSES, type FigureId } from '#core/explain';
import { buildStudy, isOpen } from '#core/rules';
import Findings from '../../src/ui/findings/Findings.svelte';
import Inspector from '../../src/ui/inspector/Inspector.svelte';
import LensLegend from '../../src/ui/lens/LensLegend.svelte';
import OnSiteDialog from '../../src/ui/site/OnSiteDialog.svelte';
import ShortDialog from '../../src/ui/site/ShortDialog.svelte';
import StatusLine from '../../src/ui/status/StatusLine.svelte';
import UseDialog from '../../src/ui/use/UseDialog.svelte';
import { example } from '../support/examples/figures.ts';
import type { View } from '../../src/ui/view.svelte.ts';
import { answered, newWorkbench, show } from './support.ts';

const FIGURE = /(?<![\w.])−?-?\d+(?:\.\d+)? ?(?:kA|A|mV|V|mΩ|Ω|kW|W|Wh|Ah|%|°C|days)(?![\w²·])/u;

/**
 * Where a number with a unit is no figure of the program's: fields and their words, sentences of help, names and
 * ratings as given, options, and a finding's words, whose figures open below it.
 */
const NOT_A_FIGURE = [
	'[data-figure]',
	'[data-given]',
	// The first figure of a fold, which opens inside it; the drawing of a stud, whose figures open in the table below.
	'[data-repeats]',
	'label, legend, option, .form, .lead, h3, [title]:is(label)',
	'article .go, .changes, .remarks, [data-finding]',
	'h5 [data-sum]',
	'.against, .source'
].join(', ');

function unexplained(root: HTMLElement): string[] {
	const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
	const found: string[] = [];
	for (let node = walker.nextNode(); node; node = walker.nextNode()) {
		const text = node.textContent ?? '';
		if (FIGURE.test(text) && !node.parentElement!.closest(NOT_A_FIGURE)) found.push(text.trim());
	}
	return found;
}

describe.each(['otters-reach-before', 'ridge-post-before'])('%s', (name) => {
	let diagram: Diagram;
	let check: CheckResult;
	beforeAll(() => {
		diagram = example(name);
		check = checkDiagram(diagram);
	});

	const panel = () => {
		const bench = newWorkbench(diagram);
		const root = show(bench.workbench, Inspector);
		bench.worker.answer(check);
		flushSync();
		return { ...bench, root };
	};

	test('of each kind of part, of conductors and of studs', async () => {
		const { editor, root } = panel();
		const kinds = new Map(Object.entries(diagram.parts).map(([id, { kind }]) => [kind, id]));
		const keys: ItemKey[] = [
			...[...kinds.values()].map((id): ItemKey => `part:${id}`),
			...Object.keys(diagram.conductors)
				.slice(0, 6)
				.map((id): ItemKey => `conductor:${id}`),
			...Object.keys(diagram.stacks)
				.slice(0, 4)
				.map((key): ItemKey => `stud:${key}`)
		];
		let opened = 0;
		for (const key of keys) {
			editor.select([key]);
			flushSync();
			await answered();
			await answered();
			expect(unexplained(root), key).toEqual([]);
			opened += root.querySelectorAll('[data-figure]').length;
		}
		expect(opened).toBeGreaterThan(60);
	});

	test('of the cases and the day', async () => {
		for (const dialog of ['cases', 'energy'] as const) {
			const { workbench, view, worker } = newWorkbench(diagram);
			view.dialog = dialog;
			const root = show(workbench, UseDialog, { close: () => undefined });
			worker.answer(check);
			flushSync();
			await answered();
			expect(unexplained(root), dialog).toEqual([]);
			expect(root.querySelectorAll('[data-figure]').length, dialog).toBeGreaterThan(5);
		}
	});

	test('of findings: all that a number leads to is the same number', () => {
		const study = buildStudy(diagram);
		let linked = 0;
		for (const finding of check.findings) {
			const found = explain(study, { of: 'finding', finding } satisfies FigureId)!;
			for (const { figure, value } of found.inputs) {
				if (!figure) continue;
				linked++;
				expect(explain(study, figure)!.value).toBeCloseTo(value, 6);
			}
		}
		expect(linked).toBeGreaterThan(5);
	});

	test('of legends, band by band, and of the status line, which leads to what it counts', async () => {
		for (const lens of LENSES) {
			const { workbench, view, worker } = newWorkbench(diagram);
			view.lens = lens;
			const root = show(workbench, LensLegend);
			worker.answer(check);
			flushSync();
			expect(unexplained(root), lens).toEqual([]);
			expect(root.querySelectorAll('li').length, lens).toBe(root.querySelectorAll('li [data-figure=band]').length);
		}
		const { workbench, view, worker } = newWorkbench(diagram);
		const root = show(workbench, StatusLine);
		worker.answer(check);
		flushSync();
		expect(unexplained(root)).toEqual([]);
		root.querySelector<HTMLElement>('.counts')!.click();
		flushSync();
		expect(view.shows('outline')).toBe(true);
	});

	test('of a short that is tried, and of readings', async () => {
		const bus = Object.entries(diagram.parts).find(([, { kind }]) => kind === 'fused-bus')![0];
		const load = Object.entries(diagram.parts).find(([, { kind }]) => kind === 'load')![0];
		const battery = Object.entries(diagram.parts).find(([, { kind }]) => kind === 'battery')![0];
		const first = Object.entries(diagram.cases).toSorted(([, a], [, b]) => a.order - b.order)[0]![0];
		const reading = { case: first, at: { part: battery, terminal: 'pos' }, to: { part: battery, terminal: 'neg' } };
		const taken = { ...diagram, readings: { r1: { ...reading, volts: 11.9, order: 0, date: '2026-05-01', by: 'A. Nwosu' } } };
		const dialogs = [
			['short', ShortDialog, (view: View) => (view.shortAt = `part:${bus}`), 0],
			['short', ShortDialog, (view: View) => (view.shortAt = `stud:${load}.pos`), 1],
			['readings', OnSiteDialog, (view: View) => (view.dialog = 'readings'), 2]
		] as const;
		for (const [name, dialog, prepare, least] of dialogs) {
			const { editor, workbench, view, worker } = newWorkbench(taken);
			editor.select([`part:${bus}`]);
			prepare(view);
			const root = show(workbench, dialog as never, { close: () => undefined });
			worker.answer(check);
			flushSync();
			for (let i = 0; i < 4; i++) await answered();
			expect(unexplained(root), name).toEqual([]);
			expect(root.querySelectorAll('[data-figure]').length, name).toBeGreaterThanOrEqual(least);
		}
	});

	test('a focused finding opens to them', () => {
		const { editor, workbench, worker } = newWorkbench(diagram);
		const root = show(workbench, Findings);
		worker.answer(check);
		flushSync();
		editor.focusFinding(check.findings.find(isOpen)!.key);
		flushSync();
		expect(root.querySelector('article.focused [data-figure="finding"]')).not.toBeNull();
	});
});
