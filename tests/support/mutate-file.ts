/** Spoils files as accidents and ill will do: letter by letter, or as JSON that is still well formed. */
import { below, oneOf, type Random } from './random.ts';

/** What is put in place of a value. */
const HOSTILE: readonly (() => unknown)[] = [
	() => null,
	() => true,
	() => -1,
	() => 0,
	() => 1e308,
	() => -1e308,
	() => 5e-324,
	() => 2 ** 53,
	() => 'NaN',
	() => 'Infinity',
	() => '',
	() => '__proto__',
	() => 'constructor',
	() => '<img src=x onerror="globalThis.ran=1">',
	() => '"><script>globalThis.ran=1</script>',
	() => 'javascript:globalThis.ran=1',
	() => '\u0000\u202e\ud800',
	() => 'x'.repeat(50_000),
	() => [],
	() => ({}),
	() => nested(400, 'array'),
	() => nested(400, 'object'),
	() => Array.from({ length: 5_000 }, (_, index) => index),
	() => Object.fromEntries(Array.from({ length: 3_000 }, (_, index) => [`k${index}`, {}]))
];

const KEYS = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', '', 'a.b', '<b>', 'x'.repeat(70), 'P1', 'new'];
const BAD_NUMBERS = ['NaN', 'Infinity', '1e999', '-1e999', '1e-999', '0x10', '01', '.5', '--1', '99999999999999999999999'];

function nested(depth: number, how: 'array' | 'object'): unknown {
	let value: unknown = 1;
	for (let level = 0; level < depth; level += 1) value = how === 'array' ? [value] : { a: value };
	return value;
}

type Holder = Record<string, unknown>;
interface Place {
	readonly holder: Holder;
	readonly key: string;
}

/** Every place in a value that holds another. */
function placesIn(root: unknown): Place[] {
	const places: Place[] = [];
	const waiting: unknown[] = [root];
	for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
		if (typeof next !== 'object' || next === null) continue;
		for (const key of Object.keys(next)) {
			places.push({ holder: next as Holder, key });
			waiting.push((next as Holder)[key]);
		}
	}
	return places;
}

/** Plain assignment to "__proto__" would make no key. */
const put = (holder: Holder, key: string, value: unknown): void => {
	Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
};

function spoilValue(root: unknown, random: Random): void {
	const places = placesIn(root);
	if (places.length === 0) return;
	const { holder, key } = oneOf(random, places);
	// Half the time something that may well pass: what stands under the same name elsewhere, or nearly the same value.
	const other = oneOf(random, random() < 0.7 ? places.filter((place) => place.key === key) : places);
	const value = holder[key];
	switch (oneOf(random, [0, 1, 2, 2, 2, 3, 3, 4, 4, 5, 6])) {
		case 0:
			if (Array.isArray(holder)) holder.splice(Number(key), 1);
			else delete holder[key];
			return;
		case 1:
			put(holder, oneOf(random, KEYS), structuredClone(value));
			return;
		case 2:
			// A copy: a tree must not come to hold itself.
			put(holder, key, structuredClone(other.holder[other.key]));
			return;
		case 3:
			if (typeof value === 'number') put(holder, key, value * oneOf(random, [-1, 0, 1e3, 1e6, 1e12, 1.000001]));
			else put(holder, key, oneOf(random, HOSTILE)());
			return;
		case 4:
			if (typeof value === 'string') put(holder, key, `${value}${oneOf(random, ['', ' ', '.', '<svg onload=alert(1)>', '\u0301'])}`);
			else put(holder, key, oneOf(random, HOSTILE)());
			return;
		case 5:
			if (typeof value === 'object' && value !== null && !Array.isArray(value) && Object.keys(value).length > 0) {
				const like = Object.values(value)[0];
				const many = random() < 0.1 ? 2_000 : 30;
				for (let index = 0; index < many; index += 1) put(value as Holder, `many${index}`, structuredClone(like));
				return;
			}
			put(holder, key, oneOf(random, HOSTILE)());
			return;
		default:
			put(holder, key, oneOf(random, HOSTILE)());
	}
}

function spoilText(text: string, random: Random): string {
	const at = below(random, text.length);
	const length = 1 + below(random, random() < 0.2 ? text.length : 12);
	const [before, after] = [text.slice(0, at), text.slice(at)];
	switch (below(random, 7)) {
		case 0:
			return before;
		case 1:
			return before + after.slice(length);
		case 2:
			return before + after.slice(0, length) + after;
		case 3:
			return before + String.fromCharCode(below(random, 256)) + after.slice(1);
		case 4:
			return before + oneOf(random, ['{', '[', '}', ']', '"', ',', ':', '\\', '\u0000', '\ud800', '\uFEFF']) + after;
		case 5:
			return before + after.replace(/-?\d+(\.\d+)?/, () => oneOf(random, BAD_NUMBERS));
		default:
			return before + '['.repeat(20_000) + after;
	}
}

const someFaults = (random: Random): number => (random() < 0.5 ? 1 : 1 + below(random, 5));

/** Text of any kind with one to five faults in it, the same for the same chance. */
export function mutatedText(text: string, random: Random, faults = someFaults(random)): string {
	let spoilt = text;
	for (let fault = 0; fault < faults && spoilt !== ''; fault += 1) spoilt = spoilText(spoilt, random);
	return spoilt;
}

/** A file of JSON with one to five faults in it. */
export function mutated(text: string, random: Random): string {
	const faults = someFaults(random);
	if (random() < 0.3) return mutatedText(text, random, faults);
	const root: unknown = JSON.parse(text);
	for (let fault = 0; fault < faults; fault += 1) spoilValue(root, random);
	return JSON.stringify(root);
}
