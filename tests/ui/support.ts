import { flushSync, mount, unmount, type Component } from 'svelte';
import { afterEach } from 'vitest';
import type { Diagram } from '#core/diagram';
import { Asker } from '#editor';
import type { Workbench } from '../../src/ui/context.ts';
import type { FileActions } from '../../src/ui/file-actions.ts';
import { SELECTION_FORM, SETTINGS_FORM } from '../../src/ui/late-parts.ts';
import { Keeping } from '../../src/ui/keeping/keeping.svelte.ts';
import { View } from '../../src/ui/view.svelte.ts';
import { AnsweringWorker, newEditor } from '../editor/support.ts';
import Harness from './Harness.svelte';

// What the window fetches later is there from the start, so that tests need not wait for it.
await Promise.all([SELECTION_FORM.load(), SETTINGS_FORM.load()]);

const nothing = async () => undefined;
const files: FileActions = {
	newDiagram: nothing,
	open: nothing,
	openFile: nothing,
	save: nothing,
	openExample: nothing,
	openLink: nothing,
	openKept: async () => true,
	lookAtDisk: nothing
};

export function newWorkbench(diagram?: Diagram) {
	const { editor, workers } = newEditor(diagram);
	const view = new View();
	const keeping = new Keeping(editor, view);
	const workbench: Workbench = { editor, view, asker: new Asker(() => new AnsweringWorker()), files, keeping };
	return { ...workbench, workbench, worker: workers[0]! };
}

const mounted: Record<string, unknown>[] = [];
afterEach(async () => {
	for (const app of mounted.splice(0)) await unmount(app);
	document.body.replaceChildren();
});

export function show(workbench: Workbench, component: Component<never>, props: Record<string, unknown> = {}): HTMLElement {
	const target = document.body.appendChild(document.createElement('div'));
	mounted.push(mount(Harness, { target, props: { workbench, component: component as Component<Record<string, unknown>>, props } }));
	flushSync();
	return target;
}

/** Lets the worker answer. */
export async function answered(): Promise<void> {
	await new Promise((resolve) => setTimeout(resolve));
	flushSync();
}

export const byRole = (root: ParentNode, role: string, name: string | RegExp): HTMLElement => {
	const found = [...root.querySelectorAll<HTMLElement>(role === 'button' ? 'button' : `[role=${role}]`)].find((element) => {
		const text = element.getAttribute('aria-label') ?? element.textContent ?? '';
		return typeof name === 'string' ? text.trim() === name : name.test(text.trim());
	});
	if (!found) throw new Error(`There is no ${role} called ${name}.`);
	return found;
};

export function press(element: Element, key: string, init: KeyboardEventInit = {}): KeyboardEvent {
	const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...init });
	element.dispatchEvent(event);
	flushSync();
	return event;
}

export function type(input: HTMLInputElement, text: string): void {
	input.value = text;
	input.dispatchEvent(new Event('input', { bubbles: true }));
	input.dispatchEvent(new Event('change', { bubbles: true }));
	flushSync();
}
