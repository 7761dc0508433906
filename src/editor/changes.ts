/**
 * What turns one value into the next, to be sent in place of the next. Values are immutable plain data that share what
 * did not change, so that only what is another object is looked into; at the other end it is shared again.
 */
export type Changes = { readonly whole: unknown } | { readonly list: readonly Item[] } | Members;

/** A place in the list before, or a new item. */
type Item = number | { readonly item: unknown };

interface Members {
	/** In their order; null where they are those before. */
	readonly keys: readonly string[] | null;
	/** Those not named are as before. */
	readonly members: Readonly<Record<string, Changes>>;
}

export function changesBetween(before: unknown, after: unknown): Changes {
	if (!isObject(before) || !isObject(after) || Array.isArray(before) !== Array.isArray(after)) return { whole: after };
	return Array.isArray(after) ? listChanges(before as unknown as readonly unknown[], after) : memberChanges(before, after);
}

function listChanges(before: readonly unknown[], after: readonly unknown[]): Changes {
	const places = new Map(before.map((item, place) => [item, place]));
	const list = after.map((item): Item => (isObject(item) ? places.get(item) : undefined) ?? { item });
	const kept = list.filter((item) => typeof item === 'number').length;
	return 2 * kept < after.length || after.length === 0 ? { whole: after } : { list };
}

function memberChanges(before: Readonly<Record<string, unknown>>, after: Readonly<Record<string, unknown>>): Changes {
	const [keys, keysBefore] = [Object.keys(after), Object.keys(before)];
	const changed = keys.filter((key) => !Object.hasOwn(before, key) || !Object.is(before[key], after[key]));
	// Where most is another there is nothing to gain, unless the members are large themselves.
	if (2 * changed.length > keys.length && !changed.some((key) => isObject(after[key]))) return { whole: after };
	const isSame = keys.length === keysBefore.length && keys.every((key, i) => key === keysBefore[i]);
	const members = Object.fromEntries(
		changed.map((key) => [key, Object.hasOwn(before, key) ? changesBetween(before[key], after[key]) : { whole: after[key] }])
	);
	return { keys: isSame ? null : keys, members };
}

/** The next value. What is not named in the changes is the object it was. */
export function withChanges(before: unknown, changes: Changes): unknown {
	if ('whole' in changes) return changes.whole;
	if ('list' in changes) return changes.list.map((item) => (typeof item === 'number' ? (before as readonly unknown[])[item] : item.item));
	const { keys, members } = changes;
	const record = before as Readonly<Record<string, unknown>>;
	if (keys === null && Object.keys(members).length === 0) return before;
	const member = (key: string): unknown => (Object.hasOwn(members, key) ? withChanges(record[key], members[key]!) : record[key]);
	return Object.fromEntries((keys ?? Object.keys(record)).map((key) => [key, member(key)]));
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
