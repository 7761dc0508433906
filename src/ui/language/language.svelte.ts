/** The language of the window: chosen and remembered in this browser, or the first of the device's that is spoken here. */
import { remember, remembered } from '../remember.ts';

/** As each calls itself. */
export const LANGUAGES = { en: 'English', de: 'Deutsch' } as const;
export type LanguageId = keyof typeof LANGUAGES;

/** One for each feature's sentences; every other language than English has a file for each. */
export type CatalogueId =
	| 'assembly'
	| 'drawing'
	| 'drawn-as'
	| 'drawing-keys'
	| 'find'
	| 'full-bus'
	| 'guide'
	| 'handoff'
	| 'insight'
	| 'keeping'
	| 'language'
	| 'offline'
	| 'on-site'
	| 'outline'
	| 'own-parts'
	| 'positions'
	| 'reading'
	| 'review'
	| 'revision'
	| 'share'
	| 'short'
	| 'site'
	| 'sizing'
	| 'stud'
	| 'time'
	| 'use'
	| 'views'
	| 'voice'
	| 'window';

export type Catalogues = Readonly<Record<CatalogueId, object>>;

/** How the texts of each other language are fetched. Given from outside, since they may use what is written in English. */
export type OtherLanguages = Readonly<Record<Exclude<LanguageId, 'en'>, () => Promise<Translations>>>;

export interface Translations {
	readonly CATALOGUES: Catalogues;
	/** What the core says always in the same words, by its English. */
	readonly PHRASES: Readonly<Record<string, string>>;
	/** By the id of a rule. */
	readonly RULE_WORDS: Readonly<Record<string, { readonly title: string; readonly why: string }>>;
}

const KEY = 'wireworthy-language';
const isLanguage = (value: unknown): value is LanguageId => typeof value === 'string' && Object.hasOwn(LANGUAGES, value);

class Language {
	/** Null follows the device. */
	#chosen = $state<LanguageId | null>(null);
	#shown = $state<LanguageId>('en');
	#texts = $state.raw<Translations | null>(null);
	#others: OtherLanguages | null = null;

	/** What was chosen; null when it is the device's. */
	get chosen(): LanguageId | null {
		return this.#chosen;
	}

	/** What is shown: differs from what was chosen while that is on its way. */
	get shown(): LanguageId {
		return this.#shown;
	}

	/** By which dates and numbers of this language are written: the device's own where it is of this language. */
	get locale(): string {
		return navigator.language.startsWith(this.#shown) ? navigator.language : this.#shown;
	}

	/** The texts of a feature in a language other than English. */
	catalogue(id: CatalogueId): object | undefined {
		return this.#texts?.CATALOGUES[id];
	}

	/** The core's words in a language other than English. */
	get core(): Pick<Translations, 'PHRASES' | 'RULE_WORDS'> | null {
		return this.#texts;
	}

	/** As on the last visit, or as the device. Never fails: without its texts the window stays English. */
	async begin(others: OtherLanguages): Promise<void> {
		this.#others = others;
		const kept = remembered(KEY);
		this.#chosen = isLanguage(kept) ? kept : null;
		await this.#show(this.#chosen ?? ofDevice()).catch(() => {});
	}

	/** Rejects, and stays as it was, when the texts cannot be loaded. */
	async choose(chosen: LanguageId | null): Promise<void> {
		await this.#show(chosen ?? ofDevice());
		this.#chosen = chosen;
		remember(KEY, chosen);
	}

	async #show(id: LanguageId): Promise<void> {
		const translations = id === 'en' ? null : await this.#others![id]();
		this.#texts = translations;
		this.#shown = id;
		document.documentElement.lang = id;
	}
}

export const ofDevice = (): LanguageId => navigator.languages.map((tag) => tag.slice(0, 2)).find(isLanguage) ?? 'en';

export const language = new Language();
