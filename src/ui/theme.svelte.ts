/** Light, dark, or as the device says; remembered in this browser. */
import { MediaQuery } from 'svelte/reactivity';

export type ThemeChoice = 'system' | 'light' | 'dark';
const KEY = 'wireworthy-theme';
const ORDER: readonly ThemeChoice[] = ['system', 'light', 'dark'];

export class Theme {
	#choice = $state<ThemeChoice>('system');
	readonly #prefersDark = new MediaQuery('(prefers-color-scheme: dark)');

	constructor() {
		const stored = remembered();
		if (stored) this.#set(stored);
	}

	get choice(): ThemeChoice {
		return this.#choice;
	}

	get shown(): 'light' | 'dark' {
		if (this.#choice !== 'system') return this.#choice;
		return this.#prefersDark.current ? 'dark' : 'light';
	}

	next(): void {
		const choice = ORDER[(ORDER.indexOf(this.#choice) + 1) % ORDER.length]!;
		this.#set(choice);
		try {
			localStorage.setItem(KEY, choice);
		} catch {
			// Storage may be forbidden; the choice then lasts as long as the page.
		}
	}

	#set(choice: ThemeChoice): void {
		this.#choice = choice;
		if (choice === 'system') delete document.documentElement.dataset.theme;
		else document.documentElement.dataset.theme = choice;
	}
}

function remembered(): ThemeChoice | null {
	try {
		const value = localStorage.getItem(KEY);
		return ORDER.find((choice) => choice === value) ?? null;
	} catch {
		return null;
	}
}
