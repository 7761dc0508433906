/**
 * Names that every object inherits must not come out of a file: as keys they would change what other objects are or
 * be found where nobody put them. Runs on raw JSON, because schema libraries drop some of these names in silence.
 */
export function unsafeKey(root: unknown): string | null {
	const waiting: { value: unknown; path: string }[] = [{ value: root, path: '' }];
	for (let next = waiting.pop(); next; next = waiting.pop()) {
		const { value, path } = next;
		if (typeof value !== 'object' || value === null) continue;
		for (const key of Object.keys(value)) {
			const here = path === '' ? key : `${path}.${key}`;
			if (!Array.isArray(value) && key in Object.prototype) return here;
			waiting.push({ value: (value as Record<string, unknown>)[key], path: here });
		}
	}
	return null;
}
