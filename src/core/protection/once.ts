/** Works a value out on first use and keeps it. */
export function once<Value>(make: () => Value): () => Value {
	let made: { readonly value: Value } | null = null;
	return () => (made ??= { value: make() }).value;
}
