import { flushSync } from 'svelte';
import { describe, expect, test } from 'vitest';
import { partDefinitions } from '#core/parts';
import Inspector from '../../src/ui/inspector/Inspector.svelte';
import { byRole, newWorkbench, show, type } from './support.ts';

const field = (root: HTMLElement, name: string): HTMLInputElement => {
	const label = [...root.querySelectorAll('label')].find(({ textContent }) => textContent === name);
	if (!label) throw new Error(`There is no field called ${name}.`);
	return root.querySelector(`#${CSS.escape(label.htmlFor)}`)!;
};

describe('a conductor', () => {
	function opened() {
		const bench = newWorkbench();
		bench.editor.select(['conductor:W1']);
		return { ...bench, root: show(bench.workbench, Inspector) };
	}

	test('takes a length, with a comma or a point, and one undo step gives it back', () => {
		const { root, editor } = opened();
		type(field(root, 'Length, one way'), '1,5');
		expect(editor.diagram.conductors['W1']!.lengthM).toBe(1.5);
		editor.undo();
		expect(editor.diagram.conductors['W1']!.lengthM).toBeNull();
	});

	test.each([
		['8 ft', 2.4384],
		['18 in', 0.4572],
		['250 cm', 2.5]
	])('takes a length of %s', (text, metres) => {
		const { root, editor } = opened();
		type(field(root, 'Length, one way'), text);
		expect(editor.diagram.conductors['W1']!.lengthM).toBe(metres);
		expect(field(root, 'Length, one way').value).toBe(String(metres));
	});

	test('a refused length leaves the former one in the field', () => {
		const { root, editor } = opened();
		type(field(root, 'Length, one way'), '2');
		type(field(root, 'Length, one way'), '3 yd');
		expect(editor.diagram.conductors['W1']!.lengthM).toBe(2);
		expect(field(root, 'Length, one way').value).toBe('2');
		expect(root.querySelector('[role=alert]')!.textContent).toMatch(/“3 yd” was not taken.*Still 2 m\./);
	});

	test('says what is wrong with a length and stores nothing', () => {
		const { root, editor } = opened();
		const before = editor.diagram;
		for (const nonsense of ['two', '-1', '0', '1e9']) {
			type(field(root, 'Length, one way'), nonsense);
			expect(root.querySelector('[role=alert]')!.textContent).not.toBe('');
			expect(field(root, 'Length, one way').getAttribute('aria-invalid')).toBe('true');
		}
		expect(editor.diagram).toBe(before);
	});

	test('an emptied length is one not measured', () => {
		const { root, editor } = opened();
		type(field(root, 'Length, one way'), '2');
		type(field(root, 'Length, one way'), '');
		expect(editor.diagram.conductors['W1']!.lengthM).toBeNull();
	});

	test('changing to mm² keeps at least the copper: 10 AWG (5.26 mm²) becomes 6 mm²', () => {
		const { root, editor } = opened();
		byRole(root, 'button', 'mm²').click();
		flushSync();
		expect(editor.diagram.conductors['W1']!.gauge).toEqual({ system: 'iec', size: '6' });
	});

	test('shows its figures once they are there', () => {
		const { root, worker } = opened();
		expect(root.textContent).toContain('Figures appear when the check has run');
		const figures = {
			ampacityA: 60,
			ampacityTable: 'Table 5',
			workingC: 138,
			continuousA: 72,
			continuousCase: 'peak',
			surgeA: 72,
			surgeCase: 'peak',
			lengthM: 2,
			lengthAssumed: true,
			dropV: 0.36,
			letThroughA: Infinity,
			protectedBy: [],
			protectors: [],
			ends: { from: { letThroughA: Infinity, by: [] }, to: { letThroughA: Infinity, by: [] } },
			pole: 'positive' as const,
			ambientC: 30,
			hotDropV: 0.45,
			greatestDeviceA: 90,
			faultA: 1200,
			isCranking: false
		};
		worker.answer({ conductors: { W1: figures } });
		flushSync();
		const text = root.querySelector('dl')!.textContent!.replace(/\s+/g, ' ');
		expect(text).toContain('Amperage 60 A Table 5');
		expect(text).toContain('72 A in “Peak, no charging”');
		expect(text).toContain('about 138 °C');
		expect(text).toContain('0.36 V 3 %');
		expect(text).toContain('0.45 V when warm (about 138 °C)');
		expect(text).toContain('unlimited');
		expect(text).toContain('Protected by nothing');
	});
});

