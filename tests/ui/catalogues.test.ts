/** Every sentence of the window is in a catalogue, and every catalogue speaks each language. */
import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'svelte/compiler';
import { afterEach, beforeAll, describe, expect, test } from 'vitest';
import type * as z from 'zod';
import { fieldMeta, partDefinitions } from '#core/parts';
import { RULES } from '#core/rules';
import { CATALOGUES, PHRASES, RULE_WORDS } from '../../src/ui/de/index.ts';
import { language } from '../../src/ui/language/language.svelte.ts';

const files = (readdirSync('src/ui', { recursive: true }) as string[])
	.filter((path) => /\.(ts|svelte)$/.test(path))
	.map((path) => `src/ui/${path}`)
	.filter((path) => !path.includes('/de/') && !path.includes('/language/catalogue'));
const sources = new Map(files.map((path) => [path, readFileSync(path, 'utf8')]));

/** Catalogues by their id, as the modules that hold them give them: read from in whichever language is shown. */
async function catalogues(): Promise<ReadonlyMap<string, object>> {
	const found = new Map<string, object>();
	for (const [path, source] of sources) {
		for (const [, name, id] of source.matchAll(/export const (\w+) = catalogue\(\s*'([\w-]+)'/g)) {
			const module = (await import(/* @vite-ignore */ `../../${path}`)) as Record<string, object>;
			found.set(id!, module[name!]!);
		}
	}
	return found;
}

/** Every text, list and function of a catalogue by its path: "file.saved". */
function leaves(group: object, path = ''): Map<string, unknown> {
	return new Map(
		Object.keys(group).flatMap((key): [string, unknown][] => {
			const value = (group as Record<string, unknown>)[key];
			const at = path === '' ? key : `${path}.${key}`;
			return typeof value === 'object' && value !== null && !Array.isArray(value) ? [...leaves(value, at)] : [[at, value]];
		})
	);
}

/** What a text says with these put in; null where it takes something else than words and numbers. */
function said(text: unknown, data: readonly string[]): string | null {
	if (typeof text !== 'function') return JSON.stringify(text);
	try {
		const sentence: unknown = (text as (...data: readonly string[]) => unknown)(...data);
		return typeof sentence === 'string' ? sentence : null;
	} catch {
		return null;
	}
}

const DATA = ['⟦one⟧', '⟦two⟧', '⟦three⟧', '⟦four⟧'];
/** The same in every language: names, units and signs. */
const UNTRANSLATED = /^"(?:Wireworthy|AWG|mm²|Name|Orange|Link|…|–|Revision)"$/;

beforeAll(() => language.begin({ de: () => import('../../src/ui/de/index.ts') }));
afterEach(() => language.choose('en'));

describe('German', async () => {
	const all = await catalogues();

	test('has every catalogue and no other', () => {
		expect(all.size).toBeGreaterThan(15);
		expect([...all.keys()].sort()).toEqual(Object.keys(CATALOGUES).sort());
	});

	test.each([...all.keys()])('%s: each text, with the same data put in', async (id) => {
		const english = leaves(all.get(id)!);
		await language.choose('de');
		const german = leaves(all.get(id)!);
		expect([...leaves(CATALOGUES[id as keyof typeof CATALOGUES]).keys()].sort()).toEqual([...english.keys()].sort());
		const same: string[] = [];
		for (const [path, text] of english) {
			const [en, de] = [said(text, DATA), said(german.get(path), DATA)];
			if (Array.isArray(text)) expect((german.get(path) as unknown[]).length, path).toBe(text.length);
			if (en === null) continue;
			for (const datum of DATA) expect(de?.includes(datum), `${path} with ${datum}: ${de}`).toBe(en.includes(datum));
			if (en === de && /[a-z]{3} [a-z]{2}/i.test(en) && !UNTRANSLATED.test(en)) same.push(path);
		}
		// Cautions are the packet's, which is in English for now.
		expect(same.filter((path) => path !== 'cautions.items')).toEqual([]);
	});

	test('names every part and what can be entered about it', () => {
		const english = partDefinitions.flatMap(({ name, params }) => [
			name,
			...Object.values(params.shape).flatMap((schema) => {
				const { title, hint, whenEmpty, options = [] } = fieldMeta(schema as z.ZodType);
				return [title, hint ?? '', whenEmpty ?? '', ...options.map(({ label }) => label)];
			})
		]);
		// Sizes, threads and bare units are the same everywhere.
		const words = english.filter((text) => /\p{Ll}{3}/u.test(text));
		expect(words.length).toBeGreaterThan(200);
		expect([...new Set(words.filter((text) => !Object.hasOwn(PHRASES, text)))]).toEqual([]);
	});

	test('says of every rule what it requires and why', () => {
		expect(RULES.map(({ meta }) => meta.id).filter((id) => !Object.hasOwn(RULE_WORDS, id))).toEqual([]);
		expect(Object.keys(RULE_WORDS).filter((id) => !RULES.some(({ meta }) => meta.id === id))).toEqual([]);
	});

	test('is what is read as long as it is shown, also by who held a group of texts before', async () => {
		const window = all.get('window') as { readonly file: { readonly save: string } };
		const { file } = window;
		expect(file.save).toBe('Save');
		await language.choose('de');
		expect([file.save, document.documentElement.lang]).toEqual(['Speichern', 'de']);
		await language.choose('en');
		expect([file.save, document.documentElement.lang]).toEqual(['Save', 'en']);
	});
});

interface Node {
	readonly type?: string;
	readonly name?: string;
	readonly data?: string;
	readonly value?: unknown;
}

/** Two words in a row: a sentence, a label, a hint. */
const WORDS = /\p{L}{2,} \p{L}{2,}/u;
/** Attributes that nobody reads. */
const UNREAD = ['class', 'd', 'viewBox', 'transform', 'accept', 'rel', 'style'];

/** Words in an expression that are no sentence: the name of a group of steps. */
const NAMES = ['system colourScheme'];

/** Literal texts in a component's markup, in its attributes and in its expressions. */
function* literals(node: unknown): Iterable<string> {
	if (Array.isArray(node)) for (const one of node) yield* literals(one);
	else if (typeof node === 'object' && node !== null) {
		const { type, name, data, value } = node as Node;
		if (type === 'Comment' || type === 'ClassDirective' || type === 'StyleDirective' || (type === 'Attribute' && UNREAD.includes(name!)))
			return;
		if (type === 'Text') yield data!;
		else if (type === 'Literal' && typeof value === 'string') yield value;
		else if (type === 'TemplateElement') yield (value as { readonly raw: string }).raw;
		else for (const inner of Object.values(node)) yield* literals(inner);
	}
}

test('no sentence is written in markup', () => {
	const written = [...sources].flatMap(([path, source]) =>
		path.endsWith('.svelte')
			? [...literals(parse(source, { modern: true }).fragment)]
					.filter((text) => WORDS.test(text) && !NAMES.includes(text))
					.map((text) => `${path}: ${text.trim()}`)
			: []
	);
	expect(written).toEqual([]);
});

test('no list of texts is left out of the catalogues', () => {
	const plain = [...sources].flatMap(([path, source]) =>
		[...source.matchAll(/export const (\w*[tT]exts) = \{/g)].map(([, name]) => `${path}: ${name}`)
	);
	expect(plain).toEqual([]);
});
