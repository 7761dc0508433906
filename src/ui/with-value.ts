/** The set with a value put in or taken out; sets that views look at are replaced, never changed. */
export function withValue<Value>(set: ReadonlySet<Value>, value: Value, wanted: boolean): ReadonlySet<Value> {
	const next = new Set(set);
	if (wanted) next.add(value);
	else next.delete(value);
	return next;
}
