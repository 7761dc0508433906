/**
 * Values of the last run, each with what it was made of. A value is used again only while all of that is the same by
 * identity, so that a run with a memory gives what a run without one gives, and a change costs what it touches.
 * Diagrams share what an edit leaves alone, which is what makes identity worth comparing.
 */
export interface Memory {
	/** @param name unique to the value; what is kept under it is replaced when it is made anew */
	keep<Value>(name: unknown, madeOf: readonly unknown[], make: () => Value): Value;
	/**
	 * One value for each key, keys being unique; those of keys not named this time are forgotten. The list itself is
	 * the same one while its values are.
	 *
	 * @param madeOf all that a value depends on beside its key
	 */
	keepEach<Value>(
		name: unknown,
		keys: readonly string[],
		madeOf: (key: string, index: number) => readonly unknown[],
		make: (key: string, index: number) => Value
	): readonly Value[];
	/** The list that was kept under this name before, where its members are the same. */
	keepList<Item>(name: unknown, items: readonly Item[]): readonly Item[];
	/** What was kept under a name, to be judged by the caller; undefined where there is nothing. */
	recall(name: unknown): unknown;
	store(name: unknown, value: unknown): void;
}

interface Kept {
	readonly madeOf: readonly unknown[];
	readonly value: unknown;
}

interface Series {
	readonly keys: readonly string[];
	readonly kept: readonly Kept[];
	readonly values: readonly unknown[];
}

export function createMemory(): Memory {
	const slots = new Map<unknown, unknown>();
	return {
		keep<Value>(name: unknown, madeOf: readonly unknown[], make: () => Value): Value {
			const before = slots.get(name) as Kept | undefined;
			if (before && isSame(before.madeOf, madeOf)) return before.value as Value;
			const value = make();
			slots.set(name, { madeOf, value });
			return value;
		},
		keepEach<Value>(
			name: unknown,
			keys: readonly string[],
			madeOf: (key: string, index: number) => readonly unknown[],
			make: (key: string, index: number) => Value
		): readonly Value[] {
			const before = slots.get(name) as Series | undefined;
			const find = finder(before);
			const kept = keys.map((key, index): Kept => {
				const now = madeOf(key, index);
				const known = find(key, index);
				return known && isSame(known.madeOf, now) ? known : { madeOf: now, value: make(key, index) };
			});
			if (before && isSame(before.kept, kept)) return before.values as readonly Value[];
			const series: Series = { keys, kept, values: kept.map(({ value }) => value) };
			slots.set(name, series);
			return series.values as readonly Value[];
		},
		keepList<Item>(name: unknown, items: readonly Item[]): readonly Item[] {
			const before = slots.get(name) as readonly Item[] | undefined;
			if (before && isSame(before, items)) return before;
			slots.set(name, items);
			return items;
		},
		recall: (name) => slots.get(name),
		store: (name, value) => void slots.set(name, value)
	};
}

/** By place, which an edit seldom changes; else by key. */
function finder(series: Series | undefined): (key: string, index: number) => Kept | undefined {
	let byKey: Map<string, Kept> | null = null;
	return (key, index) => {
		if (!series || series.keys[index] === key) return series?.kept[index];
		byKey ??= new Map(series.keys.map((known, i) => [known, series.kept[i]!]));
		return byKey.get(key);
	};
}

/** The same members in the same order, by identity. */
export function isSame(a: readonly unknown[], b: readonly unknown[]): boolean {
	if (a.length !== b.length) return false;
	for (let i = 0; i < a.length; i++) if (!Object.is(a[i], b[i])) return false;
	return true;
}
