import { isSame, type Memory } from './memory.ts';

interface Kept<Value> {
	readonly keys: readonly string[];
	readonly values: readonly Value[];
	readonly record: Readonly<Record<string, Value>>;
}

/**
 * A record of many keys. The one before where every value is the same; else a copy of it with those changed, which
 * costs less than setting every key again.
 *
 * @param keys in their order, unique
 */
export function keptRecord<Value>(
	memory: Memory,
	name: unknown,
	keys: readonly string[],
	valueAt: (place: number) => Value
): Readonly<Record<string, Value>> {
	const before = memory.recall(name) as Kept<Value> | undefined;
	const values = keys.map((_, place) => valueAt(place));
	if (!before || !(before.keys === keys || isSame(before.keys, keys))) {
		const record = Object.fromEntries(keys.map((key, place) => [key, values[place]!]));
		memory.store(name, { keys, values, record } satisfies Kept<Value>);
		return record;
	}
	let changed: Record<string, Value> | null = null;
	for (const [place, value] of values.entries()) {
		if (Object.is(value, before.values[place])) continue;
		changed ??= { ...before.record };
		changed[keys[place]!] = value;
	}
	const record = changed ?? before.record;
	memory.store(name, { keys, values, record } satisfies Kept<Value>);
	return record;
}