describe('a part', () => {
	test.each(partDefinitions.map(({ kind }) => kind))('%s has a field for every parameter', (kind) => {
		const { workbench, editor } = newWorkbench();
		editor.placePart(kind, { x: 0, y: 500 });
		const root = show(workbench, Inspector);
		const { params } = partDefinitions.find((definition) => definition.kind === kind)!;
		const titles = Object.values(params.shape)
			.map((schema) => (schema as { meta(): { title: string; section?: string } }).meta())
			.filter(({ section }) => section !== 'maker')
			.map(({ title }) => title);
		const shown = [...root.querySelectorAll('label, legend')].map(({ textContent }) => textContent);
		expect(shown).toEqual(expect.arrayContaining(titles));
	});

	test('a changed rating is one step, and a rating out of range is refused', () => {
		const { workbench, editor } = newWorkbench();
		editor.select(['part:E1']);
		const root = show(workbench, Inspector);
		type(field(root, 'Rated draw'), '12');
		expect(editor.diagram.parts['E1']!.params['draw']).toBe(12);
		expect(editor.undoLabel).toBe('change 1 part');
		type(field(root, 'Rated draw'), '0');
		expect(editor.diagram.parts['E1']!.params['draw']).toBe(12);
		expect(root.querySelector('[role=alert]')!.textContent).toBe('“0” was not taken. From 0.001 to 50000 A. Still 12 A.');
		expect(editor.undoLabel).toBe('change 1 part');
	});

	// Ohm's law: 5 A at 12 V are 60 W, and 2.4 Ω.
	test('a draw keeps its amount when its unit changes, in one step', () => {
		const { workbench, editor } = newWorkbench();
		editor.select(['part:E1']);
		const root = show(workbench, Inspector);
		type(field(root, 'Rated draw'), '5');
		const shown = () => [field(root, 'Rated draw').value, field(root, 'Rated draw').parentElement!.querySelector('.unit')!.textContent];
		choose(root, 'Draws', 'power');
		expect(shown()).toEqual(['60', 'W']);
		editor.undo();
		flushSync();
		expect(shown()).toEqual(['5', 'A']);
		choose(root, 'Draws', 'power');
		choose(root, 'Draws', 'resistance');
		expect(shown()).toEqual(['2.4', 'Ω']);
		choose(root, 'Draws', 'current');
		expect(shown()).toEqual(['5', 'A']);
	});

	test('an empty designation is warned of, and a new one announced', () => {
		const { workbench, editor } = newWorkbench();
		editor.select(['part:E1']);
		const root = show(workbench, Inspector);
		type(field(root, 'Designation'), '');
		expect(root.querySelector('[role=alert]')!.textContent).toMatch(/^Without a designation/);
		type(field(root, 'Designation'), 'E7');
		expect(root.querySelector('[role=alert]')).toBeNull();
		expect(editor.message.text).toBe('The designation is now E7.');
	});

	test('typing a designation is one undo step', () => {
		const { workbench, editor } = newWorkbench();
		editor.select(['part:E1']);
		const root = show(workbench, Inspector);
		for (const text of ['P', 'PU', 'PUMP']) type(field(root, 'Designation'), text);
		editor.undo();
		expect(editor.diagram.parts['E1']!.label).toBe('E1');
	});
});

test('a stud lists what sits on it and can be reordered', () => {
	const { workbench, editor } = newWorkbench();
	editor.connect({ part: 'B1', terminal: 'pos' }, { part: 'E1', terminal: 'neg' });
	editor.select(['stud:B1.pos']);
	const root = show(workbench, Inspector);
	const order = () => [...root.querySelectorAll('ol .name')].map(({ textContent }) => textContent!.replace(/.* of /, ''));
	const first = order();
	expect([...first].sort()).toEqual(['W1', 'W2']);

	const up = [...root.querySelectorAll('button')].find(
		(button) => /towards the nut/.test(button.getAttribute('aria-label') ?? '') && button.getAttribute('aria-disabled') !== 'true'
	)!;
	up.click();
	flushSync();
	expect(order()).toEqual(first.toReversed());
	editor.undo();
	flushSync();
	expect(order()).toEqual(first);
});

const choose = (root: HTMLElement, name: string, value: string) => {
	const select = field(root, name) as unknown as HTMLSelectElement;
	select.value = value;
	select.dispatchEvent(new Event('change', { bubbles: true }));
	flushSync();
};

describe('what the canvas does by dragging can be done by name', () => {
	test('a fuse block is mounted on a stud and taken off', () => {
		const { workbench, editor } = newWorkbench();
		editor.placePart('fuse-block', { x: 0, y: 500 });
		const [block] = [...editor.selection].map((key) => key.slice('part:'.length));
		const root = show(workbench, Inspector);
		choose(root, 'Sits on', 'B1.pos');
		expect(editor.diagram.mounts[block!]).toEqual({ part: 'B1', terminal: 'pos' });
		choose(root, 'Sits on', '');
		expect(editor.diagram.mounts).toEqual({});
	});

	test('a conductor is landed on another stud, and a refusal leaves the field as it was', () => {
		const { workbench, editor } = newWorkbench();
		editor.select(['conductor:W1']);
		const root = show(workbench, Inspector);
		const lands = [...root.querySelectorAll('details')].find(({ textContent }) => textContent!.includes('Land it on other studs'))!;
		lands.open = true;
		lands.dispatchEvent(new Event('toggle'));
		flushSync();
		choose(root, 'To', 'E1.neg');
		expect(editor.diagram.conductors['W1']!.to).toEqual({ part: 'E1', terminal: 'neg' });
		choose(root, 'To', 'B1.pos');
		expect(editor.diagram.conductors['W1']!.to).toEqual({ part: 'E1', terminal: 'neg' });
		expect(editor.message.kind).toBe('refused');
		expect(field(root, 'To').value).toBe('E1.neg');
	});

	test('a washer is put on a stud and taken away', () => {
		const { workbench, editor } = newWorkbench();
		editor.select(['stud:B1.pos']);
		const root = show(workbench, Inspector);
		byRole(root, 'button', 'Washer').click();
		flushSync();
		expect(editor.diagram.stacks['B1.pos']!.map(({ kind }) => kind)).toEqual(['lug', 'washer']);
		byRole(root, 'button', 'Remove washer').click();
		flushSync();
		expect(editor.diagram.stacks['B1.pos']!.map(({ kind }) => kind)).toEqual(['lug']);
	});
});
