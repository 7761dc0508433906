/** Items by priority, lowest first. */
export interface Heap<Item> {
	push(priority: number, item: Item): void;
	pop(): { readonly priority: number; readonly item: Item } | undefined;
}

export function heap<Item>(): Heap<Item> {
	const entries: { priority: number; item: Item }[] = [];
	const swap = (i: number, j: number): void => void ([entries[i], entries[j]] = [entries[j]!, entries[i]!]);
	const before = (i: number, j: number): boolean =>
		i < entries.length && (j >= entries.length || entries[i]!.priority < entries[j]!.priority);
	return {
		push(priority, item) {
			entries.push({ priority, item });
			for (let i = entries.length - 1; i > 0;) {
				const parent = (i - 1) >> 1;
				if (entries[parent]!.priority <= priority) break;
				swap(i, parent);
				i = parent;
			}
		},
		pop() {
			const top = entries[0];
			const last = entries.pop();
			if (entries.length === 0 || last === undefined) return top;
			entries[0] = last;
			for (let i = 0; ;) {
				const least = before(2 * i + 2, 2 * i + 1) ? 2 * i + 2 : 2 * i + 1;
				if (!before(least, i)) break;
				swap(i, least);
				i = least;
			}
			return top;
		}
	};
}
