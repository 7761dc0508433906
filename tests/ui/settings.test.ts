import { flushSync } from 'svelte';
import { describe, expect, test } from 'vitest';
import { PROFILES } from '#core/profiles';
import Inspector from '../../src/ui/inspector/Inspector.svelte';
import { levelGroups, percentOf } from '../../src/ui/inspector/level-groups.ts';
import { findParts } from '../../src/ui/shelf/find-parts.ts';
import { scopeText } from '../../src/ui/source-words.ts';
import { byRole, newWorkbench, show, type } from './support.ts';

const field = <Element extends HTMLElement = HTMLInputElement>(root: HTMLElement, name: string): Element => {
	const label = [...root.querySelectorAll('label')].find(({ textContent }) => textContent!.trim() === name);
	if (!label) throw new Error(`There is no field called ${name}.`);
	return root.querySelector<Element>(`#${CSS.escape(label.htmlFor)}`)!;
};

function choose(root: HTMLElement, name: string, value: string) {
	const select = field<HTMLSelectElement>(root, name);
	select.value = value;
	select.dispatchEvent(new Event('change', { bubbles: true }));
	flushSync();
}

describe('the colour scheme', () => {
	test('is named and shown by what is drawn, also where the negative decides', () => {
		const { workbench, editor } = newWorkbench();
		const root = show(workbench, Inspector);
		const samples = () => [...root.querySelectorAll('.swatch')].map((swatch) => swatch.parentElement!.textContent!.trim());
		const name = () => field<HTMLSelectElement>(root, 'Colour scheme').selectedOptions[0]!.textContent;
		choose(root, 'Colour scheme', 'iec-60446');
		choose(root, 'Negative pole', 'bonded');
		expect(name()).toBe('Brown + / blue − (IEC 60446)');
		expect(samples()).toEqual(['Brown positive', 'Blue negative', 'Green and yellow bonding']);
		choose(root, 'Negative pole', 'insulated');
		expect(name()).toBe('Brown + / grey − (IEC 60446)');
		expect(samples()[1]).toBe('Grey negative');
		choose(root, 'Colour scheme', 'abyc');
		expect(samples()).toEqual(['Red positive', 'Black negative', 'Green bonding']);
		expect(editor.diagram.colourScheme).toBe('abyc');
	});
});

describe('the custom profile', () => {
	test('has its numbers, each with its source; one is changed and given back', () => {
		const { workbench, editor } = newWorkbench();
		const root = show(workbench, Inspector);
		choose(root, 'Check against', 'custom');
		choose(root, 'Made from', 'us-small-craft');
		const drop = () => field(root, 'Voltage drop of critical circuits');
		expect(drop().value).toBe('3');
		type(drop(), '2');
		expect(editor.diagram.customProfile).toEqual({ base: 'us-small-craft', numbers: { criticalDropPercent: 2 } });
		expect(root.textContent).toContain('Given in this diagram, in place of 3 %');
		byRole(root, 'button', 'Take the published number: Voltage drop of critical circuits').click();
		flushSync();
		expect(editor.diagram.customProfile!.numbers).toEqual({});
		expect(drop().value).toBe('3');
	});

	test('no profile says "from memory" on the screen', () => {
		for (const { scope } of Object.values(PROFILES)) expect(scopeText(scope)).not.toMatch(/memory/);
	});
});

describe('operating cases', () => {
	test('list batteries, switches and fuses as in or out, loads and sources in percent', () => {
		const { workbench, editor } = newWorkbench();
		editor.placePart('fuse-block', { x: 0, y: 400 });
		const [fuse] = [...editor.selection].map((key) => key.slice('part:'.length));
		editor.placePart('battery-disconnect', { x: 0, y: 600 });
		editor.select([]);
		const groups = levelGroups(editor.diagram).map(({ role }) => role);
		expect(groups).toEqual(['batteries', 'loads', 'switches', 'devices']);

		const root = show(workbench, Inspector);
		const [id] = Object.keys(editor.diagram.cases);
		const section = root.querySelector<HTMLElement>('fieldset')!.closest('details')!;
		const box = [...section.querySelectorAll('label')]
			.find(({ textContent }) => textContent!.trim().startsWith(`${fuse} `))!
			.querySelector('input')!;
		expect(box.checked).toBe(true);
		box.click();
		flushSync();
		expect(editor.diagram.cases[id!]!.levels).toEqual({ [fuse!]: 0 });
	});

	test('a level is shown rounded and kept exact until another is typed', () => {
		expect(percentOf(14 / 15)).toBe(93.3);
	});
});

describe('the search for parts', () => {
	test('puts names before help texts', () => {
		const names = findParts('fuse').map(({ name }) => name);
		const firstWithout = names.findIndex((name) => !/fuse/i.test(name));
		expect(names[0]).toMatch(/^Fuse/);
		expect(firstWithout === -1 || names.slice(firstWithout).every((name) => !/fuse/i.test(name))).toBe(true);
		expect(findParts('load')[0]!.name).toBe('Load');
		expect(findParts('no such part')).toEqual([]);
	});
});
