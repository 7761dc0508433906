/** Light, dark, or as the device says; remembered in this browser. */
import { MediaQuery } from 'svelte/reactivity';
import { remember, remembered } from './remember.ts';

export type ThemeChoice = 'system' | 'light' | 'dark';
const KEY = 'wireworthy-theme';
const ORDER: readonly ThemeChoice[] = ['system', 'light', 'dark'];

export class Theme {
	#choice = $state<ThemeChoice>('system');
	readonly #prefersDark = new MediaQuery('(prefers-color-scheme: dark)');

	constructor() {
		const stored = remembered(KEY);
		const choice = ORDER.find((one) => one === stored);
		if (choice) this.#set(choice);
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
		remember(KEY, choice);
	}

	#set(choice: ThemeChoice): void {
		this.#choice = choice;
		if (choice === 'system') delete document.documentElement.dataset.theme;
		else document.documentElement.dataset.theme = choice;
	}
}
